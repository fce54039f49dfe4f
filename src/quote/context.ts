import type { Zone } from '../kernel/calendar'
import type { LimitKey } from './paint/constants'

/** What the studio owns; a step that needs a missing piece is not offered and the estimate says so. */
export const KIT = [
  'lift',
  'stands',
  'steamer',
  'extractor',
  'dehumidifier',
  'moisture-meter',
  'hot-water',
  'hepa-vacuum',
  'air-compressor',
  'machine-polisher',
  'ozone',
  'torque-wrench',
  'battery-support',
  'gauge-ferrous',
  'gauge-dual',
] as const
export type KitPiece = (typeof KIT)[number]

export type ThreePoint = {
  readonly optimistic: number
  readonly mode: number
  readonly pessimistic: number
}

export type StepOverride = {
  /** Factor on the catalogue minutes (the studio's own speed); absent 1. */
  readonly pace?: number
  readonly off?: boolean
}

/** The studio as the engine sees it; every estimate keeps the revision it was made with. */
export type StudioSettings = {
  readonly rev: number
  readonly currency: string
  readonly exponent: number
  /** Minor units per person-hour. */
  readonly ratePerHour: number
  readonly taxMillionths: number
  readonly taxRounding: 'half-up' | 'half-even' | 'down'
  readonly taxBasis: 'line' | 'total'
  readonly pricesWithTax: boolean
  readonly roundTo: number
  readonly minimumCharge: number
  readonly offerPercentile: number
  readonly depositMillionths: number
  readonly bayDayRate: number
  /** Days in the bay that cost nothing; absent 0. */
  readonly bayDaysIncluded?: number
  /** Minor units per km beyond the free radius, there and back; absent 0. */
  readonly travelPerKm?: number
  readonly travelFreeMetres?: number
  /** What comes on top of an outside trade's cost; absent 0. */
  readonly subletMarginMillionths?: number
  readonly validDays: number
  readonly extrasLimit: number
  readonly materialsPerHour: number
  readonly people: number
  readonly bays: number
  readonly lifts: number
  /** Working spans per weekday, Monday first, in minutes of the local day. */
  readonly week: readonly (readonly { readonly from: number; readonly to: number }[])[]
  readonly daysOff: readonly string[]
  readonly machineMinutesPerPersonDay: number
  readonly dayCapMinutes: number
  readonly setUpMinutesPerDay: number
  readonly zone: Zone
  readonly kit: readonly KitPiece[]
  readonly steps: Readonly<Record<string, StepOverride>>
  /** Paint thresholds of the studio's own, held inside the hard limits; absent: the defaults. */
  readonly limits?: Partial<Readonly<Record<LimitKey, number>>>
}

/** What a rule may use besides the answers: the studio, the year it is, and what has been measured. */
export type Context = {
  readonly settings: StudioSettings
  readonly nowYear: number
  /** What readings allow; absent until something was measured. */
  readonly measured?: Measured
  /** How deep the studio chose to polish, by panel, or under 'car'; absent: as wished. */
  readonly chosen?: Readonly<Record<string, PolishLevel>>
}

/** The part of a measured car that rules use. Panels are ids of the panel table. */
export type Measured = {
  /** Deepest kind of polishing each panel allows. */
  readonly panels: readonly {
    readonly panel: string
    readonly allows: PolishLevel
    /** Under 100 µm in all, or at most 25 µm over the reference: better, not perfect. */
    readonly thin?: boolean
  }[]
}

/** How deep a panel or car is polished, mildest first. */
export const POLISH_LEVELS = ['none', 'hand', 'finishing', 'light', 'two-step'] as const
export type PolishLevel = (typeof POLISH_LEVELS)[number]

/** A lift counts only where one stands: a list of kit may name it while none can be booked. */
export const owns = ({ settings }: Context, piece: KitPiece): boolean =>
  settings.kit.includes(piece) && (piece !== 'lift' || settings.lifts > 0)
