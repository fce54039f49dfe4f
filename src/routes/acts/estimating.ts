import type { Answers } from '../../intake/answers'
import { script } from '../../intake/script'
import { benchReadings, doneSets } from '../../jobsheet/readings'
import { splitLocal, toLocalMinute } from '../../kernel/calendar-zone'
import type { Adjustment } from '../../quote/adjustment'
import { ENGINE, type Estimated, type EstimateInput, estimate } from '../../quote/estimate'
import type { Stmt } from '../../store/db'
import { insertEstimate } from '../../store/estimates'
import { sha256 } from '../http/keys'
import { invalid } from '../http/problem'
import type { Studio } from '../route'
import type { Desk } from './desk'

/** The studio's own date at a moment. */
export const todayOf = (studio: Studio, now: number): string =>
  splitLocal(toLocalMinute(studio.engine.zone, Math.floor(now / 60_000))).date

/** What an estimate of these answers is made from, at this moment. */
export const inputOf = (
  studio: Studio,
  now: number,
  answers: Answers,
  more: Partial<Pick<EstimateInput, 'readings' | 'done' | 'adjustments' | 'start' | 'gauge'>> = {},
): EstimateInput => ({
  answers,
  settings: studio.engine,
  today: todayOf(studio, now),
  readings: [],
  adjustments: [],
  ...more,
})

/** No work on a car costs this much in any money; sums of 200 of these are still exact. */
const MOST_AMOUNT = 100_000_000_000

/** Amounts so large that a sum of them would no longer be exact. Throws 422. */
const checkAmounts = (adjustments: readonly Adjustment[]): void => {
  const faults = adjustments.flatMap((a, i) =>
    (['amount', 'cost'] as const).flatMap((name) => {
      const value = name in a ? (a as { readonly [K in typeof name]?: number })[name] : undefined
      return value !== undefined && value > MOST_AMOUNT
        ? [{ pointer: `/adjustments/${i}/${name}`, code: 'ERR_AMOUNT_TOO_LARGE' }]
        : []
    }),
  )
  if (faults.length > 0) throw invalid(faults)
}

/** The docket's own readings and sets count as soon as there are any. */
export const deskInput = (
  studio: Studio,
  now: number,
  desk: Desk,
  adjustments: readonly Adjustment[] = [],
): EstimateInput => {
  checkAmounts(adjustments)
  return inputOf(studio, now, desk.answers, {
    readings: benchReadings(desk.docket.bench),
    done: doneSets(desk.docket.bench),
    adjustments,
  })
}

const PERSONAL = new Set(['contact', 'vin'])

/** The inputs without anything personal: what the figures are found again by. */
const kept = (input: EstimateInput) => ({
  ...input,
  answers: Object.fromEntries(
    Object.entries(input.answers)
      .filter(([id]) => !PERSONAL.has(id))
      .map(([id, a]) => [id, 'value' in a && typeof a.value === 'string' && isFree(id) ? {} : a])
      .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  ),
  settings: input.settings.rev,
  adjustments: input.adjustments.map(({ why: _, ...figures }) => figures),
})

const FREE = new Set(script.questions.filter((q) => q.kind === 'text').map((q) => q.id))
const isFree = (id: string): boolean => FREE.has(id)

/** An estimate with its digest and the statement that keeps it. */
export const keepEstimate = async (
  input: EstimateInput,
  script: string,
  now: number,
): Promise<{ readonly made: Estimated; readonly digest: string; readonly stmt: Stmt }> => {
  const made = estimate(input)
  const inputs = kept(input)
  const { adjusted: _, planning: __, ...result } = made
  const digest = await sha256(JSON.stringify([ENGINE, script, inputs]))
  const stmt = insertEstimate({
    digest,
    engine: ENGINE,
    script,
    settingsRev: input.settings.rev,
    inputs,
    result,
    at: now,
  })
  return { made, digest, stmt }
}
