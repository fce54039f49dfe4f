import { mean } from '../../kernel/statistics'
import { zincUm } from './constants'
import { gaugeBias, probeMode, unreadableWhy } from './gauge'
import { discordant, type Measured, poolSpots, type Spot, spotOf } from './spot'
import { type Gauge, type PaintSet, type PanelSubstrate, type Why, why } from './types'

/** What the usable sets of one place say: thickness, thinnest spot, probe mode, and what was wrong. */
export type Read = {
  readonly total: Required<Measured> | null
  readonly thinnest: number | null
  readonly mode: string | null
  readonly readings: number
  readonly refused: boolean
  readonly overFilm: boolean
  readonly whys: readonly Why[]
}

const usable = (set: PaintSet): readonly number[] =>
  set.values.filter((v) => Number.isFinite(v) && v > 0)

/** A map's values are places of their own; a named spot's and a reference's values are repeats. */
const spotsOf = (set: PaintSet, gauge: Gauge): readonly Spot[] =>
  set.spot === undefined && set.kind === 'panel'
    ? usable(set).map((v) => spotOf([v], gauge))
    : [spotOf(usable(set), gauge)]

const isRepeats = (set: PaintSet): boolean => set.spot !== undefined || set.kind === 'reference'

/**
 * Reads the sets of one panel or one reference, all on one substrate. A set that cannot be read is never 0:
 * it is left out and named. A discordant set gives no mean, yet its lowest value still guards.
 */
export const readSets = (
  sets: readonly PaintSet[],
  substrate: PanelSubstrate,
  gauge: Gauge,
): Read => {
  const whys: Why[] = []
  const readable = sets.filter((set) => {
    const reason = unreadableWhy(set, substrate)
    if (reason !== null) whys.push(reason)
    if (usable(set).length < set.values.length) whys.push(why('paint.why.bad-value'))
    return reason === null && usable(set).length > 0
  })
  const mode = readable[0] === undefined ? null : probeMode(readable[0], substrate)
  const sameMode = readable.filter((set) => probeMode(set, substrate) === mode)
  if (sameMode.length < readable.length) whys.push(why('paint.why.mixed-probes'))
  const good = sameMode.filter((set) => {
    if (!isRepeats(set) || !discordant(usable(set))) return true
    const values = usable(set)
    whys.push(
      why('paint.why.discordant', {
        low: Math.min(...values),
        high: Math.max(...values),
        mean: mean(values),
      }),
    )
    return false
  })
  if (substrate === 'galvanised' && mode !== null && mode !== 'ultrasonic')
    whys.push(why('paint.why.zinc-counted', zincUm))
  const spots = good.flatMap((set) => spotsOf(set, gauge))
  const discarded = sameMode.filter((set) => !good.includes(set)).flatMap(usable)
  const lowest = [...spots.map((s) => s.mean), ...discarded.map((v) => v - gaugeBias(gauge))]
  return {
    total: spots.length === 0 ? null : poolSpots(spots, gauge),
    thinnest: lowest.length === 0 ? null : Math.min(...lowest),
    mode,
    readings: spots.reduce((n, s) => n + s.n, 0),
    refused: sets.length > 0 && readable.length === 0,
    overFilm: sets.some((set) => set.overFilm === true),
    whys,
  }
}
