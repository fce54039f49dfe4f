import type { PaintSettings } from './constants'
import { type FinishSystem, lowerReach, type PanelFacts, type Reach, type Why, why } from './types'

export type GuardInput = {
  readonly facts: PanelFacts
  readonly finish: FinishSystem
  /** Colour coat on top, known or likely: single stage or lacquer. */
  readonly colour: boolean
  readonly year: number | null
  readonly unknownHistory: boolean
  readonly total: number | null
  readonly thinnest: number | null
  /** The thickest total the prior still believes; paint beyond it says nothing about the topcoat. */
  readonly believable: number
  readonly reference: number | null
  readonly fullyCleared: boolean
}

export type Guarded = {
  readonly reach: Reach
  /** µm never passed on this panel, beside the other caps. */
  readonly cap: number
  /** Nothing abrasive, whatever the numbers say. */
  readonly stop: boolean
  readonly whys: readonly Why[]
}

type Rule = {
  readonly reach: Reach
  readonly why: Why
  readonly stop?: boolean
  readonly cap?: number
}

const stopAt = (reach: Reach, w: Why): Rule => ({ reach, why: w, stop: true })

/** Facts about the surface itself. */
const surfaceRules = (g: GuardInput, s: PaintSettings): readonly Rule[] => {
  const { facts, finish } = g
  const rules: Rule[] = []
  if (facts.peel) rules.push(stopAt('none', why('paint.why.peel')))
  if (facts.haze) rules.push(stopAt('none', why('paint.why.haze')))
  if (finish === 'matte') rules.push(stopAt('none', why('paint.why.matte')))
  if (facts.underFilm) rules.push({ reach: 'none', why: why('paint.why.under-film') })
  const days = facts.refinishAge
  if (facts.refinish !== 'original' && days !== undefined && days < s.freshResprayDays)
    rules.push(stopAt('none', why('paint.why.fresh-respray', { days, limit: s.freshResprayDays })))
  if (facts.checking) rules.push({ reach: 'glaze', why: why('paint.why.checking') })
  if (finish === 'lacquer') rules.push({ reach: 'hand', why: why('paint.why.lacquer') })
  if (finish === 'single-stage-metallic')
    rules.push(stopAt('glaze', why('paint.why.single-stage-metallic')))
  if (facts.edgesThrough) rules.push({ reach: 'hand', why: why('paint.why.edges-through') })
  if (facts.blendEdge)
    rules.push({ reach: 'cut', why: why('paint.why.blend-edge', { mm: s.blendZoneMm }) })
  return rules
}

/** Filler under the paint: its surface is left as it is, no flatness is promised. */
const fillerRules = (g: GuardInput, s: PaintSettings): readonly Rule[] => {
  const total = g.total
  if (total === null || total <= s.fillerLikely) return []
  return total > s.fillerSure
    ? [stopAt('glaze', why('paint.why.filler-sure', { total, limit: s.fillerSure }))]
    : [{ reach: 'light', why: why('paint.why.filler-likely', { total, limit: s.fillerLikely }) }]
}

/** The trade's bands on the thinnest spot. */
const totalRules = (g: GuardInput, s: PaintSettings): readonly Rule[] => {
  const thinnest = g.thinnest
  if (thinnest === null) return []
  if (thinnest < s.thinStop)
    return [stopAt('glaze', why('paint.why.thin-total-stop', { thinnest, limit: s.thinStop }))]
  const rules: Rule[] = []
  if (thinnest < s.thinHand)
    rules.push({
      reach: 'hand',
      why: why('paint.why.thin-total-hand', { thinnest, limit: s.thinHand }),
    })
  else if (thinnest < s.thinLight)
    rules.push({
      reach: 'light',
      why: why('paint.why.thin-total-light', { thinnest, limit: s.thinLight }),
    })
  if (g.colour && thinnest < s.singleStageMachine)
    rules.push({
      reach: 'hand',
      why: why('paint.why.single-stage-thin', { thinnest, limit: s.singleStageMachine }),
    })
  return rules
}

/** The reference against the thinnest spot: a small difference means little clear, unless the jamb is fully cleared. */
const differenceRules = (g: GuardInput, s: PaintSettings): readonly Rule[] => {
  if (g.thinnest === null || g.reference === null) return []
  // More than the factory ever sprays is not more clear: it must not open the difference.
  const difference = Math.min(g.thinnest, g.believable) - g.reference
  const old = g.year === null || g.year < s.recentYear
  if (difference > s.smallDifference) return []
  const params = { difference, thinnest: g.thinnest, reference: g.reference }
  const unsure = old || g.unknownHistory
  if (difference < s.tinyDifference && unsure)
    return [
      { reach: 'hand', why: why('paint.why.small-difference', params) },
      { reach: 'hand', why: why('paint.why.jamb-painted-question', params) },
    ]
  if (!unsure && g.thinnest >= s.clearedJambTotal && g.fullyCleared)
    return [
      {
        reach: 'cut',
        cap: s.clearedJambCap,
        why: why('paint.why.cleared-jamb-cap', { ...params, cap: s.clearedJambCap }),
      },
    ]
  return [{ reach: 'light', why: why('paint.why.small-difference', params) }]
}

/**
 * Common-practice guards, on the thinnest spot and never on the mean. They only ever lower.
 * Bands are half open: a reading on a limit belongs to the band above it.
 */
export const guardPanel = (g: GuardInput, s: PaintSettings): Guarded => {
  const rules = [
    ...surfaceRules(g, s),
    ...fillerRules(g, s),
    ...totalRules(g, s),
    ...differenceRules(g, s),
  ]
  return {
    reach: rules.reduce<Reach>((r, rule) => lowerReach(r, rule.reach), 'cut'),
    cap: Math.min(Number.POSITIVE_INFINITY, ...rules.map((r) => r.cap ?? Number.POSITIVE_INFINITY)),
    stop: rules.some((r) => r.stop === true),
    whys: rules.map((r) => r.why),
  }
}

/**
 * Is a machine allowed at this place? Edges, ridges and swage lines within the edge zone have no allowance,
 * and no machine runs within the blend zone of a suspected repair. Distances in mm, null when there is none.
 */
export const zoneAllowsMachine = (
  edgeMm: number | null,
  blendMm: number | null,
  s: PaintSettings,
): boolean =>
  (edgeMm === null || edgeMm > s.edgeZoneMm) && (blendMm === null || blendMm > s.blendZoneMm)
