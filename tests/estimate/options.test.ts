import { describe, expect, it } from 'vitest'
import type { Answers } from '../../src/intake/answers'
import { script } from '../../src/intake/script'
import { estimate } from '../../src/quote/estimate'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'
import { answerSets } from '../corpus/answer-sets'
import { answerWith, levelsOf, shows } from '../corpus/levels'
import { draws } from '../corpus/random'

const settings = engineSettings(DEFAULT_PROFILE, 0, [])

const figures = (answers: Answers): string =>
  JSON.stringify(
    estimate({
      answers: { ...answers, 'begun-year': { value: 2026 } },
      settings,
      today: '2026-06-01',
      readings: [],
      adjustments: [],
    }),
  )

/**
 * Answers that change no figure but stand on the job sheet as they were given: what the bench has to
 * know, in the owner's own words or as a plain fact.
 */
const FOR_THE_SHEET = new Set([
  'film-started-with',
  'paint-code',
  'readings-before',
  'readings-text',
  'spilled',
  'best-thing',
  'photos',
  'keep',
  'mileage',
  'where-car',
  'drive-consent',
  'free-dates',
])
/** Who it is: for the studio alone. */
const FOR_THE_OFFICE = new Set(['vin', 'contact'])

describe('every option of every question', () => {
  const sets = answerSets()

  it('changes the estimate of some car, or is for the sheet', { timeout: 120_000 }, () => {
    const dead: string[] = []
    for (const q of script.questions) {
      if (FOR_THE_SHEET.has(q.id) || FOR_THE_OFFICE.has(q.id)) continue
      for (const level of levelsOf(q)) {
        const others = sets.filter((a) => {
          const answer = a[q.id]
          return answer !== undefined && !shows(q, answer).includes(level)
        })
        const changes = others.slice(0, 8).some((a) => {
          const changed = { ...a, [q.id]: answerWith(q, level, draws(1)) }
          return figures(a) !== figures(changed)
        })
        if (!changes) dead.push(`${q.id}=${level}`)
      }
    }
    expect(dead).toEqual([])
  })
})
