import { firstSaid, orUnknown, said, type Told } from './case'

const MARKS = [
  [/\b(dogs?|pets?|cats?|shepherd)\b/, 'pet-hair'],
  [/\bsmok/, 'smoke'],
  [/\bmilk\b/, 'milk'],
  [/urine/, 'urine'],
  [/vomit|\bsick\b/, 'vomit'],
  [/stain|coffee|juice|spill|\brings\b|dirty carpet|food/, 'stains'],
  [/\bsand\b(?!ing)/, 'sand'],
  [/\bsalt\b|brine/, 'salt'],
  [/rubbish|cobweb|\bjunk/, 'rubbish'],
] as const

const CABIN =
  /carpet|interior|in\/out|inside the car|\bseats?\b|odou?r|smell|smok|\bdogs?\b|mould|mold|headliner|spill|cobweb|cabin|leather|growth/

export const wet = (t: Told): boolean =>
  t.fact('leak') !== '' ||
  /\bdamp\b|squelch|flood|soaked|wet (carpet|seat|floor)|\bleak/.test(t.bare)

export const growth = (t: Told): boolean =>
  t.fact('mold') !== '' ||
  /\bmould|\bmold|\bgrowth\b|\bmouse|\bmice|rodent|\bnest\b|\brats?\b/.test(t.bare)

export const cabinWork = (t: Told): boolean => CABIN.test(t.bare) || wet(t) || growth(t)

const stateOf = (t: Told, marks: readonly string[]): string | undefined => {
  if (t.says(/neglect|filthy|hopeless|\bmud\b|interior poor/) || marks.length >= 3)
    return 'neglected'
  if (marks.length > 0) return 'family'
  return t.says(/\btidy\b|impeccable/) ? 'tidy' : undefined
}

const sourceOf = (t: Told): string | undefined => {
  if (!wet(t)) return undefined
  return (
    firstSaid(t.bare, [
      [/sewage/, 'sewage'],
      [/flood/, 'flood'],
      [/leak (was )?repaired/, 'repaired'],
      [/left open|window open/, 'left-open'],
      [/firewall|bulkhead|seam|sunroof|traced|drain/, 'open'],
    ] as const) ?? 'unknown'
  )
}

/** What is told of the cabin, of water and of what grows there. */
export const mapCabin = (t: Told): Record<string, unknown> => {
  const marks = said(t.bare, MARKS)
  const rodents = /mouse|mice|rodent|\brats?\b/.test(t.bare)
  const everywhere = /heavy|everything|whole cabin/.test(t.bare)
  return {
    'cabin-state': stateOf(t, marks),
    'cabin-marks': orUnknown(marks),
    'wet-where': orUnknown(
      said(t.bare, [
        [/carpet|foot|floor|firewall|bulkhead/, 'front-floor'],
        [/everything|whole cabin/, 'rear-floor'],
        [/headliner/, 'headliner'],
        [/\bboot\b|trunk/, 'boot'],
        [/wet seat/, 'seats'],
      ] as const),
    ),
    'wet-source': sourceOf(t),
    'wet-depth': firstSaid(t.bare, [
      [/standing water/, 'standing'],
      [/squelch|soaked|litre|months with a/, 'soaked'],
    ] as const),
    growth: rodents ? ['droppings'] : everywhere ? ['mould-hard', 'mould-textile'] : undefined,
    'mould-area': everywhere
      ? 'larger'
      : firstSaid(t.bare, [
          [/coin/, 'coin'],
          [/hand-size/, 'hand'],
        ] as const),
    'sensitive-people': t.says(/asthma|infant|allerg/) ? true : undefined,
  }
}
