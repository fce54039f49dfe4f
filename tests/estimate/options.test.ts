import { describe, expect, it } from 'vitest'
import type { Answers } from '../../src/intake/answers'
import { replay } from '../../src/intake/replay'
import { script } from '../../src/intake/script'
import { estimate } from '../../src/quote/estimate'
import { DEFAULT_PROFILE, engineSettings } from '../../src/quote/studio-profile'
import type { Desk } from '../../src/routes/acts/desk'
import { benchFacts, factsOf } from '../../src/routes/acts/facts'
import { answerSets } from '../corpus/answer-sets'
import { answerWith, levelsOf, shows } from '../corpus/levels'
import { draws } from '../corpus/random'
import { english } from './studio'

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
  'free-dates',
])
/** The job sheet's list of what was told, as the bench reads it. */
const sheet = (answers: Answers): string =>
  JSON.stringify(
    benchFacts(
      { replayed: replay(script, answers), docket: { answeredBy: {} } } as unknown as Desk,
      english,
    ),
  )
const office = (answers: Answers): string =>
  JSON.stringify(
    factsOf(
      { replayed: replay(script, answers), docket: { answeredBy: {} } } as unknown as Desk,
      english,
    ),
  )

/** Who it is: for the studio alone. */
const FOR_THE_OFFICE = new Set(['vin', 'contact'])

describe('every option of every question', () => {
  const sets = answerSets()

  it('changes the estimate of some car, or the sheet where it is for the sheet', {
    timeout: 120_000,
  }, () => {
    const dead: string[] = []
    for (const q of script.questions) {
      const seen = FOR_THE_SHEET.has(q.id) ? sheet : FOR_THE_OFFICE.has(q.id) ? office : figures
      for (const level of levelsOf(q)) {
        const others = sets.filter((a) => {
          const answer = a[q.id]
          return answer !== undefined && !shows(q, answer).includes(level)
        })
        const changes = others.slice(0, 8).some((a) => {
          const changed = { ...a, [q.id]: answerWith(q, level, draws(1)) }
          return seen(a) !== seen(changed)
        })
        if (!changes) dead.push(`${q.id}=${level}`)
      }
    }
    expect(dead).toEqual([])
  })

  it('stands on the sheet in words whatever it changes besides', () => {
    const told = new Set(sets.flatMap((a) => [sheet(a)]))
    expect(told.size).toBeGreaterThan(sets.length * 0.9)
  })

  it('keeps who it is off the sheet', () => {
    for (const answers of sets.slice(0, 40))
      for (const id of FOR_THE_OFFICE) {
        expect(sheet(answers)).not.toContain(`"question":"${id}"`)
        if (id in answers) expect(office(answers)).toContain(`"question":"${id}"`)
      }
  })
})
