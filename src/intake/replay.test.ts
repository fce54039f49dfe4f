import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anyAnswer } from '../../tests/corpus/levels'
import { draws } from '../../tests/corpus/random'
import type { Answer, Answers } from './answers'
import type { Question } from './question'
import { reader } from './reader'
import { MOST_QUESTIONS, replay } from './replay'
import { script } from './script'

type Model = Map<string, Answer>
type Real = { answers: Answers }

/** The next question by the plainest reading of the rules: a fresh look at every question in turn. */
const nextByHand = (answers: Answers): string | null => {
  let asked = 0
  for (const q of script.questions) {
    if (!reader(answers).asks(q)) continue
    if (answers[q.id] === undefined) {
      if (q.stage !== 'narrow' || asked < MOST_QUESTIONS - 1) return q.id
      continue
    }
    asked += 1
  }
  return null
}

/** Everything that must hold wherever the conversation stands. */
const check = (model: Model, real: Real) => {
  const stands = replay(script, real.answers)
  const told = new Map([...model].sort(([a], [b]) => (a < b ? 1 : -1)))
  expect(replay(script, Object.fromEntries(told))).toEqual(stands)
  const inUse = stands.answered.map((a) => a.question.id)
  expect([...inUse, ...stands.setAside].sort()).toEqual([...model.keys()].sort())
  for (const { question, answer } of stands.answered) expect(answer).toEqual(model.get(question.id))
  for (const id of stands.setAside) expect(real.answers[id]).toEqual(model.get(id))
  expect(stands.current?.id ?? null).toBe(stands.missing[0] ?? null)
  expect(stands.current?.id ?? null).toBe(nextByHand(real.answers))
  expect(stands.progress.expected).toBe(inUse.length + stands.missing.length)
}

type Step = fc.Command<Model, Real>

const put = (real: Real, model: Model, id: string, answer: Answer) => {
  model.set(id, answer)
  real.answers = { ...real.answers, [id]: answer }
}

/** Answers the current question as the page would. */
const answerNext = (seed: number): Step => ({
  check: () => true,
  run: (model, real) => {
    const { current } = replay(script, real.answers)
    if (current) put(real, model, current.id, anyAnswer(current, draws(seed + 1)))
    check(model, real)
  },
  toString: () => `answer next ${seed}`,
})

/** Changes one of the answers given. */
const change = (nth: number, seed: number): Step => ({
  check: (model) => model.size > 0,
  run: (model, real) => {
    const id = [...model.keys()][nth % model.size]!
    const q = script.questions.find((x) => x.id === id) as Question<unknown>
    put(real, model, id, anyAnswer(q, draws(seed + 1)))
    check(model, real)
  },
  toString: () => `change ${nth} ${seed}`,
})

const unanswer = (nth: number): Step => ({
  check: (model) => model.size > 0,
  run: (model, real) => {
    const id = [...model.keys()][nth % model.size]!
    model.delete(id)
    const { [id]: _gone, ...rest } = real.answers
    real.answers = rest
    check(model, real)
  },
  toString: () => `un-answer ${nth}`,
})

/** Another tab answers any question, asked or not, in any order. */
const outOfOrder = (nth: number, seed: number): Step => ({
  check: () => true,
  run: (model, real) => {
    const q = script.questions[nth % script.questions.length]!
    put(real, model, q.id, anyAnswer(q, draws(seed + 1)))
    check(model, real)
  },
  toString: () => `out of order ${nth} ${seed}`,
})

const unsure = (nth: number): Step => ({
  check: () => true,
  run: (model, real) => {
    const open = script.questions.filter((q) => q.unsureAllowed)
    put(real, model, open[nth % open.length]!.id, { unsure: true })
    check(model, real)
  },
  toString: () => `unsure ${nth}`,
})

describe('replay', () => {
  it('depends on the answers alone and loses none, whatever is done in whatever order', () => {
    const n = fc.nat(100_000)
    const commands = fc.commands(
      [
        n.map(answerNext),
        n.map(answerNext),
        n.map(answerNext),
        fc.tuple(n, n).map(([a, b]) => change(a, b)),
        n.map(unanswer),
        fc.tuple(n, n).map(([a, b]) => outOfOrder(a, b)),
        n.map(unsure),
      ],
      { size: 'large', maxCommands: 60 },
    )
    fc.assert(
      fc.property(commands, (steps) => {
        fc.modelRun(() => ({ model: new Map<string, Answer>(), real: { answers: {} } }), steps)
      }),
      { seed: 21, numRuns: 60 },
    )
  })

  it('sets answers aside when their question is not asked, and takes them back when it is', () => {
    const base: Answers = { dangers: { value: ['film'] }, 'film-age': { value: 25 } }
    const inUse = (answers: Answers) => replay(script, answers).answered.map((a) => a.question.id)
    expect(inUse(base)).toEqual(['dangers', 'film-age'])
    const without = { ...base, dangers: { value: [] } }
    expect(inUse(without)).toEqual(['dangers'])
    expect(replay(script, without).setAside).toEqual(['film-age'])
    expect(inUse({ ...without, dangers: { value: ['film', 'wet'] } })).toEqual([
      'dangers',
      'film-age',
    ])
  })

  it('keeps an answer to a question this script does not know', () => {
    expect(replay(script, { gone: { value: 'x' } }).setAside).toEqual(['gone'])
    expect(replay(script, { 'begun-year': { value: 2026 } }).setAside).toEqual([])
  })
})
