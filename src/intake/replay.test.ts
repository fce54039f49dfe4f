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
/** What is stored: what was said in its order, `null` for an answer taken back; and who looks at it. */
type Real = {
  readonly said: (readonly [id: string, answer: Answer | null])[]
  answers: Answers
  /** The question another tab still shows. */
  tab: string | null
  sent: boolean
}

/** The answers as they stand after all that was said. */
const stored = (said: Real['said']): Answers => {
  const all = new Map<string, Answer>()
  for (const [id, answer] of said) {
    if (answer === null) all.delete(id)
    else all.set(id, answer)
  }
  return Object.fromEntries(all)
}

/** The next question by the plainest reading of the rules: a fresh look at every question in turn. */
const nextByHand = (answers: Answers): string | null => {
  let asked = 0
  for (const q of script.questions) {
    if (!reader(answers).asks(q)) continue
    if (answers[q.id] === undefined) {
      // The last place is for how to reach the owner, the one before for a contradiction.
      const most = MOST_QUESTIONS - (q.check === undefined ? 2 : 1)
      if (q.stage !== 'narrow' || asked < most) return q.id
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
  // Once sent, nothing that comes late changes what was sent.
  if (real.sent) return
  model.set(id, answer)
  real.said.push([id, answer])
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
    if (!real.sent) {
      model.delete(id)
      real.said.push([id, null])
      const { [id]: _gone, ...rest } = real.answers
      real.answers = rest
    }
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

/** Another tab answers the question it was left at, then shows the one that is open now. */
const secondTab = (seed: number): Step => ({
  check: () => true,
  run: (model, real) => {
    const q = script.questions.find((each) => each.id === real.tab)
    if (q) put(real, model, q.id, anyAnswer(q, draws(seed + 1)))
    check(model, real)
    real.tab = replay(script, real.answers).current?.id ?? null
  },
  toString: () => `second tab ${seed}`,
})

/** The page again, or another device: all that is known comes out of what is stored, as text. */
const comeBack = (how: 'refresh' | 'resume'): Step => ({
  check: () => true,
  run: (model, real) => {
    const before = replay(script, real.answers)
    const kept = how === 'resume' ? stored(real.said) : real.answers
    real.answers = JSON.parse(JSON.stringify(kept))
    const after = replay(script, real.answers)
    expect(after).toEqual(before)
    check(model, real)
  },
  toString: () => how,
})

/** Sends when nothing a submission needs is missing; the next question is then none that is needed. */
const submit: Step = {
  check: () => true,
  run: (model, real) => {
    const { needed, missing } = replay(script, real.answers)
    for (const id of needed) expect(missing).toContain(id)
    if (needed.length === 0) real.sent = true
    check(model, real)
  },
  toString: () => 'submit',
}

/** Answers all that is needed, so that sending is reached. */
const finish = (seed: number): Step => ({
  check: () => true,
  run: (model, real) => {
    for (let n = 0; n < 60; n += 1) {
      const id = replay(script, real.answers).needed[0]
      const q = script.questions.find((each) => each.id === id)
      if (!q || real.sent) break
      put(real, model, q.id, anyAnswer(q, draws(seed + n + 1)))
    }
    check(model, real)
  },
  toString: () => `finish ${seed}`,
})

describe('replay', () => {
  it('depends on the answers alone and loses none, whatever is done in whatever order', () => {
    let sent = 0
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
        n.map(secondTab),
        fc.constant(comeBack('refresh')),
        fc.constant(comeBack('resume')),
        n.map(finish),
        fc.constant(submit),
      ],
      { size: 'large', maxCommands: 60 },
    )
    fc.assert(
      fc.property(commands, (steps) => {
        const real: Real = { said: [], answers: {}, tab: 'dangers', sent: false }
        fc.modelRun(() => ({ model: new Map<string, Answer>(), real }), steps)
        sent += real.sent ? 1 : 0
      }),
      { seed: 21, numRuns: 60 },
    )
    // Sending was reached, and not only tried.
    expect(sent).toBeGreaterThan(5)
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
