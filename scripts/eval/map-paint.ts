import { firstSaid, orUnknown, said, type Told } from './case'

const PANELS = [
  [/\bnose|bumper/, 'front-bumper'],
  [/bonnet|hood/, 'bonnet'],
  [/roof/, 'roof'],
  [/\btrunk|\bboot lid/, 'boot'],
  [/wing|fender/, 'front-left'],
  [/door/, 'left-doors'],
] as const

const PEEL_PLACES = [
  [/bonnet|hood/, 'bonnet'],
  [/roof/, 'roof'],
  [/trunk|boot lid/, 'boot'],
  [/wing|fender|flare/, 'wings'],
  [/door/, 'doors'],
] as const

const DEFECTS = [
  [/haz[ey]|hologram|buffer trail/, 'haze'],
  [/swirl|wash marks|hologram|sponge/, 'wash-marks'],
  [/scratch|scuff|flaws/, 'scratches'],
  [/deep scratch|keyed|gouge/, 'nail-scratch'],
  [/chip|gravel/, 'chips'],
  [/dull|dead flat|oxid|fade|gone pink|neglect|years of sun/, 'dull'],
  [/etch|bird/, 'etching'],
  [/overspray/, 'overspray'],
  [/fallout|\brail|industry|\btar\b/, 'fallout'],
  [/burn-?through|cut through|bare edge|already wearing|coating comes away/, 'burn-through'],
  [/\brust|corro/, 'rust'],
] as const

const COLOURS = [
  [/\bblack\b/, 'black'],
  [/\b(dark|navy)\b/, 'dark'],
  [/\b(red|orange|yellow|pink)\b/, 'red-orange-yellow'],
  [/\bwhite (car|van|paint|sedan)/, 'white'],
  [/\bsilver\b/, 'light'],
] as const

const historyOf = (t: Told): string | undefined => {
  if (
    t.says(/part repaint|touch(ed)?[- ]?up|earlier paintwork|repaired panel|bumper (was )?repaired/)
  )
    return 'part'
  if (t.says(/repaint|resprayed|non-factory|\bcustom\b|re-?done paint/)) return 'all'
  if (t.says(/original|impeccable|brand[- ]new|nearly new|\bnew (electric|boat|car)|no repairs/))
    return 'original'
  return undefined
}

const clothOf = (t: Told): string | undefined => {
  if (t.says(/mixed: |mixed paint|one colour .{0,40}single[- ]stage/)) return 'part'
  if (t.says(/single[- ]stage|lacquer|cloth (goes|turns)/)) return 'colour'
  return t.says(/base\/clear|clear ?coat/) ? 'clean' : undefined
}

const WEEKS: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, six: 6, eight: 8 }
const weeksOf = (t: Told): number | undefined => {
  const n = /(?:painted|sprayed|repaint).{0,30}?(\d+|two|three|four|six|eight) weeks/.exec(
    t.all,
  )?.[1]
  return n === undefined ? undefined : (WEEKS[n] ?? Number(n))
}

export const peeling = (t: Told): boolean =>
  /peel(s|ing)|blister|clear .{0,12}fail|failed clear|delamin|comes away|lost its colour coat|milky/.test(
    t.bare.replace(/rust blisters|simple peel/g, ''),
  )

export const freshPaint = (t: Told): boolean =>
  /fresh (re)?paint|recent(ly)? (re)?(paint|spray)|after a repaint|sprayed .{0,20}weeks ago/.test(
    t.bare,
  )

const PAINT_WORK =
  /swirl|scratch|scuff|polish|correct|oxid|dull|\bflat\b|fade|haze|hologram|compound|buff|etch|bird|flaw|mirror|orange peel|concours|mark(s|ed)?\b|clear blister|peel|paint|gelcoat|worn|single[- ]stage|fallout|boat|coach|in\/out detail/

/** The paint itself is to be worked on: said of the car, not only of its cabin, engine or film. */
export const paintWork = (t: Told): boolean => PAINT_WORK.test(t.bare)

/** What is told of the paint. */
export const mapPaint = (t: Told): Record<string, unknown> => ({
  'paint-history': historyOf(t),
  'respray-panels': orUnknown(said(t.bare, PANELS)),
  'fresh-paint-weeks': weeksOf(t),
  colour: firstSaid(t.bare, COLOURS) ?? 'mid',
  'cloth-test': clothOf(t),
  finish: t.says(/metallic|candy|silver/)
    ? 'metallic'
    : t.says(/single[- ]stage|solid/)
      ? 'solid'
      : undefined,
  'peel-where': orUnknown(said(t.bare, PEEL_PLACES)),
  defects: orUnknown(said(t.bare, DEFECTS)),
  wish: t.says(/mirror|perfection|concours|show car|for a show|magazine/)
    ? 'show'
    : t.says(/preserve|small flaws|to be sold|budget|keep it as it is/)
      ? 'preserve'
      : 'improve',
  'polished-before': firstSaid(t.all, [
    [/polished many|many polishes|dealer|detailer finished/, 'often-or-dealer'],
    [/several earlier|earlier buffing|buffed before|machine polishes/, 'several'],
    [/brand[- ]new|never polished/, 'never'],
  ] as const),
  'earlier-protection': orUnknown(
    said(t.bare, [
      [/\bcoated|ceramic/, 'coating'],
      [/\bwax|sealed/, 'wax'],
      [/cleaner wax|scratch remover|coloured compound/, 'scratch-remover'],
      [/silicone/, 'silicone'],
    ] as const),
  ),
  'panel-material': firstSaid(t.all, [
    [/alumin/, 'aluminium'],
    [/carbon|aramid|composite|fibre|plastic (parts|panels|side)|gel-?coat/, 'plastic-composite'],
    [/\bsteel\b/, 'steel'],
  ] as const),
  'hard-soft': firstSaid(t.all, [
    [/\bsoft\b|low pencil hardness/, 'marks-easily'],
    [/\bhard\b/, 'very-hard'],
  ] as const),
})
