import { sizeFactor } from '../../intake/facts/size-factor'
import type { Reader } from '../../intake/reader'

export type BodyPanel = { readonly id: string; readonly area: number; readonly plastic: boolean }

const mid: readonly (readonly [id: string, area: number, plastic: boolean])[] = [
  ['bonnet', 1.5, false],
  ['roof', 1.5, false],
  ['boot', 0.9, false],
  ['front-left', 0.6, false],
  ['front-right', 0.6, false],
  ['rear-left', 0.9, false],
  ['rear-right', 0.9, false],
  ['left-doors', 1.7, false],
  ['right-doors', 1.7, false],
  ['front-bumper', 0.8, true],
  ['rear-bumper', 0.8, true],
]

/** The outer panels of this car with their painted area in m² (own estimate). */
export const bodyPanels = (r: Reader): readonly BodyPanel[] => {
  const f = sizeFactor(r)
  return mid.map(([id, area, plastic]) => ({ id, area: area * f, plastic }))
}
