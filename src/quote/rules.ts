import type { Phrase } from '../intake/question'
import type { Reader } from '../intake/reader'
import type { Context, KitPiece, ThreePoint } from './context'

export const TRACKS = ['arrival', 'body', 'paint', 'wheels', 'cabin', 'roof', 'finish'] as const
export type Track = (typeof TRACKS)[number]

export const UNITS = ['car', 'm2', 'panel', 'wheel', 'seat', 'm', 'piece', 'visit'] as const
export type Unit = (typeof UNITS)[number]

/** A row of a table as a figure took it: three-point minutes a unit, times the amount and its factors. */
export type RowUse = {
  readonly row: string
  readonly per: readonly [optimistic: number, likely: number, pessimistic: number]
  readonly times: number
  readonly source: string
}

/** What a step needs in the world the reader shows: minutes are person-minutes for the whole quantity. */
export type Need = {
  readonly quantity: { readonly amount: number; readonly unit: Unit }
  readonly minutes: ThreePoint
  /** The rows the minutes are the sum of. */
  readonly rows?: readonly RowUse[]
  /** Money for parts and products in minor units; absent none. */
  readonly money?: ThreePoint
  /** How likely it is needed at all in this world; absent 1. */
  readonly chance?: number
  /** Panels or places it is done on, as ids. */
  readonly places?: readonly string[]
  readonly params?: Phrase['params']
}

export type Lag = {
  /** Shortest wait after the step before what follows may start, in minutes. */
  readonly minutes: number
  readonly kind: 'elapsed' | 'working'
  readonly blocks: 'bay' | 'car'
  readonly why: 'dwell' | 'dry' | 'cure' | 'answer'
}

/**
 * One step of the catalogue: when it is needed, how long it takes, what must come before. Texts are
 * `step.<id>` (name), `step.<id>.do` (imperative, for the bench), cautions `caution.<id>`.
 */
export type StepRule = {
  readonly id: string
  readonly track: Track
  /** Place in the working order; equal numbers may go side by side. */
  readonly order: number
  /** Steps that must be finished before, where they are in scope. */
  readonly after: readonly string[]
  readonly crewMax: 1 | 2
  readonly machine: boolean
  readonly bay: boolean
  readonly lift: boolean
  /** May pause overnight; false: finish once started. */
  readonly pausable: boolean
  /** Done by an outside trade; takes no studio person. */
  readonly outside?: boolean
  /** Its hours are agreed once the thing was looked at: it stands in the list and in no figure. */
  readonly open?: boolean
  /** A hold: nothing behind it starts before it is settled (a yes, a proof, a dry reading). */
  readonly hold?: 'yes' | 'leak' | 'dry' | 'part'
  readonly kit: readonly KitPiece[]
  /** Lags by world; read after `need` said the step is in scope. */
  readonly lag?: (r: Reader, c: Context) => Lag | null
  readonly need: (r: Reader, c: Context) => Need | null
  readonly cautions: (r: Reader) => readonly string[]
  /** Offered by time with a cap in minutes instead of a fixed price; null: fixed. */
  readonly byTime?: (r: Reader, c: Context) => { readonly capMinutes: number } | null
  readonly materials?: readonly string[]
  readonly masks?: readonly string[]
  /** Checks it owes at refit: 'torque', 'recheck-distance', 'battery', 'belts', 'clips', 'dry', 'leak'… */
  readonly duties?: readonly string[]
  /** Where the minutes come from. */
  readonly source: string
}

/** Something that may turn up: its chance and what it would add. Text `event.<id>`. */
export type EventRule = {
  readonly id: string
  readonly need: (
    r: Reader,
    c: Context,
  ) => { readonly chance: number; readonly minutes: ThreePoint; readonly money?: ThreePoint } | null
  readonly source: string
}

export const SEVERITIES = ['stop', 'decide', 'know'] as const
export type Severity = (typeof SEVERITIES)[number]

/**
 * A risk note: `risk.<id>` (what it means), `risk.<id>.bench` (what the bench does about it),
 * `risk.<id>.decision` where the owner must decide or accept. It fires when `when` holds in worlds
 * that weigh at least `least` together.
 */
export type RiskRule = {
  readonly id: string
  readonly severity: Severity
  /** Higher stands first among notes of one severity. */
  readonly weight: number
  readonly decision?: boolean
  readonly least?: number
  readonly when: (r: Reader, c: Context) => Phrase['params'] | null
  readonly caution?: string
  readonly source: string
}

/** Something to check on arrival because it is not known. Text `open.<id>`. */
export type OpenRule = {
  readonly id: string
  readonly when: (r: Reader, c: Context) => boolean
  /** Why it is worth checking. */
  readonly source: string
}

/** Work that is refused, with the reason and where to turn. Texts `refuse.<id>`, `refuse.<id>.turn`. */
export type RefusalRule = {
  readonly id: string
  /** Steps it takes out of scope; 'all' for everything. */
  readonly steps: readonly string[] | 'all'
  readonly when: (r: Reader, c: Context) => Phrase['params'] | null
  /** Where the refusal comes from. */
  readonly source: string
}
