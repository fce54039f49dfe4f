import { accept, date, handOver, move, quote } from './demo-acts'
import { askExtra, bench, decideExtra, finish, readings, readSheet, work } from './demo-bench'
import type { DemoCar } from './demo-car'
import { answerAll, type DemoDocket, submit, waitHours } from './demo-docket'

const person = (name: string) => ({
  name,
  email: `${name.toLowerCase().replaceAll(' ', '.')}@example.com`,
})

/** From the first answer to the day the car is due. */
const upToDate = async (
  d: DemoDocket,
  inDays: number,
  adjustments: Parameters<typeof quote>[1] = [],
): Promise<void> => {
  await answerAll(d)
  await submit(d)
  waitHours(d, 9)
  await quote(d, adjustments)
  await accept(d)
  await date(d, inDays)
}

const checkIn = (d: DemoDocket, mileage: number, notes?: string) =>
  bench(d, [
    [
      'checked-in',
      {
        mileage,
        fuel: 'about half',
        keys: 1,
        consents: ['drive', 'photos'],
        ...(notes === undefined ? {} : { notes }),
      },
    ],
  ])

const TIDY = {
  dangers: [],
  size: 'mid',
  services: ['cabin'],
  'cabin-state': 'tidy',
  colour: 'mid',
  use: 'daily-garaged',
}

const DARK = {
  body: 'hatchback',
  dangers: [],
  size: 'mid',
  services: ['paint', 'protect'],
  wish: 'improve',
  'paint-history': 'original',
  colour: 'black',
  defects: ['haze', 'wash-marks'],
  use: 'daily-garaged',
  'polished-before': 'never',
}

/** Dockets that have been dated, and what became of them. */
export const BENCH_CARS: readonly DemoCar[] = [
  {
    id: 'convertible-in-spring',
    person: person('Katla Winterbourne'),
    daysAgo: 12,
    ends: 'dated',
    answers: {
      body: 'convertible',
      dangers: ['soft-roof', 'wet'],
      size: 'small',
      year: 2003,
      services: ['roof', 'cabin'],
      'cabin-state': 'family',
      'roof-kind': 'cloth',
      'roof-state': ['dirty-green', 'plastic-cloudy'],
      'wet-where': ['front-floor'],
      'wet-source': 'unknown',
      'wet-depth': 'surface',
      leather: ['smooth', 'cracked'],
      colour: 'mid',
      use: 'weekend',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 20)
      await quote(d)
      await accept(d)
      const day = new Date(d.app.clock.now + 24 * 86_400_000)
      const start = new Date(day.getTime() + (day.getUTCDay() === 0 ? 86_400_000 : 0))
      const back = d.app.clock.now
      await date(d, Math.round((start.getTime() - back) / 86_400_000))
      d.app.clock.now = back
    },
  },
  {
    id: 'black-hatchback-measured',
    person: person('Lorcan Vetch'),
    daysAgo: 16,
    ends: 'on-bench',
    answers: { ...DARK, year: 2025 },
    course: async (d) => {
      await upToDate(d, 12)
      await checkIn(d, 6_240, 'Two stone marks on the bonnet, shown to the owner.')
      await work(d, 6)
      await bench(d, [
        ...readings('reference', { 'front-left': [106, 108, 107, 107] }),
        ...readings('panel', {
          bonnet: [116, 118, 117, 115, 117],
          roof: [113, 112, 114, 113, 113],
          'front-left': [115, 114, 116, 115, 115],
          'left-front-door': [119, 121, 120, 120, 119],
          'front-right': [102, 101, 103, 102, 102],
        }),
        ['unreadable', { panel: 'front-bumper', why: 'plastic: this gauge reads steel only' }],
      ])
      await work(d, 1)
      await bench(d, [['polished', { panel: 'bonnet', sequence: 'light-finish', sets: 1 }]])
    },
  },
  {
    id: 'family-car-held',
    person: person('Maud Ellery'),
    daysAgo: 13,
    ends: 'held',
    answers: {
      body: 'mpv',
      dangers: ['wet'],
      size: 'large',
      year: 2013,
      services: ['cabin'],
      'cabin-state': 'family',
      'cabin-marks': ['stains', 'sand'],
      'wet-where': ['boot'],
      'wet-source': 'repaired',
      'wet-depth': 'soaked',
      'wet-electrics': false,
      colour: 'light',
      use: 'daily-outdoors',
    },
    course: async (d) => {
      await upToDate(d, 8)
      await checkIn(d, 142_800)
      const [finding] = await bench(d, [
        ['removed', { item: 'boot trim, left', place: 'boot', stored: 'shelf 2' }],
        ['found', { place: 'boot', text: 'A drain hose behind the trim has come off its spout.' }],
      ]).then((ids) => ids.slice(1))
      await work(d, 2)
      await askExtra(d, 'Refit the drain hose and test with water', 105, finding)
      await move(d, 'held', 'Waiting for the owner’s word on the drain hose.')
    },
  },
  {
    id: 'grey-saloon-finished',
    person: person('Nils Harrowgate'),
    daysAgo: 20,
    ends: 'finished',
    answers: { ...TIDY, body: 'saloon', year: 2017 },
    course: async (d) => {
      await upToDate(d, 10)
      await checkIn(d, 88_010)
      await finish(d, 0.95)
    },
  },
  {
    id: 'red-coupe-single-stage',
    person: person('Odile Tarrant'),
    daysAgo: 45,
    ends: 'handed-over',
    answers: {
      body: 'coupe',
      dangers: [],
      size: 'small',
      year: 1990,
      services: ['paint', 'protect'],
      wish: 'preserve',
      'paint-history': 'original',
      colour: 'red-orange-yellow',
      finish: 'solid',
      'cloth-test': 'colour',
      'system-check': 'sure-colour',
      defects: ['dull', 'wash-marks', 'scratches'],
      use: 'weekend',
      'kept-washed': 'hand',
      'best-thing': 'The chalky bonnet.',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 9)
      await quote(d)
      await quote(
        d,
        [
          {
            kind: 'add',
            step: 'mirror-caps',
            name: 'Dress the faded mirror caps',
            minutes: 25,
            why: 'asked for on the phone',
          },
          {
            kind: 'minutes',
            step: 'check-in',
            minutes: 75,
            why: 'old paint: a full set of photographs',
          },
        ],
        'With the mirror caps, as you asked.',
      )
      await accept(d)
      await date(d, 14)
      await checkIn(d, 61_430)
      await bench(d, [
        ...readings('reference', { 'front-left': [71, 70, 72, 71] }),
        ...readings('panel', {
          bonnet: [92, 95, 93, 94, 93],
          roof: [90, 91, 92, 90, 91],
          'left-front-door': [96, 97, 95, 96, 96],
        }),
        ['removed', { item: 'number plate', place: 'rear', stored: 'box 4' }],
        ['found', { place: 'rear right', text: 'An old repair the size of a hand; left alone.' }],
      ])
      await work(d, 8, 1.05)
      const extra = await askExtra(d, 'Treat the rust pins at the boot edge', 120)
      waitHours(d, 2)
      await decideExtra(d, extra, 'refuse')
      await bench(d, [
        ['polished', { panel: 'bonnet', sequence: 'hand-finish', sets: 2, pad: 'soft foam' }],
        ['polished', { panel: 'roof', sequence: 'hand-finish', sets: 1, pad: 'soft foam' }],
        ...readings('panel', { bonnet: [92, 94, 93, 93, 93], roof: [90, 91, 91, 90, 91] }, 'after'),
      ])
      await finish(d, 1.05)
      const plate = await removalOf(d)
      await bench(d, [['refitted', { removal: plate }]])
      await handOver(d, ['rust pins at the boot edge: look again in spring'])
    },
  },
  {
    id: 'estate-called-off',
    person: person('Perpetua Lunt'),
    daysAgo: 22,
    ends: 'called-off',
    answers: { ...TIDY, body: 'estate', year: 2015 },
    course: async (d) => {
      await upToDate(d, 9)
      await move(d, 'called-off', 'The car was sold before the day.')
    },
  },
  {
    id: 'pickup-not-brought',
    person: person('Quentin Marlpit'),
    daysAgo: 15,
    ends: 'not-brought',
    answers: { ...TIDY, body: 'pickup', size: 'large', year: 2011, 'cabin-state': 'neglected' },
    course: async (d) => {
      await upToDate(d, 10)
      waitHours(d, 9)
      await move(d, 'not-brought', 'Nobody came and nobody rang.')
    },
  },
  {
    id: 'hatchback-part-done',
    person: person('Rosalind Kerb'),
    daysAgo: 18,
    ends: 'part-done',
    answers: { ...DARK, colour: 'dark', year: 2020 },
    course: async (d) => {
      await upToDate(d, 11)
      await checkIn(d, 33_905)
      await work(d, 5)
      await move(d, 'part-done', 'Needed back early; the paint waits for a second visit.')
    },
  },
  {
    id: 'saloon-uncollected',
    person: person('Silas Groat'),
    daysAgo: 24,
    ends: 'uncollected',
    answers: {
      ...TIDY,
      body: 'saloon',
      year: 2009,
      'cabin-state': 'family',
      'cabin-marks': ['milk'],
    },
    course: async (d) => {
      await upToDate(d, 9)
      await checkIn(d, 154_220)
      await finish(d, 1.1)
      waitHours(d, 72)
      await move(d, 'uncollected')
    },
  },
  {
    id: 'suv-came-back',
    person: person('Tamsin Overy'),
    daysAgo: 40,
    ends: 'come-back',
    answers: { ...DARK, body: 'suv', size: 'large', year: 2023 },
    course: async (d) => {
      await upToDate(d, 12)
      await checkIn(d, 27_700)
      await bench(d, [
        ...readings('reference', { 'front-left': [110, 109, 111, 110] }),
        ...readings('panel', {
          bonnet: [121, 122, 120, 121, 121],
          roof: [118, 119, 118, 118, 119],
        }),
      ])
      await finish(d, 1.15)
      await handOver(d)
      waitHours(d, 6 * 24)
      await move(d, 'come-back', 'Two high spots of the coating on the left rear door.')
    },
  },
]

const removalOf = async (d: DemoDocket): Promise<string> => {
  const { removals } = (await readSheet(d)) as unknown as { removals: readonly { id: string }[] }
  const found = removals[0]?.id
  if (found === undefined) throw new Error('nothing was removed')
  return found
}
