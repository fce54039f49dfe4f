import { type Estimated, estimate } from '../../src/quote/estimate'
import { steps } from '../../src/quote/steps'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'
import { zoneOf } from '../../src/routes/zone'
import type { Case } from './case'
import { flagMeanings } from './flags'
import { mapCase } from './map-case'
import { onlyPart, type Part, partOf } from './part'

export type Score = {
  readonly id: string
  readonly single: boolean
  readonly ratio: number | null
  readonly hours: {
    readonly reported: readonly [number, number | null]
    readonly low: number
    readonly likely: number
    readonly high: number
    /** What the reported hours are about. */
    readonly part: string
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

const outside = new Set(steps.filter((s) => s.outside).map((s) => s.id))
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

const estimateOf = (c: Case, part: Part | null): Estimated => {
  const { answers, readings, today } = mapCase(c)
  const from = Date.parse(`${today}T00:00:00Z`)
  const zone = zoneOf(DEFAULT_PROFILE.timeZone, from, from + YEAR)
  const settings = engineSettings(DEFAULT_PROFILE, 1, zone)
  return estimate({
    answers,
    readings,
    settings: part === null ? settings : onlyPart(settings, part),
    today,
    adjustments: [],
  })
}

/** Hours of outside trades in the part, best to worst: no labour of the studio, yet told as hours. */
const outsideHours = (e: Estimated): readonly [number, number, number] => {
  const theirs = e.steps.filter((s) => outside.has(s.id)).map((s) => s.minutes)
  const sum = (k: 'optimistic' | 'mode' | 'pessimistic') =>
    theirs.reduce((total, m) => total + m[k] / 60, 0)
  return [sum('optimistic'), sum('mode'), sum('pessimistic')]
}

/** Kinds of work that are refused or only scoped by the hour, so that no range is claimed for them. */
const outOfScope = (c: Case, e: Estimated): string | null => {
  if (e.scope.turnedDown.some((t) => t.id === 'fixed-price')) return 'by the hour only'
  if (e.scope.turnedDown.some((t) => t.id === 'mould-beyond-limits' || t.id === 'sewage-cabin'))
    return 'turned down'
  const text = c.situation.toLowerCase()
  return /orange peel|wet[- ]sand|level(l)?ing/.test(text) ? 'sanding is not offered' : null
}

/** Gneiting and Raftery's interval score at 80 %: width, and ten times how far outside the figure lies. */
const intervalScore = (low: number, high: number, x: number): number =>
  high - low + (2 / 0.2) * (Math.max(0, low - x) + Math.max(0, x - high))

const hoursOf = (c: Case, whole: Estimated): Score['hours'] => {
  const given = c.reported_outcome.hours_range_num
  const from = given?.[0]
  if (given === undefined || from === null || from === undefined) return null
  const to = given[1]
  const part = partOf(c)
  const e = part === null ? whole : estimateOf(c, part)
  const theirs = part === null ? ([0, 0, 0] as const) : outsideHours(e)
  const { labourMinutes: ours } = e
  const low = ours.low / 60 + theirs[0]
  const likely = ours.likely / 60 + theirs[1]
  const high = ours.high / 60 + theirs[2]
  const clock = part === null && /\bclock\b/i.test(String(c.reported_outcome.hours ?? ''))
  // "At least" is met by a range that reaches it; told by the clock beside the machine, the clock is the
  // whole job; else the middle of what was reported counts.
  const point = to === null ? Math.max(from, Math.min(high, likely)) : clock ? to : (from + to) / 2
  return {
    reported: [from, to],
    low,
    likely,
    high,
    part: part?.name ?? 'whole job',
    scope: outOfScope(c, whole),
    inside: low <= point && point <= high,
    wholly: low <= from && (to ?? from) <= high,
    interval: intervalScore(low, high, point),
  }
}

/** One told car through the estimate, against what was reported and expected of it. */
export const scoreOf = (c: Case): Score => {
  const e = estimateOf(c, null)
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
