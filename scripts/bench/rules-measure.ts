import { Engine } from 'json-rules-engine'
import type { Answers } from '../../src/intake/answers'
import { reader } from '../../src/intake/reader'
import { script } from '../../src/intake/script'
import type { Context } from '../../src/quote/context'
import { raisedNotes, risks } from '../../src/quote/risks'
import { report } from './bundled'
import { settings, settledFrom, told } from './cars'
import { CONDITIONS } from './notes-as-conditions'
import { timed, timedAsync } from './timed'

const context: Context = { settings, nowYear: 2026 }
const same = risks.filter((r) => r.id in CONDITIONS)

const cars: readonly Answers[] = [
  settledFrom(told),
  settledFrom({
    ...told,
    colour: { value: 'black' },
    defects: { value: ['haze', 'rust', 'chips'] },
  }),
  settledFrom({
    ...told,
    services: { value: ['cabin', 'wheels-off', 'engine-bay'] },
    'cabin-marks': { value: ['pet-hair', 'milk', 'urine'] },
    use: { value: 'stored' },
    jacking: { value: 'sound' },
    wheels: { value: 'chrome' },
  }),
]

/** What the engine is told: every asked question's value, worked out beforehand and not timed. */
const factsOf = (answers: Answers): Record<string, unknown> => {
  const r = reader(answers)
  return Object.fromEntries(
    script.questions.map((q) => [q.id, r.asks(q) ? (r.value(q) ?? null) : null]),
  )
}

const ours = (answers: Answers): readonly string[] => {
  const r = reader(answers)
  return same.flatMap((rule) => (rule.when(r, context) === null ? [] : [rule.id])).sort()
}

const engine = new Engine([], { allowUndefinedFacts: true })
for (const { id, weight } of same) {
  const c = CONDITIONS[id]!
  const conditions = 'all' in c || 'any' in c ? c : { all: [c] }
  engine.addRule({ conditions: conditions as never, event: { type: id }, priority: weight })
}
const theirs = async (facts: Record<string, unknown>): Promise<readonly string[]> =>
  (await engine.run(facts)).events.map((e) => e.type).sort()

const measured = async () => {
  let raised = 0
  for (const answers of cars) {
    const [a, b] = [ours(answers), await theirs(factsOf(answers))]
    if (a.join() !== b.join()) throw new Error(`not the same notes: ${a} and ${b}`)
    raised += a.length
  }
  const facts = cars.map(factsOf)
  let i = 0
  const next = (): number => i++ % cars.length
  const own = timed(600, () => raisedNotes(same, cars[next()]!, context))
  const other = await timedAsync(600, () => theirs(facts[next()]!))
  return { notes: same.length, raised, cars: cars.length, ours: own, engine: other }
}
export type RulesMeasured = Awaited<ReturnType<typeof measured>>

report(await measured())
