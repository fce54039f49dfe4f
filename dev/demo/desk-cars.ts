import { accept, ask, decline, move, quote, reply } from './demo-acts'
import type { DemoCar } from './demo-car'
import { answerAll, submit, waitHours } from './demo-docket'

const mail = (name: string): string => `${name.toLowerCase().replaceAll(' ', '.')}@example.com`
const person = (name: string) => ({ name, email: mail(name) })

/** Dockets that have not reached the bench. */
export const DESK_CARS: readonly DemoCar[] = [
  {
    id: 'estate-half-told',
    person: person('Ada Quillfeather'),
    daysAgo: 0.2,
    ends: 'answering',
    answers: {
      body: 'estate',
      dangers: [],
      size: 'mid',
      year: 2016,
      services: ['paint', 'cabin'],
      'cabin-state': 'family',
    },
    course: (d) => answerAll(d, 6),
  },
  {
    id: 'matte-sports-car',
    person: person('Corin Ashdale'),
    daysAgo: 1.1,
    ends: 'received',
    answers: {
      body: 'sports-car',
      dangers: ['matte'],
      size: 'small',
      year: 2021,
      services: ['paint', 'protect'],
      wish: 'improve',
      'paint-history': 'original',
      colour: 'dark',
      use: 'weekend',
      'best-thing': 'The circular wash marks on the bonnet.',
      budget: 60_000,
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
    },
  },
  {
    id: 'lacquer-saloon',
    person: { name: 'Bertram Oldacre', phone: '01 555 0142' },
    daysAgo: 4,
    byPhone: true,
    ends: 'look-over',
    answers: {
      body: 'saloon',
      dangers: ['growth', 'not-driving'],
      size: 'mid',
      year: 1958,
      services: ['paint', 'cabin'],
      'cabin-state': 'neglected',
      wish: 'show',
      'paint-history': 'original',
      colour: 'light',
      'cloth-test': 'colour',
      growth: ['nest', 'droppings'],
      'sensitive-people': false,
      'drive-state': ['no-start', 'flat-tyres', 'weak-brakes'],
      defects: ['dull', 'scratches', 'chips'],
      use: 'stored',
      patina: ['patina'],
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 3)
      await move(d, 'look-over', 'Stored six years and nested in: we must see it before any price.')
    },
  },
  {
    id: 'bonnet-just-sprayed',
    person: person('Delphine Marrow'),
    daysAgo: 6,
    ends: 'quoted',
    answers: {
      body: 'hatchback',
      dangers: ['fresh-paint'],
      size: 'mid',
      year: 2019,
      services: ['paint', 'protect'],
      wish: 'improve',
      'paint-history': 'part',
      'respray-panels': ['bonnet', 'front-left'],
      'fresh-paint-weeks': 6,
      colour: 'mid',
      defects: ['wash-marks', 'haze'],
      use: 'daily-garaged',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 8)
      await quote(d, [], 'The new paint waits for the painter’s word; the rest we can do now.')
      await ask(d, 'May I wax the bonnet myself in the meantime?')
      await reply(d, 'Please leave it bare until the painter’s sheet says it may be sealed.')
      waitHours(d, 20)
      await quote(
        d,
        [{ kind: 'discount', amount: 4_000, why: 'coating of the two fresh panels comes later' }],
        'Without the coating on the two new panels.',
      )
    },
  },
  {
    id: 'silver-estate-question',
    person: person('Edmund Farrow'),
    daysAgo: 3,
    ends: 'quoted',
    answers: {
      body: 'estate',
      dangers: [],
      size: 'large',
      year: 2014,
      services: ['cabin'],
      'cabin-state': 'neglected',
      'cabin-marks': ['smoke', 'pet-hair', 'stains'],
      'paint-history': 'original',
      colour: 'light',
      use: 'daily-outdoors',
      budget: 25_000,
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 6)
      await quote(d)
      await ask(d, 'It is to be sold on Friday. Will the smell of smoke be gone by then?')
    },
  },
  {
    id: 'electric-half-peeled',
    person: person('Fenella Brightwater'),
    daysAgo: 9,
    ends: 'agreed',
    answers: {
      body: 'suv',
      dangers: ['film'],
      size: 'mid',
      year: 2024,
      services: ['paint', 'stickers'],
      wish: 'improve',
      'paint-history': 'part',
      'respray-panels': ['front-bumper'],
      colour: 'white',
      'film-kind': ['clear-film'],
      'film-where': ['front-bumper', 'bonnet', 'wings'],
      'film-age': 2,
      'film-state': ['pliable', 'started'],
      'film-started-with': ['blade'],
      'film-over': 'bumper',
      defects: ['wash-marks'],
      'engine-kind': 'electric',
      use: 'daily-outdoors',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 10)
      await quote(d, [], 'The repaired bumper comes last, and only if the test corner lets go.')
      await accept(d)
    },
  },
  {
    id: 'van-too-dear',
    person: person('Gideon Thrupp'),
    daysAgo: 25,
    ends: 'declined',
    answers: {
      body: 'van',
      dangers: ['film'],
      size: 'large',
      year: 2012,
      services: ['paint', 'stickers'],
      wish: 'improve',
      'paint-history': 'original',
      colour: 'white',
      'film-kind': ['lettering'],
      'film-where': ['doors', 'rear'],
      'film-age': 11,
      'film-state': ['cracked'],
      defects: ['dull'],
      use: 'work',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 12)
      await quote(d)
      await decline(d, 'More than the van is worth to me. Thank you for being plain about it.')
    },
  },
  {
    id: 'city-car-silent',
    person: person('Hester Plum'),
    daysAgo: 60,
    ends: 'lapsed',
    answers: {
      body: 'city-car',
      dangers: [],
      size: 'small',
      year: 2018,
      services: ['cabin'],
      'cabin-state': 'tidy',
      colour: 'mid',
      use: 'daily-outdoors',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 7)
      await quote(d)
      waitHours(d, 31 * 24)
      await move(d, 'lapsed')
    },
  },
  {
    id: 'coupe-taken-back',
    person: person('Ivo Sandering'),
    daysAgo: 14,
    ends: 'withdrawn',
    answers: {
      body: 'coupe',
      dangers: [],
      size: 'mid',
      year: 2008,
      services: ['paint'],
      wish: 'improve',
      'paint-history': 'original',
      colour: 'dark',
      defects: ['scratches', 'wash-marks'],
      use: 'weekend',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 30)
      const path = `/api/v1/enquiries/${d.id}/withdrawal`
      await d.app.send('POST', path, { key: d.key, body: {} })
    },
  },
  {
    id: 'boat-not-ours',
    person: person('Juno Saltmarsh'),
    daysAgo: 11,
    ends: 'turned-down',
    answers: {
      body: 'boat',
      dangers: [],
      size: 'large',
      year: 2005,
      services: ['paint'],
      colour: 'white',
      use: 'stored',
    },
    course: async (d) => {
      await answerAll(d)
      await submit(d)
      waitHours(d, 4)
      await move(
        d,
        'turned-down',
        'Gelcoat is not our trade. A boatyard near you will know it better than we do.',
      )
    },
  },
]
