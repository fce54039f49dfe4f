import { describe, expect, it } from 'vitest'
import type { Answers } from '../../src/intake/answers'
import type { StudioSettings } from '../../src/quote/context'
import { type Estimated, estimate } from '../../src/quote/estimate'
import { scenarioCars } from '../../src/quote/steps/scenario-cars'
import { answersOf, bench, plainCar } from '../../src/quote/steps/step-bench'
import { english, TODAY } from './studio'

/** A studio that owns everything; each test takes something away. */
const whole = bench.settings
const of = (answers: Answers, settings: StudioSettings): Estimated =>
  estimate({ answers, settings, today: TODAY, readings: [], adjustments: [] })
const off = (...ids: readonly string[]): StudioSettings => ({
  ...whole,
  steps: Object.fromEntries(ids.map((id) => [id, { off: true }])),
})
const without = (piece: string): StudioSettings => ({
  ...whole,
  kit: whole.kit.filter((k) => k !== piece),
})
const idsOf = (e: Estimated) => e.steps.map((s) => s.id)
/** Every second of the cars: they have nearly all steps between them. */
const cars = scenarioCars.flatMap((s, i) =>
  i % 2 === 0 ? [[s.id, answersOf(s.car, s.unsure)] as const] : [],
)

describe('what a studio does not offer', () => {
  it.each(cars)('%s: every step switched off is said', (_id, answers) => {
    for (const id of idsOf(of(answers, whole))) {
      const e = of(answers, off(id))
      expect(idsOf(e), id).not.toContain(id)
      expect(e.scope.switchedOff, id).toContain(id)
    }
  })

  it.each(cars)('%s: every piece that is missing takes its steps along, and is named', (_, car) => {
    const before = of(car, whole)
    for (const piece of whole.kit) {
      const e = of(car, without(piece))
      for (const { step, piece: named } of e.scope.lacking) {
        expect(named).toBe(piece)
        expect(idsOf(e)).not.toContain(step)
        expect(english.has(`page.kit.${named}`)).toBe(true)
      }
      // A step that went is named, or one that protects it is, or readings would have been needed.
      const gone = idsOf(before).filter((id) => !idsOf(e).includes(id))
      const said = [
        ...e.scope.lacking.map((l) => l.step),
        ...e.scope.turnedDown.flatMap((t) => t.steps),
      ]
      for (const id of gone) expect(said, `${piece}: ${id}`).toContain(id)
    }
  })
})

const damp = {
  body: 'saloon',
  size: 'mid',
  year: 2018,
  dangers: ['wet'],
  services: ['cabin'],
  'wet-where': ['front-floor'],
  'wet-source': 'unknown',
  'wet-depth': 'soaked',
  'cabin-state': 'family',
}
const mouldy = {
  ...damp,
  dangers: ['growth'],
  growth: ['mould-hard'],
  'mould-area': 'coin',
  'sensitive-people': false,
}
const film = {
  ...plainCar,
  dangers: ['film'],
  'film-kind': ['clear-film'],
  'film-where': ['bonnet', 'front-bumper'],
  'film-age': 12,
  'film-state': ['cracked'],
}
const CLEANING = ['cabin-vacuum', 'plastics', 'cabin-wipe', 'mats']

/** A car, what is taken from the studio, the refusal, and work that must then not be in scope. */
const GUARDS: readonly (readonly [string, object, StudioSettings, readonly string[]])[] = [
  ['mould-unguarded', mouldy, without('hepa-vacuum'), ['mould-dry', ...CLEANING]],
  ['mould-unguarded', mouldy, off('mould-wipe'), ['mould-hepa', 'mould-again', ...CLEANING]],
  [
    'rodents-unguarded',
    { ...mouldy, growth: ['nest'], services: ['cabin', 'engine-bay'] },
    off('rodent-soak'),
    ['cabin-empty', 'engine-bay', ...CLEANING],
  ],
  ['damp-unproven', damp, without('moisture-meter'), ['carpet-refit', 'lift-carpet', ...CLEANING]],
  ['damp-unproven', damp, without('dehumidifier'), ['carpet-refit', ...CLEANING]],
  ['damp-unproven', damp, off('leak-proof'), ['carpet-refit', ...CLEANING]],
  [
    'wheels-unchecked',
    { ...plainCar, services: ['wheels-off', 'protect'] },
    off('refit-checks'),
    ['wheels-off', 'wheels-clean', 'calipers', 'wheels-coating'],
  ],
  [
    'wheels-unchecked',
    { ...plainCar, services: ['wheels-off'] },
    without('torque-wrench'),
    ['wheels-off', 'wheels-on'],
  ],
  ['film-untested', film, off('film-test-corner'), ['film-top', 'film-bumper', 'adhesive']],
  ['paint-untested', plainCar, off('test-spot-yes'), ['polish-light']],
  ['paint-untested', plainCar, off('tape-edges'), ['polish-light']],
  ['cut-unmeasured', { ...plainCar, wish: 'show' }, off('readings'), ['polish-cut']],
]

describe('a step that keeps somebody or the paint from harm', () => {
  it.each(GUARDS)('%s: without it what it guards is not done, and that is said', (...row) => {
    const [refusal, car, settings, gone] = row
    const answers = answersOf(car as Readonly<Record<string, unknown>>)
    const before = of(answers, whole)
    const offered = [...idsOf(before), ...before.couldAdd.map((a) => a.id)]
    for (const id of gone) expect(offered, id).toContain(id)
    expect(before.scope.turnedDown.map((t) => t.id)).not.toContain(refusal)

    const e = of(answers, settings)
    const left = [...idsOf(e), ...e.couldAdd.map((a) => a.id)]
    for (const id of gone) expect(left, id).not.toContain(id)
    expect(e.scope.turnedDown.map((t) => t.id)).toContain(refusal)
    expect((e.scope.switchedOff?.length ?? 0) + e.scope.lacking.length).toBeGreaterThan(0)
    expect(english.say(`refuse.${refusal}`).length).toBeGreaterThan(20)
    expect(english.say(`refuse.${refusal}.turn`)).toMatch(/\bask|workshop|studio|specialist/i)
  })

  it('refuses nothing that was not needed', () => {
    const everything = off('mould-wipe', 'rodent-soak', 'leak-proof', 'film-test-corner')
    expect(of(answersOf(plainCar), everything)).toEqual({
      ...of(answersOf(plainCar), whole),
    })
  })
})
