import { type Estimated, estimate } from '../../src/quote/estimate'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'
import { zoneOf } from '../../src/routes/zone'
import type { Case } from './case'
import { flagMeanings } from './flags'
import { mapCase } from './map-case'

export type Score = {
  readonly id: string
  readonly single: boolean
  readonly ratio: number | null
  readonly hours: {
    readonly reported: readonly [number, number | null]
    readonly low: number
    readonly likely: number
    readonly high: number
    /** Why the reported work is not something the estimate claims to price; null when it is. */
    readonly scope: string | null
    readonly inside: boolean
    readonly wholly: boolean
    readonly interval: number
  } | null
  readonly flags: readonly {
    readonly flag: string
    readonly met: boolean
    readonly known: boolean
  }[]
}

const YEAR = 365 * 86_400_000

/** Ids of everything an estimate says, prefixed by its kind. */
export const meaningsOf = (e: Estimated): ReadonlySet<string> =>
  new Set([
    ...e.riskNotes.map((n) => `risk.${n.id}`),
    ...e.openPoints.map((p) => `open.${p.id}`),
    ...e.couldAdd.map((a) => `${a.kind}.${a.id}`),
    ...e.scope.turnedDown.map((t) => `refuse.${t.id}`),
    ...e.steps.map((s) => `step.${s.id}`),
    ...(e.plan.days.length > 1 ? ['plan.days'] : []),
  ])

const estimateOf = (c: Case): Estimated => {
  const { answers, readings, today } = mapCase(c)
  const from = Date.parse(`${today}T00:00:00Z`)
  const zone = zoneOf(DEFAULT_PROFILE.timeZone, from, from + YEAR)
  return estimate({
    answers,
    readings,
    settings: engineSettings(DEFAULT_PROFILE, 1, zone),
    today,
    adjustments: [],
  })
}

/** Kinds of work that are refused or only scoped by the hour, so that no range is claimed for them. */
const outOfScope = (c: Case, e: Estimated): string | null => {
  if (e.scope.turnedDown.some((t) => t.id === 'fixed-price')) return 'by the hour only'
  const text = c.situation.toLowerCase()
  return /orange peel|wet[- ]sand|level(l)?ing/.test(text) ? 'sanding is not offered' : null
}

/** Gneiting and Raftery's interval score at 80 %: width, and ten times how far outside the figure lies. */
const intervalScore = (low: number, high: number, x: number): number =>
  high - low + (2 / 0.2) * (Math.max(0, low - x) + Math.max(0, x - high))

const hoursOf = (c: Case, e: Estimated): Score['hours'] => {
  const given = c.reported_outcome.hours_range_num
  const from = given?.[0]
  if (given === undefined || from === null || from === undefined) return null
  const to = given[1]
  const [low, likely, high] = [
    e.labourMinutes.low,
    e.labourMinutes.likely,
    e.labourMinutes.high,
  ].map((m) => m / 60) as [number, number, number]
  // "At least" is met by a range that reaches it; else the middle of what was reported counts.
  const point = to === null ? Math.max(from, Math.min(high, likely)) : (from + to) / 2
  return {
    reported: [from, to],
    low,
    likely,
    high,
    scope: outOfScope(c, e),
    inside: low <= point && point <= high,
    wholly: low <= from && (to ?? from) <= high,
    interval: intervalScore(low, high, point),
  }
}

/** One told car through the estimate, against what was reported and expected of it. */
export const scoreOf = (c: Case): Score => {
  const e = estimateOf(c)
  const says = meaningsOf(e)
  const isCar = !e.scope.turnedDown.some((t) => t.id === 'fixed-price')
  return {
    id: c.id,
    single: c.is_single_job,
    ratio: isCar ? e.labourMinutes.high / e.labourMinutes.low : null,
    hours: hoursOf(c, e),
    flags: c.expected_flags.map((flag) => {
      const meanings = flagMeanings[flag]
      return {
        flag,
        known: meanings !== undefined,
        met: meanings?.some((m) => says.has(m)) ?? false,
      }
    }),
  }
}
