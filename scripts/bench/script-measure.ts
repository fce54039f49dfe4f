import { assign, createMachine, getInitialSnapshot, getNextSnapshot } from 'xstate'
import type { Answer, Answers } from '../../src/intake/answers'
import { plainReader } from '../../src/intake/plain-reader'
import { MOST_QUESTIONS, replay } from '../../src/intake/replay'
import { script } from '../../src/intake/script'
import { report } from './bundled'
import { settledFrom, told } from './cars'
import { timed } from './timed'

type Kept = { readonly answers: Answers; readonly answered: number }
type Said = { readonly type: 'answer'; readonly id: string; readonly answer: Answer }

/** The script as a machine: a state a question, left when it is answered or not asked. */
const states = Object.fromEntries(
  script.questions.map((q, i) => {
    const target = script.questions[i + 1]?.id ?? 'end'
    const asked = ({ context }: { context: Kept }) =>
      plainReader(context.answers).asks(q) &&
      !(q.stage === 'narrow' && context.answered >= MOST_QUESTIONS - 1)
    const keep = assign({
      answers: ({ context, event }: { context: Kept; event: Said }) => ({
        ...context.answers,
        [event.id]: event.answer,
      }),
      answered: ({ context }: { context: Kept }) => context.answered + 1,
    })
    return [
      q.id,
      {
        always: [{ target, guard: (at: { context: Kept }) => !asked(at) }],
        on: { answer: { target, actions: keep } },
      },
    ]
  }),
)
const machine = createMachine({
  id: 'script',
  initial: script.questions[0]!.id,
  context: { answers: {}, answered: 0 } as Kept,
  states: { ...states, end: { type: 'final' } },
} as never)

/** A whole conversation in the order it is asked; what nothing is known of is answered "not sure". */
const conversation = (): readonly Said[] => {
  const known = settledFrom(told)
  const said: Said[] = []
  let answers: Answers = {}
  for (;;) {
    const { current } = replay(script, answers)
    if (current === null) return said
    const answer = known[current.id] ?? { unsure: true as const }
    said.push({ type: 'answer', id: current.id, answer })
    answers = { ...answers, [current.id]: answer }
  }
}

const said = conversation()
const start = getInitialSnapshot(machine)
const stepped = (upTo: number) =>
  said.slice(0, upTo).reduce((at, event) => getNextSnapshot(machine, at, event as never), start)
const answersUpTo = (n: number): Answers =>
  Object.fromEntries(said.slice(0, n).map((s) => [s.id, s.answer]))

const check = (): void => {
  for (let n = 0; n < said.length; n++) {
    const ours = replay(script, answersUpTo(n)).current?.id
    const theirs = String(stepped(n).value)
    if (ours !== theirs) throw new Error(`after ${n} answers: ${ours} and ${theirs}`)
  }
}

/** Where the conversation stands from so many stored answers, and what one more costs. */
const after = (n: number) => {
  const answers = answersUpTo(n)
  const before = stepped(n - 1)
  const event = said[n - 1]!
  return {
    answers: n,
    ours: timed(2000, () => replay(script, answers)),
    machine: timed(300, () => stepped(n)),
    machineStep: timed(1000, () => getNextSnapshot(machine, before, event as never)),
  }
}

const measured = () => {
  check()
  return {
    questions: script.questions.length,
    half: after(Math.floor(said.length / 2)),
    whole: after(said.length),
  }
}
export type ScriptMeasured = ReturnType<typeof measured>

report(measured())
