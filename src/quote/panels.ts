/** The outer painted panels of a car by body style: areas in m², in the order one walks round it. */

import {
  type BodyStyle,
  type PanelAreas,
  type PanelMaterial,
  type PanelSize,
  panelAreas,
  sizeAreaFactor,
} from './panel-areas'

export {
  type BodyStyle,
  bodyStyles,
  type PanelMaterial,
  type PanelSize,
  panelSizes,
} from './panel-areas'

export type BodyPanel = {
  readonly id: string
  readonly side: 'left' | 'right' | 'front' | 'rear' | 'top'
  readonly lie: 'horizontal' | 'upright'
  /** What it is usually made of; a gauge reading or the owner's word decides. */
  readonly material: PanelMaterial
  readonly areaM2: number
  /** The place a customer would name: both doors of a side are one place. */
  readonly place: string
  readonly sill: boolean
}

const sidePanels = (row: PanelAreas, side: 'left' | 'right'): readonly BodyPanel[] => {
  const material = row.skin ?? 'steel'
  const make = (id: string, areaM2: number | null | undefined, place: string, sill = false) =>
    areaM2 === null || areaM2 === undefined
      ? []
      : [{ id, side, lie: 'upright' as const, material, areaM2, place, sill }]
  const second = row.rearDoor ?? (side === 'right' ? row.rightOnlyDoor : undefined)
  // A sliding door is cut out of the side it closes.
  const slid = side === 'right' ? (row.rightOnlyDoor ?? 0) : 0
  return [
    ...make(`front-${side}`, row.wing, `front-${side}`),
    ...make(`${side}-front-door`, row.frontDoor, `${side}-doors`),
    ...make(`${side}-rear-door`, second, `${side}-doors`),
    ...make(`${side}-sill`, row.sill, `${side}-sill`, true),
    ...make(`rear-${side}`, row.quarter - slid, `rear-${side}`),
  ]
}

const endPanels = (
  row: PanelAreas,
): Readonly<Record<'rear' | 'front' | 'top', readonly BodyPanel[]>> => {
  const skin = row.skin ?? 'steel'
  const make = (
    id: string,
    side: BodyPanel['side'],
    lie: BodyPanel['lie'],
    areaM2: number,
    material: PanelMaterial,
  ): BodyPanel => ({ id, side, lie, material, areaM2, place: id, sill: false })
  const bumper = row.bumpers ?? 'plastic'
  return {
    rear: [
      make('rear-bumper', 'rear', 'upright', row.rearBumper, bumper),
      make('boot', 'rear', row.bootLie ?? 'horizontal', row.boot, skin),
    ],
    front: [
      make('front-bumper', 'front', 'upright', row.frontBumper, bumper),
      make('bonnet', 'front', 'horizontal', row.bonnet, skin),
    ],
    top: row.roof === null ? [] : [make('roof', 'top', 'horizontal', row.roof, skin)],
  }
}

/**
 * Outer panels of a body style and size, walking round from the left front and ending on top. Areas in m², own
 * estimate, a studio may set its own. `size` scales every area.
 */
export const panelsOf = (style: BodyStyle, size: PanelSize = 'mid'): readonly BodyPanel[] => {
  const row = panelAreas[style]
  const f = sizeAreaFactor[size]
  const ends = endPanels(row)
  return [
    ...sidePanels(row, 'left'),
    ...ends.rear,
    ...[...sidePanels(row, 'right')].reverse(),
    ...ends.front,
    ...ends.top,
  ].map((p) => ({ ...p, areaM2: p.areaM2 * f }))
}

/** Sum of the outer panels in m². */
export const outerAreaM2 = (panels: readonly BodyPanel[]): number =>
  panels.reduce((sum, p) => sum + p.areaM2, 0)

/** Panels a customer's place stands for: a panel's own id, both doors of a side, the rest by name. */
export const panelsAt = (panels: readonly BodyPanel[], place: string): readonly string[] =>
  panels.filter((p) => p.id === place || p.place === place).map((p) => p.id)
