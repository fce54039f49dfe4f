import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { anyAnswer } from '../../tests/corpus/levels'
import { draws } from '../../tests/corpus/random'
import type { Answer, Answers } from './answers'
import { type Question, question } from './question'
import type { Reader } from './reader'
import { script } from './script'
import { session } from './session'
import { LEAST_DIVIDED, MOST_WORLDS, worlds, worldsIn } from './worlds'

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

  it('divides no unlikely world of a rule that has too many, and treats its options alike', () => {
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
    const wide = ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => choice(id, 4))
    const read = (n: number) => worlds({}, (r) => wide.slice(0, n).map((q) => r.value(q))).worlds
    expect(read(5)).toHaveLength(MOST_WORLDS)
    const found = read(6)
    expect(found.length).toBeLessThan(MOST_WORLDS)
    expect(sum(found.map((w) => w.weight))).toBeCloseTo(1, 9)
    for (const { weight, when, result } of found) {
      const last = when.at(-1)
      const before = weight / (last?.[1] === 1 ? 0.5 : 0.5 / 3)
      expect(before).toBeGreaterThanOrEqual(LEAST_DIVIDED)
      // What is not divided takes the likeliest option, and the world stands for all of its options.
      expect(result.slice(when.length)).toEqual(wide.slice(when.length).map((q) => `${q.id}0`))
      if (when.length < wide.length) expect(weight).toBeLessThan(LEAST_DIVIDED)
    }
    // None of the options of the first question gets more worlds than its weight explains.
    const ofFirst = [1, 2, 4, 8].map((bit) => found.filter((w) => w.when[0]?.[1] === bit).length)
    expect(new Set(ofFirst.slice(1)).size).toBe(1)
  })

  it('tells options apart no further than the rule does, and keeps those it put together', () => {
    const a = question<number>({
      id: 'a',
      topic: 'car',
      stage: 'first',
      kind: 'number',
      likely: [
        [1, 0.2],
        [5, 0.3],
        [9, 0.5],
      ],
    })
    expect(worlds({}, (r) => r.as(a, (n) => n > 3)).worlds).toEqual([
      { weight: 0.2, when: [['a', 0b001]], result: false },
      { weight: 0.8, when: [['a', 0b110]], result: true },
    ])
    expect(worlds({}, (r) => r.as(a, (n) => n > 0)).worlds).toEqual([
      { weight: 1, when: [], result: true },
    ])
    // Read again more closely, a part divides further; the other stays as it is.
    const twice = worlds({}, (r) => (r.as(a, (n) => n > 3) ? r.value(a) : 'low')).worlds
    expect(twice.map((w) => [w.result, w.when[0]?.[1]])).toEqual([
      ['low', 0b001],
      [5, 0b010],
      [9, 0b100],
    ])
  })

  it('takes a question as settled in each of its worlds, not outside of them', () => {
    const a = question<string>({
      id: 'a',
      topic: 'car',
      stage: 'first',
      kind: 'choice',
      likely: [
        ['x', 0.5],
        ['y', 0.5],
      ],
    })
    const b = question<string>({
      id: 'b',
      topic: 'car',
      stage: 'first',
      kind: 'choice',
      asked: (r) => r.as(a, (v) => v === 'x') === true || r.unsettled(a),
    })
    const answers = { a: { unsure: true as const }, b: { value: 'told' } }
    const s = session(answers)
    s.begin()
    expect([s.reader.unsettled(a), s.reader.asks(b)]).toEqual([true, true])
    expect(worldsIn(s, (r) => [r.value(a), r.value(b)]).worlds.map((w) => w.result)).toEqual([
      ['x', 'told'],
      ['y', undefined],
    ])
  })
})
