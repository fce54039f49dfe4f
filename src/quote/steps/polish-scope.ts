import { ageAs } from '../../intake/facts/age'
import { type FinishSystem, finishSystem } from '../../intake/facts/finish-system'
import { freshPanels, freshSomewhere } from '../../intake/facts/fresh-paint'
import { has } from '../../intake/facts/has'
import { is } from '../../intake/facts/is'
import { peeling, peels } from '../../intake/facts/peeling'
import { type PolishWish, polishWish } from '../../intake/facts/polish-wish'
import { resprayed } from '../../intake/facts/respray'
import { wants } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import { defects } from '../../intake/questions/defects'
import { paintHistory } from '../../intake/questions/paint-history'
import { polishedBefore } from '../../intake/questions/polished-before'
import type { Reader } from '../../intake/reader'
import { type Context, POLISH_LEVELS, type PolishLevel } from '../context'
import { type BodyPanel, outerAreaM2 } from '../panels'
import { bodyPanels } from './body-panels'
import { gaugeReads } from './readable'

/** Places of the body each place of the peeling question stands for; edges are taped, not left out. */
const peelPanels: Readonly<Record<string, readonly string[]>> = {
  bonnet: ['bonnet'],
  roof: ['roof'],
  boot: ['boot'],
  wings: ['front-left', 'front-right', 'rear-left', 'rear-right'],
  doors: ['left-doors', 'right-doors'],
  edges: [],
}
/** Left out when paint lifts and nobody knows where: it starts on what faces the sky. */
const peelUnknown: readonly string[] = ['bonnet', 'roof', 'boot']

export type PolishPlan = {
  /** Panels per kind of work; a panel is in one of them at most. */
  readonly glaze: readonly string[]
  readonly hand: readonly string[]
  readonly finishing: readonly string[]
  readonly light: readonly string[]
  /** Panels of `light` that a cut comes before, and how likely measuring allows it. */
  readonly cut: readonly string[]
  readonly cutChance: number
  /** Painted area in m² of named panels. */
  readonly area: (panels: readonly string[]) => number
}

/** Places no machine goes near: lifting paint, and paint too fresh to touch. */
export const leftOut = (r: Reader): readonly string[] | 'all' => {
  if (freshSomewhere(r)) return 'all'
  const places = peeling(r)
  const lifting = !peels(r)
    ? []
    : places.length === 0
      ? peelUnknown
      : places.flatMap((p) => peelPanels[p] ?? [])
  return [...lifting, ...freshPanels(r)]
}

/** Places painted again on a car that otherwise was not: what lies on top of them is not known. */
const repainted = (r: Reader): readonly string[] =>
  is(r, paintHistory, 'part') ? resprayed(r) : []

/** Share of the painted area that may be rubbed at all, 0 to 1. */
export const openShare = (r: Reader): number => {
  const out = leftOut(r)
  if (out === 'all') return 0
  if (out.length === 0) return 1
  const panels = bodyPanels(r)
  const open = panels.filter((p) => !out.includes(p.place))
  return outerAreaM2(open) / outerAreaM2(panels)
}

const cutOf = (system: FinishSystem, r: Reader, c: Context): number => {
  if (system === 'clear-coat') {
    const byAge = (years: number): number => (years <= 5 ? 0.65 : years <= 12 ? 0.5 : 0.3)
    return ageAs(r, c.nowYear, byAge) ?? 0.3
  }
  if (system === 'single-stage-solid' || system === 'refinished') return 0.2
  return system === 'unknown' ? 0.1 : 0
}

/**
 * How likely measuring will allow a cut, before anything is measured (own estimate): by finish system
 * and age, less after earlier polishing, never where no gauge reads or over burnt edges.
 */
export const cutChance = (r: Reader, c: Context): number => {
  if (has(r, defects, 'burn-through') || !gaugeReads(r, c)) return 0
  const plain = cutOf(finishSystem(r), r, c)
  if (plain === 0) return 0
  const left = r.as(polishedBefore, (before) =>
    before === 'several' ? 0.6 : before === 'often-or-dealer' ? 0.4 : 1,
  )
  return plain * (left ?? 1)
}

const shallower = (a: PolishLevel, b: PolishLevel): PolishLevel =>
  POLISH_LEVELS.indexOf(a) <= POLISH_LEVELS.indexOf(b) ? a : b

/** What is polished, panel by panel, in the world the reader shows; null when nothing is. */
export const polishPlan = (r: Reader, c: Context): PolishPlan | null => {
  const wished = polishWish(r)
  if (wished === 'none') return null
  const out = leftOut(r)
  if (out === 'all') return null
  const panels = bodyPanels(r)
  const open = panels.filter((p) => !out.includes(p.place))
  const chosenOf = (id: string): PolishLevel | undefined => c.chosen?.[id] ?? c.chosen?.car
  const wantedOf = (id: string): PolishLevel =>
    chosenOf(id) ?? (wished === 'glaze' ? 'hand' : wished)
  const level = ({ id, material }: BodyPanel): PolishLevel => {
    const wanted = wantedOf(id)
    if (wished === 'glaze' && chosenOf(id) === undefined) return 'hand'
    const read = c.measured?.panels.find((m) => m.panel === id)
    if (!read || material === 'plastic') return wanted === 'two-step' ? 'light' : wanted
    return shallower(wanted, read.allows)
  }
  const at = (l: PolishLevel): string[] => open.filter((p) => level(p) === l).map((p) => p.id)
  const deep = at('two-step')
  const light = [...at('light'), ...deep]
  const measured = c.measured !== undefined
  const cutting = open.filter((p) => wantedOf(p.id) === 'two-step' && p.material !== 'plastic')
  // Whose topcoat is unknown gets one light set until it has been read and the owner decided.
  const again = cutting.length === 0 || measured ? [] : repainted(r)
  const perhaps = cutting.filter((p) => !again.includes(p.place)).map((p) => p.id)
  const chance = perhaps.length === 0 ? 0 : measured ? 1 : cutChance(r, c)
  const cut = measured ? deep : chance > 0 ? perhaps : []
  const hand = at('hand')
  return {
    glaze: wished === 'glaze' ? hand : [],
    hand: wished === 'glaze' ? [] : hand,
    finishing: at('finishing'),
    light,
    cut,
    cutChance: cut.length === 0 ? 0 : chance,
    area: (ids) => panels.reduce((s, p) => (ids.includes(p.id) ? s + p.areaM2 : s), 0),
  }
}

/** True when something may be planned at one of these wishes; reads less than the whole plan does. */
export const mayPolish = (r: Reader, c: Context, wishes: readonly PolishWish[]): boolean =>
  c.measured !== undefined || c.chosen !== undefined || wishes.includes(polishWish(r))

/** True when anything is polished, by hand or machine; reads far less than the whole plan does. */
export const polishes = (r: Reader, c: Context): boolean => {
  if (!wants(r, 'paint') || has(r, dangers, 'matte') || freshSomewhere(r)) return false
  if (c.measured === undefined) return true
  const plan = polishPlan(r, c)
  return (
    plan !== null &&
    plan.glaze.length + plan.hand.length + plan.finishing.length + plan.light.length > 0
  )
}
