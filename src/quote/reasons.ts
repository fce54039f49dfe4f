import type { StudioSettings } from './context'
import type { EstimatePlan } from './estimate-types'
import type { RunEvent, RunStep } from './needs'
import { limits, type PanelAssessment } from './paint'
import type { PaintSettings } from './paint/constants'
import type { PaintPrior } from './paint/priors'
import { whyLimits } from './paint/why-limits'
import { likeliest } from './plan-of'
import { OWN, type Reason, STUDIO } from './reason'
import type { RowUse } from './rules'
import type { Spread } from './spread'

const hundredth = (n: number): number => Math.round(n * 100) / 100

const rowReason = ({ row, per, times, source }: RowUse): Reason => ({
  rule: 'minutes',
  row: { row, optimistic: per[0], likely: per[1], pessimistic: per[2], times: hundredth(times) },
  source,
})

/** The rows a step's minutes are the sum of in its likeliest state, then what changes them. */
export const stepReasons = (run: RunStep, pace: number): readonly Reason[] => {
  const now = likeliest(run)
  const rows = (now?.need.rows ?? []).map(rowReason)
  const states = run.worlds.filter((w) => w.result !== null).length
  return [
    ...(rows.length > 0 ? rows : [{ rule: 'by-hand', source: run.rule.source }]),
    ...(states > 1 ? [{ rule: 'mixed', row: { states }, source: OWN }] : []),
    ...(pace === 1 ? [] : [{ rule: 'pace', row: { pace: hundredth(pace) }, source: STUDIO }]),
    ...(now?.lag
      ? [{ rule: `lag.${now.lag.why}`, row: { minutes: now.lag.minutes }, source: run.rule.source }]
      : []),
  ]
}

/** The chance and the minutes an event was taken with, in its likeliest state. */
export const eventReasons = (run: RunEvent): readonly Reason[] => {
  const found = run.worlds.flatMap(({ weight, result }) => (result ? [{ weight, result }] : []))
  const most = found.reduce((best, w) => (w.weight > best.weight ? w : best), found[0]!)
  const { optimistic, mode, pessimistic } = most.result.minutes
  const row = {
    row: run.id,
    chance: hundredth(most.result.chance),
    optimistic,
    likely: mode,
    pessimistic,
  }
  return [
    { rule: 'event', row, source: run.source },
    ...(found.length > 1 ? [{ rule: 'mixed', row: { states: found.length }, source: OWN }] : []),
  ]
}

/** A note is raised where its condition holds with at least so much weight. */
export const noteReasons = (chance: number, least: number, source: string): readonly Reason[] => [
  { rule: 'note', row: { chance: hundredth(chance), least }, source },
]

/** The limit behind each reason of a panel's verdict, as it was applied: the studio's own says so. */
export const panelReasons = (panel: PanelAssessment, applied: PaintSettings): readonly Reason[] =>
  panel.why.flatMap(({ code }): Reason[] => {
    const key = whyLimits[code]
    if (key === undefined) return []
    const value = applied[key]
    const source = value === limits[key].value ? limits[key].source : STUDIO
    return [{ rule: 'limit', row: { row: key, value }, source }]
  })

/** What was expected of the paint before anybody measured, one row a system. */
export const paintReasons = (priors: readonly PaintPrior[]): readonly Reason[] =>
  priors.map(({ system, weight, undercoat, topcoat }) => ({
    rule: 'prior',
    row: {
      row: system,
      weight: hundredth(weight),
      undercoat: undercoat.mean,
      undercoatSd: undercoat.sd,
      topcoat: topcoat.mean,
      topcoatSd: topcoat.sd,
    },
    source: OWN,
  }))

/** How the net came about: the rate, what decided it, and how tax was put on it. Minor units. */
export const offerReasons = (found: Spread, s: StudioSettings): readonly Reason[] => {
  const at = found.priceQuantile(s.offerPercentile)
  const net = Math.max(at, found.price.mean)
  const decided =
    net <= s.minimumCharge ? 'minimum' : at >= found.price.mean ? 'percentile' : 'mean'
  const row = {
    minimum: { amount: s.minimumCharge },
    percentile: { share: s.offerPercentile, amount: Math.ceil(at - 1e-6) },
    mean: { share: s.offerPercentile, amount: Math.ceil(found.price.mean - 1e-6) },
  }
  return [
    { rule: 'rate', row: { rate: s.ratePerHour, materials: s.materialsPerHour }, source: STUDIO },
    { rule: `offer.${decided}`, row: row[decided], source: STUDIO },
    {
      rule: `tax.${s.taxBasis}.${s.taxRounding}`,
      row: { millionths: s.taxMillionths },
      source: STUDIO,
    },
  ]
}

/** What the days rest on: the hours, what holds the car up, and how the two ready times were taken. */
export const planReasons = (
  plan: Pick<EstimatePlan, 'critical' | 'people'>,
  s: StudioSettings,
  ratios: { readonly median: number; readonly p80: number },
): readonly Reason[] => [
  {
    rule: 'plan.people',
    row: { people: plan.people, bays: s.bays, lifts: s.lifts },
    source: STUDIO,
  },
  {
    rule: 'plan.day',
    row: {
      day: s.dayCapMinutes,
      machine: s.machineMinutesPerPersonDay,
      setUp: s.setUpMinutesPerDay,
    },
    source: STUDIO,
  },
  { rule: 'plan.critical', row: { steps: plan.critical.length }, source: 'computed' },
  {
    rule: 'plan.ready',
    row: { likely: hundredth(ratios.median), cautious: hundredth(ratios.p80) },
    source: 'computed',
  },
]
