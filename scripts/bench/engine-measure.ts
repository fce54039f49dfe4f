import type { Answers } from '../../src/intake/answers'
import { session } from '../../src/intake/session'
import type { Context } from '../../src/quote/context'
import { estimate } from '../../src/quote/estimate'
import { events } from '../../src/quote/events'
import { runEvent, runStep } from '../../src/quote/needs'
import { meanMinutes, planOf, tasksOf } from '../../src/quote/plan-of'
import { refusalsOf } from '../../src/quote/refusals'
import { pickNotes, risks } from '../../src/quote/risks'
import { spread } from '../../src/quote/spread'
import { spreadOf } from '../../src/quote/spread-of'
import { steps } from '../../src/quote/steps'
import { plainMonteCarlo } from '../../tests/montecarlo/plain-monte-carlo'
import { report } from './bundled'
import { settings, settledFrom, TODAY, told, unsure } from './cars'
import { heapOf, timed } from './timed'

export const DRAWS = 100_000

const context: Context = { settings, nowYear: 2026 }

const measure = (answers: Answers, runs: number) => {
  const whole = () => estimate({ answers, settings, today: TODAY, readings: [], adjustments: [] })
  const read = session(answers)
  const ran = steps
    .map((rule) => runStep(rule, refusalsOf(rule.id), read, context))
    .filter((run) => run.chance > 0)
  const docket = spreadOf(
    ran,
    events.map((e) => runEvent(e, read, context)).filter((e) => e.chance > 0),
    {
      carSd: 0.12,
      ratePerHour: settings.ratePerHour,
      minimumMoney: settings.minimumCharge,
      fixedMoney: 0,
      pace: () => 1,
      setUp: 30,
    },
  )
  const planned = ran
    .filter((run) => run.chance >= 0.5)
    .map((run) => ({ run, minutes: meanMinutes(run, 1) }))
  const ratios = { median: 0.98, p80: 1.15 }
  const times = {
    estimate: timed(runs, whole),
    spread: timed(runs, () => spread(docket)),
    plan: timed(runs, () =>
      planOf({ tasks: tasksOf(planned), labour: ratios }, settings, '2026-06-02', settings.people),
    ),
    notes: timed(runs, () => pickNotes(risks, answers, context)),
  }
  const began = performance.now()
  plainMonteCarlo(docket, DRAWS, 1)
  const drawn = performance.now() - began
  return {
    steps: ran.length,
    unknowns: docket.unknowns.length,
    ...times,
    monteCarlo: drawn,
    ratio: { spread: drawn / times.spread.p50, estimate: drawn / times.estimate.p50 },
    heapBytes: heapOf(whole),
  }
}

export type EngineMeasured = Readonly<Record<string, ReturnType<typeof measure>>>

report({
  settled: measure(settledFrom(told), 300),
  'first answers': measure(told, 200),
  'very unsure': measure(unsure, 20),
} satisfies EngineMeasured)
