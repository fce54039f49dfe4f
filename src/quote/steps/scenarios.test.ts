import { describe, expect, it } from 'vitest'
import { worlds } from '../../intake/worlds'
import { events } from '../events'
import { answersOf, bench, minutesOf, plainCar, scopeOf } from './step-bench'

type Scenario = {
  readonly name: string
  readonly car: Readonly<Record<string, unknown>>
  readonly unsure?: readonly string[]
  readonly hours: readonly [low: number, high: number]
  readonly must: readonly string[]
  readonly never: readonly string[]
}

/** A careful detailer's own answers to ten cars, set-up counted, drying not (own estimate). */
const scenarios: readonly Scenario[] = [
  {
    name: 'red coupe of 1990, cracked nose film, damp foot, coin of mould, wheels out and coated',
    car: {
      ...plainCar,
      body: 'coupe',
      year: 1990,
      colour: 'red-orange-yellow',
      dangers: ['film', 'wet', 'growth'],
      services: ['paint', 'protect', 'cabin', 'wheels-off'],
      'cloth-test': 'colour',
      finish: 'solid',
      'film-kind': ['clear-film'],
      'film-where': ['front-bumper', 'bonnet-edge'],
      'film-age': 25,
      'film-state': ['cracked'],
      'wet-where': ['front-floor'],
      'wet-source': 'unknown',
      growth: ['mould-textile'],
      'mould-area': 'coin',
      'sensitive-people': false,
      'cabin-state': 'tidy',
      jacking: 'sound',
    },
    unsure: ['wet-depth', 'hard-soft', 'leather'],
    hours: [30, 46],
    must: ['film-top', 'polish-light', 'wax', 'leak-proof', 'wheels-coating', 'mould-hepa'],
    never: ['polish-cut', 'coating', 'cabin-air'],
  },
  {
    name: 'black hatchback, eight months, one-step with finishing and coating',
    car: { ...plainCar, body: 'hatchback', year: 2026, colour: 'black' },
    hours: [11, 17],
    must: ['polish-light', 'polish-finishing', 'coating', 'next-day-check'],
    never: ['polish-cut', 'wax'],
  },
  {
    name: 'the same, more wished for',
    car: { ...plainCar, body: 'hatchback', year: 2026, colour: 'black', wish: 'show' },
    hours: [16, 24],
    must: ['polish-cut', 'polish-light', 'polish-finishing'],
    never: [],
  },
  {
    name: 'seven-seater, soaked, much mould, asthmatic child: first stage only',
    car: {
      body: 'mpv',
      size: 'mid',
      year: 2016,
      dangers: ['wet', 'growth'],
      services: ['cabin'],
      'wet-where': ['front-floor', 'rear-floor'],
      'wet-source': 'unknown',
      'wet-depth': 'soaked',
      growth: ['mould-textile'],
      'mould-area': 'larger',
      'sensitive-people': true,
      'cabin-state': 'family',
    },
    hours: [1.5, 3],
    must: ['moisture-map', 'water-test', 'leak-cover', 'leak-proof'],
    never: ['mould-hepa', 'cabin-vacuum', 'carpet-extraction', 'lift-carpet', 'glass-inside'],
  },
  {
    name: 'resprayed metallic saloon of 1974, roof peeling',
    car: {
      ...plainCar,
      year: 1974,
      dangers: ['peeling'],
      'paint-history': 'all',
      'cloth-test': 'clean',
      'peel-where': ['roof'],
      finish: 'metallic',
    },
    unsure: ['hard-soft'],
    hours: [11, 19],
    must: ['polish-light', 'test-spot-yes'],
    never: ['polish-cut'],
  },
  {
    name: 'factory-matte sports car with wash marks',
    car: { ...plainCar, body: 'sports-car', year: 2021, dangers: ['matte'] },
    hours: [4, 8],
    must: ['wash', 'decontamination', 'matte-protection'],
    never: ['polish-light', 'polish-finishing', 'clay', 'wax', 'coating'],
  },
  {
    name: 'bonnet and wing sprayed six weeks ago',
    car: {
      ...plainCar,
      body: 'hatchback',
      year: 2017,
      dangers: ['fresh-paint'],
      'paint-history': 'part',
      'cloth-test': 'clean',
      'respray-panels': ['bonnet', 'front-left'],
      'fresh-paint-weeks': 6,
      'hard-soft': 'normal',
    },
    hours: [5, 10],
    must: ['wash', 'readings', 'polish-light'],
    never: ['coating', 'wax', 'polish-cut'],
  },
  {
    name: 'convertible, cloudy window, cracked leather, damp after winter',
    car: {
      body: 'convertible',
      year: 2004,
      dangers: ['wet', 'soft-roof'],
      services: ['roof', 'cabin'],
      'roof-kind': 'cloth',
      'roof-state': ['plastic-cloudy', 'dirty-green'],
      'wet-where': ['front-floor'],
      'wet-source': 'unknown',
      'cabin-state': 'tidy',
      leather: ['smooth', 'cracked'],
    },
    unsure: ['wet-depth'],
    hours: [11, 19],
    must: ['drains', 'water-test', 'roof-clean', 'roof-window', 'roof-proof', 'leather-clean'],
    never: ['cabin-air', 'coating'],
  },
  {
    name: 'electric crossover, pliable front film, begun with a blade',
    car: {
      ...plainCar,
      body: 'suv',
      year: 2024,
      dangers: ['film'],
      services: ['protect'],
      wish: 'preserve',
      'paint-history': 'part',
      'cloth-test': 'clean',
      'film-kind': ['clear-film'],
      'film-where': ['front-bumper', 'bonnet', 'wings'],
      'film-age': 2,
      'film-state': ['pliable', 'started'],
      'film-over': 'bumper',
    },
    hours: [7, 13],
    must: ['film-evidence', 'film-test-corner', 'film-top', 'second-wash'],
    never: ['polish-light'],
  },
  {
    name: 'silver estate, smoke and dog hair, budget of five hours',
    car: {
      body: 'estate',
      size: 'mid',
      year: 2014,
      dangers: [],
      services: ['cabin', 'glass'],
      'cabin-state': 'family',
      'cabin-marks': ['pet-hair', 'smoke'],
      headliner: 'firm',
      leather: ['cloth-only'],
      budget: 25_000,
    },
    hours: [4, 5],
    must: ['pet-hair', 'cabin-vacuum', 'glass-inside', 'glass-outside'],
    never: ['carpet-extraction', 'seats-textile', 'ozone', 'polish-light'],
  },
  {
    name: 'lacquer saloon of 1958, mouse nest, non-runner',
    car: {
      ...plainCar,
      year: 1958,
      colour: 'black',
      dangers: ['growth', 'not-driving'],
      services: ['paint', 'protect', 'cabin'],
      wish: 'show',
      'cloth-test': 'colour',
      finish: 'solid',
      growth: ['nest', 'droppings'],
      'drive-state': ['no-start', 'flat-tyres'],
      'cabin-state': 'neglected',
      'cabin-marks': ['rubbish'],
    },
    unsure: ['leather'],
    hours: [20, 36],
    must: ['rodent-soak', 'wiring-look', 'glaze-hand', 'test-spot-yes', 'wax', 'move-car'],
    never: ['polish-light', 'polish-cut', 'clay', 'decontamination', 'coating', 'cabin-air'],
  },
]

const SET_UP = 30
const DAY = 420

describe('ten cars and a careful detailer (own estimate)', () => {
  it.each(scenarios)('$name', ({ car, unsure, hours, must, never }) => {
    const answers = answersOf(car, unsure)
    const scope = scopeOf(answers)
    for (const id of must) expect(scope).toContain(id)
    for (const id of never) expect(scope).not.toContain(id)

    let minutes = minutesOf(answers)
    for (const e of events)
      for (const { weight, result } of worlds(answers, (r) => e.need(r, bench)).worlds)
        if (result) {
          const { optimistic, mode, pessimistic } = result.minutes
          minutes += (weight * result.chance * (optimistic + 4 * mode + pessimistic)) / 6
        }
    const total = (minutes + SET_UP * Math.ceil(minutes / DAY)) / 60
    expect(total).toBeGreaterThanOrEqual(hours[0])
    expect(total).toBeLessThanOrEqual(hours[1])
  })
})
