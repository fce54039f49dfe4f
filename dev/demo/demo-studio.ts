import { DEFAULT_PROFILE, type StudioProfile } from '../../src/quote/studio-profile'

const DAY = [
  { from: 510, to: 750 },
  { from: 795, to: 1020 },
]
const SHORT = [{ from: 510, to: 780 }]

/** An invented studio: two people, one bay, closed on Mondays' eve and most of the weekend. */
export const DEMO_STUDIO: StudioProfile = {
  ...DEFAULT_PROFILE,
  name: 'Lantern Yard Paint and Cabin (demo)',
  contact: 'Unit 3, the old rope works · studio@example.com · 01 555 0100',
  terms: [
    'A price holds until the day named on it.',
    'We measure before we polish and stop where the paint says so; what we may not take off, we leave.',
    'Work by time is charged by the quarter hour, never above the cap without your word.',
    'A car that waits for an answer longer than a day costs the bay-day rate.',
  ].join('\n'),
  ratePerHour: 5_800,
  materialsPerHour: 450,
  people: 2,
  bays: 1,
  lifts: 0,
  week: [DAY, DAY, DAY, DAY, DAY, SHORT, []],
  kit: [...DEFAULT_PROFILE.kit, 'ozone'],
  steps: { wash: { pace: 0.9 } },
}
