import { describe, expect, it } from 'vitest'
import type { Answers } from '../../intake/answers'
import { riskWords } from '../../words/en/risks'
import { risks } from './index'
import { pickNotes } from './pick-notes'
import { car, context } from './plain-answers'

const say = (answers: Answers, more: Partial<ReturnType<typeof context>> = {}): string =>
  pickNotes(risks, answers, { ...context(), ...more })
    .flatMap(({ id }) =>
      ['', '.means', '.bench', '.decision'].map((k) => riskWords[`risk.${id}${k}`] ?? ''),
    )
    .join('\n')

/**
 * Ten cars and what a careful detailer would have to say about each (own estimate, written before
 * the rules): the words must say it, not only a note with the right name.
 */
const CARS: readonly (readonly [
  name: string,
  Answers,
  must: readonly RegExp[],
  never: readonly RegExp[],
])[] = [
  [
    'S1 red coupe of 1990, single stage, old film, damp, coin of mould, wheels out',
    car({
      body: 'coupe',
      year: 1990,
      services: ['paint', 'protect', 'cabin', 'wheels-off', 'stickers'],
      wish: 'improve',
      dangers: ['film', 'wet', 'growth'],
      colour: 'red-orange-yellow',
      'cloth-test': 'colour',
      finish: 'solid',
      'film-age': 25,
      'film-state': ['cracked'],
      'wet-where': ['front-floor'],
      'wet-source': 'unknown',
      'wet-depth': 'surface',
      growth: ['mould-hard'],
      'mould-area': 'coin',
      defects: ['wash-marks', 'nail-scratch'],
    }),
    [
      /paint can come with it/,
      /outline may stay/i,
      /before the leak is found and proven/,
      /badge pins/i,
      /torque/i,
      /colour will come off on the pads/i,
      /N-95/,
      /cap in hours/,
    ],
    [],
  ],
  [
    'S2 black hatchback, eight months old, coating',
    car({
      body: 'hatchback',
      year: 2025,
      services: ['paint', 'protect'],
      wish: 'improve',
      colour: 'black',
      defects: ['haze', 'wash-marks'],
    }),
    [/haze is seen in full sun/, /some of them stay/, /dry for about a day/, /about a week/],
    [/never polished/],
  ],
  [
    'S3 seven-seater, soaked, source unknown, much mould, asthmatic child',
    car({
      body: 'mpv',
      year: 2012,
      services: ['cabin'],
      dangers: ['wet', 'growth'],
      'wet-where': ['front-floor', 'rear-floor'],
      'wet-source': 'unknown',
      'wet-depth': 'standing',
      growth: ['mould-textile', 'mould-under-carpet'],
      'mould-area': 'larger',
      'sensitive-people': true,
      'cabin-state': 'family',
    }),
    [
      /beyond what we clean/,
      /no child or ill person ride/,
      /foam that smells is replaced/,
      /airbag plugs/,
      /24–48 hours/,
      /found and proven/,
    ],
    [/can be cleaned/],
  ],
  [
    'S4 resprayed saloon of the seventies, clear coat peeling on the roof',
    car({
      year: 1974,
      wish: 'improve',
      dangers: ['peeling'],
      'paint-history': 'all',
      'peel-where': ['roof'],
    }),
    [/filler/, /how thick the top layer/, /blend edge/, /it grows/, /never count extra thickness/i],
    [],
  ],
  [
    'S5 factory-matte sports car, swirls out wanted',
    car({ body: 'sports-car', year: 2022, wish: 'show', dangers: ['matte'] }),
    [/shiny patches on matte/, /they do not come out/, /only repainting/i],
    [/level of the test panel/, /after the first step/i],
  ],
  [
    'S6 bonnet and wing sprayed six weeks ago, coating by Saturday',
    car({
      services: ['paint', 'protect'],
      wish: 'improve',
      dangers: ['fresh-paint'],
      'paint-history': 'part',
      'fresh-paint-weeks': 6,
      deadline: '2026-06-06',
    }),
    [/trap it/, /shift its shade/, /cannot be kept/, /date moves or part of the work waits/],
    [/unwashed for about a week/],
  ],
  [
    'S7 convertible, cloudy window, cracked leather, damp carpet',
    car({
      body: 'convertible',
      year: 2001,
      services: ['cabin', 'roof'],
      dangers: ['wet', 'soft-roof'],
      'roof-kind': 'cloth',
      'roof-state': ['plastic-cloudy'],
      'wet-source': 'unknown',
      leather: ['smooth', 'cracked'],
    }),
    [/seams and plastic windows may split/, /no folding/i, /cracks stay/i, /found and proven/],
    [],
  ],
  [
    'S8 electric crossover, film begun with a blade, bumper repaired',
    car({
      body: 'suv',
      year: 2024,
      services: ['paint', 'underside'],
      dangers: ['film'],
      'paint-history': 'part',
      'film-age': 2,
      'film-state': ['pliable', 'started'],
      'film-started-with': ['blade'],
      'film-over': 'bumper',
      'engine-kind': 'electric',
    }),
    [/blade cuts/, /repaint or bumper is likely to lift/, /signed yes/, /charge port/, /12 V/],
    [],
  ],
  [
    'S9 silver estate of a smoker with a dog, to be sold tomorrow',
    car({
      body: 'estate',
      year: 2014,
      services: ['cabin', 'glass'],
      'cabin-state': 'neglected',
      'cabin-marks': ['smoke', 'pet-hair'],
      use: 'daily-outdoors',
      deadline: '2026-06-02',
      budget: 25_000,
    }),
    [
      /come back on a warm day/,
      /drying and curing cannot be hurried/i,
      /scratches that were there all along/,
      /about 90 %/,
      /hours your budget buys/,
    ],
    [],
  ],
  [
    'S10 lacquer saloon of 1958, nest, non-runner, show in eight days',
    car({
      year: 1958,
      services: ['paint', 'cabin'],
      wish: 'show',
      dangers: ['growth', 'not-driving'],
      'cloth-test': 'colour',
      finish: 'solid',
      growth: ['nest'],
      'drive-state': ['no-start', 'weak-brakes'],
      deadline: '2026-06-09',
    }),
    [
      /fine cracks \(checking\), which are permanent/,
      /may contain lead/,
      /no solvent/,
      /wiring may be chewed/,
      /without brakes/,
      /transport both ways/,
      /not a mirror/,
    ],
    [/level of the test panel/, /unwashed for about a week/],
  ],
]

describe('what ten cars must be warned of', () => {
  it.each(CARS)('%s', (_name, answers, must, never) => {
    const said = say(answers)
    for (const m of must) expect(said).toMatch(m)
    for (const n of never) expect(said).not.toMatch(n)
  })

  it('says better, not perfect once thin paint was measured', () => {
    const answers = CARS[0]?.[1] ?? {}
    const measured = { panels: [{ panel: 'bonnet', allows: 'finishing' as const }] }
    expect(say(answers, { measured })).toMatch(/better, not perfect/)
  })
})
