import type { Answers } from '../../src/intake/answers'
import { reader } from '../../src/intake/reader'
import { script } from '../../src/intake/script'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'

/** The studio every section measures with. */
export const settings = engineSettings(DEFAULT_PROFILE, 0, [])
export const TODAY = '2026-06-01'

/** A saloon with the first questions answered. */
export const told: Answers = {
  body: { value: 'saloon' },
  size: { value: 'mid' },
  dangers: { value: [] },
  year: { value: 2018 },
  services: { value: ['paint', 'protect', 'cabin'] },
  'cabin-state': { value: 'family' },
  wish: { value: 'improve' },
  'paint-history': { value: 'original' },
  colour: { value: 'mid' },
  defects: { value: ['wash-marks', 'scratches'] },
  use: { value: 'weekend' },
  'begun-year': { value: 2026 },
}

/** The same with its heaviest questions answered by "not sure". */
export const unsure: Answers = {
  ...told,
  dangers: { unsure: true },
  'cabin-state': { unsure: true },
  'paint-history': { unsure: true },
  defects: { unsure: true },
}

/** What is asked and still open answered by its likeliest option. */
export const settledFrom = (given: Answers): Answers => {
  const all: Record<string, Answers[string]> = { ...given }
  for (const q of script.questions) {
    if (q.likely === undefined || all[q.id] !== undefined || !reader(all).asks(q)) continue
    const [value] = q.likely.reduce((best, each) => (each[1] > best[1] ? each : best))
    all[q.id] = { value }
  }
  return all
}
