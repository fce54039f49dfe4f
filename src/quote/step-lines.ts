import { within } from '../intake/marks'
import type { Session } from '../intake/session'
import type { Adjustment } from './adjustment'
import type { StudioSettings, ThreePoint } from './context'
import type { CouldAdd, EstimateStep } from './estimate-types'
import type { RunEvent, RunStep } from './needs'
import { likeliest, meanMinutes } from './plan-of'
import { eventReasons, stepReasons } from './reasons'
import { pertMean } from './spread'

/** Minutes over all worlds in which the step is needed: the widest ends, the weighted middle. */
const minutesOf = (run: RunStep, pace: number): ThreePoint => {
  let weight = 0
  let mode = 0
  let optimistic = Number.POSITIVE_INFINITY
  let pessimistic = 0
  for (const w of run.worlds) {
    if (w.result === null) continue
    const t = w.result.need.minutes
    weight += w.weight
    mode += w.weight * t.mode
    optimistic = Math.min(optimistic, t.optimistic)
    pessimistic = Math.max(pessimistic, t.pessimistic)
  }
  return {
    optimistic: Math.round(optimistic * pace),
    mode: Math.round((mode / weight) * pace),
    pessimistic: Math.round(pessimistic * pace),
  }
}

/**
 * The nearest predecessors that stand or fall with the answers this step reads itself, so that its
 * reasons stay its own. The others are kept by the working order.
 */
const predecessors = (run: RunStep, scope: ReadonlyMap<string, RunStep>): readonly string[] => {
  const own = run.rule.after.flatMap((id) => {
    const other = scope.get(id)
    return other && within(other.reads, run.reads) ? [other.rule] : []
  })
  return own.filter((a) => !own.some((b) => b.after.includes(a.id))).map((a) => a.id)
}

/** The steps of the estimate in working order, each with what its own rule read as its reasons. */
export const estimateSteps = (
  inScope: readonly RunStep[],
  pace: (id: string) => number,
  applied: readonly Adjustment[],
  told: Session,
): readonly EstimateStep[] => {
  const scope = new Map(inScope.map((r) => [r.rule.id, r]))
  return [...inScope]
    .sort((a, b) => a.rule.order - b.rule.order)
    .map((run): EstimateStep => {
      const { rule } = run
      const now = likeliest(run)
      const own = applied.find((a) => a.kind === 'add' && a.step === rule.id)
      return {
        id: rule.id,
        ...(own?.kind === 'add' ? { name: own.name } : {}),
        track: rule.track,
        minutes: minutesOf(run, pace(rule.id)),
        expectedMinutes: Math.round(run.chance * meanMinutes(run, pace(rule.id))),
        quantity: now?.need.quantity ?? { amount: 1, unit: 'car' },
        chance: Math.round(run.chance * 1000) / 1000,
        because: told.names(run.reads),
        cautions: now?.cautions ?? [],
        after: predecessors(run, scope),
        lagMinutes: now?.lag?.minutes ?? 0,
        lagWhy: now?.lag?.why ?? null,
        hold: rule.hold ?? null,
        byTime: now?.byTime ?? null,
        crewMax: rule.crewMax,
        machine: rule.machine,
        places: now?.need.places ?? [],
        duties: rule.duties ?? [],
        materials: rule.materials ?? [],
        masks: rule.masks ?? [],
        source: rule.source,
        reasons: stepReasons(run, pace(rule.id)),
      }
    })
}

/** Chances below this are not worth a line (own estimate). */
const LEAST_CHANCE = 0.02

const shown = (net: number, s: StudioSettings): number =>
  Math.round(s.pricesWithTax ? net * (1 + s.taxMillionths / 1_000_000) : net)

/** What could still come on top, likeliest first: events, and steps that are needed only perhaps. */
export const couldAddOf = (
  perhaps: readonly RunStep[],
  events: readonly RunEvent[],
  s: StudioSettings,
  pace: (id: string) => number,
): readonly CouldAdd[] => {
  const perMinute = (s.ratePerHour + s.materialsPerHour) / 60
  const fromSteps = perhaps.map((run): CouldAdd => {
    const minutes = Math.round(meanMinutes(run, pace(run.rule.id)))
    const money = likeliest(run)?.need.money
    return {
      id: run.rule.id,
      kind: 'step',
      probability: Math.round(run.chance * 100) / 100,
      minutes,
      price: shown(minutes * perMinute + (money ? pertMean(money) : 0), s),
      because: run.because,
      source: run.rule.source,
      reasons: stepReasons(run, pace(run.rule.id)),
    }
  })
  const fromEvents = events.map((run): CouldAdd => {
    let weight = 0
    let minutes = 0
    let money = 0
    for (const w of run.worlds) {
      if (w.result === null) continue
      const chance = w.weight * w.result.chance
      weight += chance
      minutes += chance * pertMean(w.result.minutes)
      money += chance * (w.result.money ? pertMean(w.result.money) : 0)
    }
    return {
      id: run.id,
      kind: 'event',
      probability: Math.round(run.chance * 100) / 100,
      minutes: Math.round(minutes / weight),
      price: shown((minutes * perMinute + money) / weight, s),
      because: run.because,
      source: run.source,
      reasons: eventReasons(run),
    }
  })
  return [...fromSteps, ...fromEvents]
    .filter((x) => x.probability >= LEAST_CHANCE)
    .sort((a, b) => b.probability * b.minutes - a.probability * a.minutes || (a.id < b.id ? -1 : 1))
}
