import type { Answers } from '../../src/intake/answers'
import { type Estimated, type EstimateInput, estimate } from '../../src/quote/estimate'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'
import { zoneOf } from '../../src/routes/zone'
import { english as catalogue } from '../../src/words/en'
import { type Words, words } from '../../src/words/render'

export const TODAY = '2026-06-01'
const from = Date.parse(`${TODAY}T00:00:00Z`)
const YEAR = 365 * 86_400_000

/** An invented studio that owns every piece of kit. */
export const settings = engineSettings(
  {
    ...DEFAULT_PROFILE,
    kit: [...DEFAULT_PROFILE.kit, 'ozone', 'lift'],
    ratePerHour: 5_000,
    lifts: 1,
  },
  1,
  zoneOf(DEFAULT_PROFILE.timeZone, from, from + YEAR),
)

/** The estimate of these answers at that studio, on a fixed day. */
export const estimateOf = (answers: Answers, readings: EstimateInput['readings'] = []): Estimated =>
  estimate({ answers, settings, today: TODAY, readings, adjustments: [] })

export const english: Words = words([catalogue], {
  language: 'en',
  locale: 'en-GB',
  currency: 'EUR',
  exponent: 2,
})
