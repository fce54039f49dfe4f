import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { anyAnswer } from '../../tests/corpus/levels'
import { draws } from '../../tests/corpus/random'
import type { Answer, Answers } from './answers'
import { type Question, question } from './question'
import type { Reader } from './reader'
import { script } from './script'
import { MOST_WORLDS, worlds } from './worlds'

/** A rule that reads one question, then goes left or right by what it read. */
type Rule = number | { readonly at: number; readonly left: Rule; readonly right: Rule }

const { rule: ruleOf } = fc.letrec<{ rule: Rule }>((tie) => ({
  rule: fc.oneof(
    { maxDepth: 7, depthSize: 'large' },
    fc.nat(9),
    fc.record({ at: fc.nat(200), left: tie('rule'), right: tie('rule') }),
  ),
}))

const run =
  (rule: Rule, questions: readonly Question<unknown>[]) =>
  (r: Reader): string => {
    if (typeof rule === 'number') return String(rule)
    const q = questions[rule.at % questions.length]!
    const value = JSON.stringify(r.value(q)) ?? 'unknown'
    const next = value.length % 2 === 0 ? rule.left : rule.right
    return `${q.id}:${value} ${run(next, questions)(r)}`
  }

const sum = (weights: readonly number[]): number => weights.reduce((a, b) => a + b, 0)
const many = answerSets()
const unsureSets = many.map(
  (answers): Answers =>
    Object.fromEntries(
      Object.entries(answers).map(([id, a]): [string, Answer] => {
        const q = script.questions.find((x) => x.id === id)
        return [id, q?.unsureAllowed && id.length % 3 > 0 ? { unsure: true } : a]
      }),
    ),
)

describe('worlds', () => {
  it('has weights that sum to 1, and no two worlds alike, for any rule over any answers', () => {
    fc.assert(
      fc.property(ruleOf, fc.nat(unsureSets.length - 1), (rule, n) => {
        const found = worlds(unsureSets[n]!, run(rule, script.questions)).worlds
        expect(sum(found.map((w) => w.weight))).toBeCloseTo(1, 9)
        expect(new Set(found.map((w) => JSON.stringify(w.when))).size).toBe(found.length)
        expect(found.length).toBeLessThanOrEqual(MOST_WORLDS)
      }),
      { seed: 11, numRuns: 400 },
    )
  })

  it('names in because every question whose answer matters, and no other answer matters', () => {
    fc.assert(
      fc.property(ruleOf, fc.nat(unsureSets.length - 1), fc.nat(10_000), (rule, n, seed) => {
        const answers = unsureSets[n]!
        const before = worlds(answers, run(rule, script.questions))
        const draw = draws(seed + 1)
        const other: Record<string, Answer> = { ...answers }
        for (const q of script.questions) {
          if (before.because.includes(q.id)) continue
          if (draw(3) === 0) delete other[q.id]
          else other[q.id] = anyAnswer(q, draw)
        }
        expect(worlds(other, run(rule, script.questions))).toEqual(before)
      }),
      { seed: 12, numRuns: 400 },
    )
  })

  it('runs a rule once when nothing it reads is open', () => {
    const a = question<string>({ id: 'a', topic: 'car', stage: 'first', kind: 'choice' })
    const found = worlds({ a: { value: 'x' } }, (r) => r.value(a))
    expect(found.worlds).toEqual([{ weight: 1, when: [], result: 'x' }])
    expect(found.because).toEqual(['a'])
  })

  it('mixes over what is not known, with the weight of each option', () => {
    const a = question<string>({
      id: 'a',
      topic: 'car',
      stage: 'first',
      kind: 'choice',
      likely: [
        ['x', 0.25],
        ['y', 0.75],
      ],
    })
    const found = worlds({ a: { unsure: true } }, (r) => r.value(a))
    expect(found.worlds.map((w) => [w.result, w.weight])).toEqual([
      ['x', 0.25],
      ['y', 0.75],
    ])
  })

  it('gives a question past the cap its likeliest option, and never the option of another one', () => {
    const choice = (id: string, options: number) =>
      question<string>({
        id,
        topic: 'car',
        stage: 'first',
        kind: 'choice',
        likely: Array.from({ length: options }, (_, i) => [
          `${id}${i}`,
          i === 0 ? 0.5 : 0.5 / (options - 1),
        ]),
      })
    const wide = choice('w', 93)
    const skipped = choice('s', 7)
    const last = choice('l', 3)
    const found = worlds({}, (r) => [r.value(wide), r.value(skipped), r.value(last)])
    expect(new Set(found.worlds.map((w) => w.result[1]))).toEqual(new Set(['s0']))
    expect(new Set(found.worlds.map((w) => w.result[2]))).toEqual(new Set(['l0', 'l1', 'l2']))
    expect(sum(found.worlds.map((w) => w.weight))).toBeCloseTo(1, 9)
  })
})
