import { type Case, firstSaid, said, type Told, toldOf } from './case'

const BODIES = [
  [/motorcycle|motorbike|\bbikes?\b/, 'motorcycle'],
  [/\bboat\b|yacht/, 'boat'],
  [/motor ?coach|motorhome|camper|caravan/, 'motorhome'],
  [/pick-?up|\btruck\b/, 'pickup'],
  [/\bvan\b/, 'van'],
  [/convertible|roadster|cabriolet|soft[- ]top/, 'convertible'],
  [/\bsuv\b|crossover|off-roader/, 'suv'],
  [/people carrier|seven-seater|\bmpv\b|minivan/, 'mpv'],
  [/estate|wagon/, 'estate'],
  [/hatch/, 'hatchback'],
  [/mid-engined|super ?car|sports car/, 'sports-car'],
  [/coupe/, 'coupe'],
  [/city car/, 'city-car'],
] as const

/** The year it happened in, where the year of the car and its age are both told; else `nowYear`. */
export const nowYearOf = (c: Case, nowYear: number): number => {
  const { year, age } = c.facts
  return typeof year === 'number' && typeof age === 'number' ? year + age : nowYear
}

const yearOf = (c: Case, t: Told, nowYear: number): number | undefined => {
  if (typeof c.facts.year === 'number') return c.facts.year
  if (typeof c.facts.age === 'number') return nowYear - c.facts.age
  const decade = /\b((?:19|20)\d)0s/.exec(t.all)?.[1]
  if (decade !== undefined) return Number(decade) * 10 + (t.says(/late[- ]\d{4}s/) ? 8 : 5)
  return t.says(/brand[- ]new|\bnew car|delivered new/) ? nowYear : undefined
}

const DRIVE = [
  [/battery (is )?flat|flat battery|battery charger/, 'flat-battery'],
  [/no start|does not start|won't start|non-runner/, 'no-start'],
  [/flat tyres/, 'flat-tyres'],
  [/weak brakes|no brakes/, 'weak-brakes'],
] as const

const USES = [
  [
    /parked for years|months? at a|stood|stored|parked \S+ months|storage|in the garage for/,
    'stored',
  ],
  [/concours|show car|magazine|collector|investment/, 'show'],
  [/\btrack\b|race-style/, 'track'],
  [/former work|work (truck|van)|fleet/, 'work'],
  [/outside|outdoor|daily|lots of sun|gravel/, 'daily-outdoors'],
  [/garaged/, 'weekend'],
] as const

const TODAY_OR_TOMORROW = /tomorrow|in one day|day before|same day|\d ?pm\b/
const SOON =
  /fixed date|deadline|to be returned|must go back|distant buyer|in days\b|before the (show|sale)/

const dayAfter = (today: string, days: number): string =>
  new Date(Date.parse(`${today}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10)

const deadlineOf = (t: Told, today: string): string | undefined =>
  t.says(TODAY_OR_TOMORROW) ? dayAfter(today, 1) : t.says(SOON) ? dayAfter(today, 7) : undefined

const kilometres = (t: Told): number | undefined => {
  const found = /(\d[\d ,.]*)[- ]?(km|miles)\b/.exec(t.all)
  if (found === null) return undefined
  const n = Number((found[1] ?? '').replace(/[ ,.]/g, ''))
  return Math.round(found[2] === 'km' ? n : n * 1.609)
}

/** What is told of the car, its use and its owner. */
export const mapCar = (c: Case, nowYear: number, today: string): Record<string, unknown> => {
  const t = toldOf(c)
  const drive = said(t.all, DRIVE)
  return {
    body: firstSaid(t.fact('body'), BODIES) ?? firstSaid(t.all, BODIES) ?? 'saloon',
    // Nothing said about its size: of the usual size, which its owner would know.
    size:
      firstSaid(t.all, [
        [/full-size|\blarge|luxury|six metres|long wheelbase/, 'large'],
        [/\bsmall (car|hatch)|compact/, 'small'],
      ] as const) ?? 'mid',
    year: yearOf(c, t, nowYear),
    use: firstSaid(t.all, USES),
    deadline: deadlineOf(t, today),
    'drive-state': drive.length > 0 ? drive : undefined,
    'engine-kind': firstSaid(t.all, [
      [/electric (sedan|car|suv|crossover|hatch|saloon)/, 'electric'],
      [/hybrid/, 'hybrid'],
    ] as const),
    mileage: kilometres(t),
    authority: t.says(/borrowed|not (his|her|my) car/)
      ? 'not-mine'
      : t.says(/leas(e|ed)\b/)
        ? 'lease-finance'
        : 'mine',
    'one-owner': t.says(/bought|new owner|no .{0,12}records|second owner|advert/)
      ? 'few'
      : undefined,
    'where-car': t.says(/at home|weather/) ? 'at-home' : 'bring',
    'kept-washed': t.says(/tunnel wash|brush(es| wash)|car wash|chamois/) ? 'brush' : undefined,
  }
}
