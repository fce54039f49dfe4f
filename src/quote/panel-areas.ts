export const bodyStyles = [
  'city-car',
  'hatchback',
  'saloon',
  'estate',
  'coupe',
  'convertible',
  'sports-car',
  'suv',
  'mpv',
  'pickup',
  'van',
  'classic-small',
  'classic-large',
] as const
export type BodyStyle = (typeof bodyStyles)[number]

export const panelSizes = ['small', 'mid', 'large'] as const
export type PanelSize = (typeof panelSizes)[number]

export type PanelMaterial = 'steel' | 'aluminium' | 'plastic' | 'unknown'

/** Areas of a mid-sized body of the style in m²; null where there is no such painted panel. */
export type PanelAreas = {
  readonly wing: number
  readonly frontDoor: number
  readonly rearDoor: number | null
  /** A second door on the right only (sliding door). */
  readonly rightOnlyDoor?: number
  readonly sill: number
  readonly quarter: number
  readonly boot: number
  readonly bonnet: number
  readonly roof: number | null
  readonly frontBumper: number
  readonly rearBumper: number
  readonly bumpers?: PanelMaterial
  readonly skin?: PanelMaterial
  readonly bootLie?: 'horizontal' | 'upright'
}

/**
 * Own estimate from plain outlines (length × height of a side less glass and wheel arches, and so on). A classic's
 * bumpers are bright metal, so its painted valances stand in their place; a convertible has no painted roof.
 */
export const panelAreas: Readonly<Record<BodyStyle, PanelAreas>> = {
  'city-car': {
    wing: 0.45,
    frontDoor: 0.8,
    rearDoor: 0.55,
    sill: 0.14,
    quarter: 0.6,
    boot: 0.55,
    bonnet: 0.9,
    roof: 1.3,
    frontBumper: 0.65,
    rearBumper: 0.65,
    bootLie: 'upright',
  },
  hatchback: {
    wing: 0.55,
    frontDoor: 0.85,
    rearDoor: 0.7,
    sill: 0.18,
    quarter: 0.75,
    boot: 0.7,
    bonnet: 1.2,
    roof: 1.5,
    frontBumper: 0.8,
    rearBumper: 0.8,
    bootLie: 'upright',
  },
  saloon: {
    wing: 0.6,
    frontDoor: 0.85,
    rearDoor: 0.8,
    sill: 0.2,
    quarter: 0.9,
    boot: 0.9,
    bonnet: 1.5,
    roof: 1.4,
    frontBumper: 0.8,
    rearBumper: 0.8,
  },
  estate: {
    wing: 0.6,
    frontDoor: 0.85,
    rearDoor: 0.8,
    sill: 0.2,
    quarter: 1.15,
    boot: 0.8,
    bonnet: 1.5,
    roof: 2.1,
    frontBumper: 0.8,
    rearBumper: 0.8,
    bootLie: 'upright',
  },
  coupe: {
    wing: 0.6,
    frontDoor: 1.15,
    rearDoor: null,
    sill: 0.2,
    quarter: 1.1,
    boot: 0.8,
    bonnet: 1.5,
    roof: 1.2,
    frontBumper: 0.8,
    rearBumper: 0.8,
  },
  convertible: {
    wing: 0.6,
    frontDoor: 1.1,
    rearDoor: null,
    sill: 0.2,
    quarter: 1,
    boot: 0.9,
    bonnet: 1.4,
    roof: null,
    frontBumper: 0.8,
    rearBumper: 0.8,
  },
  'sports-car': {
    wing: 0.65,
    frontDoor: 1,
    rearDoor: null,
    sill: 0.25,
    quarter: 1.1,
    boot: 0.8,
    bonnet: 1.2,
    roof: 0.9,
    frontBumper: 1,
    rearBumper: 0.9,
    skin: 'unknown',
  },
  suv: {
    wing: 0.7,
    frontDoor: 0.95,
    rearDoor: 0.9,
    sill: 0.2,
    quarter: 1,
    boot: 0.9,
    bonnet: 1.6,
    roof: 2,
    frontBumper: 0.9,
    rearBumper: 0.8,
    bootLie: 'upright',
  },
  mpv: {
    wing: 0.6,
    frontDoor: 1,
    rearDoor: 1,
    sill: 0.22,
    quarter: 1.2,
    boot: 1,
    bonnet: 1.2,
    roof: 2.6,
    frontBumper: 0.9,
    rearBumper: 0.9,
    bootLie: 'upright',
  },
  pickup: {
    wing: 0.8,
    frontDoor: 1,
    rearDoor: 0.85,
    sill: 0.22,
    quarter: 1.3,
    boot: 0.8,
    bonnet: 1.7,
    roof: 1.6,
    frontBumper: 0.9,
    rearBumper: 0.4,
    bootLie: 'upright',
  },
  van: {
    wing: 0.5,
    frontDoor: 1.1,
    rearDoor: null,
    rightOnlyDoor: 1.7,
    sill: 0.25,
    quarter: 2.6,
    boot: 2,
    bonnet: 0.9,
    roof: 4,
    frontBumper: 0.8,
    rearBumper: 0.4,
    bootLie: 'upright',
  },
  'classic-small': {
    wing: 0.6,
    frontDoor: 0.85,
    rearDoor: null,
    sill: 0.15,
    quarter: 0.8,
    boot: 0.7,
    bonnet: 1.1,
    roof: 1.1,
    frontBumper: 0.25,
    rearBumper: 0.25,
    bumpers: 'steel',
  },
  'classic-large': {
    wing: 0.95,
    frontDoor: 0.95,
    rearDoor: 0.85,
    sill: 0.2,
    quarter: 1.3,
    boot: 1.4,
    bonnet: 2,
    roof: 1.9,
    frontBumper: 0.4,
    rearBumper: 0.4,
    bumpers: 'steel',
  },
}

/** Area of a small or large car of the style against a mid-sized one (own estimate). */
export const sizeAreaFactor: Readonly<Record<PanelSize, number>> = {
  small: 0.85,
  mid: 1,
  large: 1.2,
}
