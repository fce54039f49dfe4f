import type { Bench } from '../../docket/bench'
import type { ReIssued } from '../../docket/re-issued'
import type { Suggestion } from '../../jobsheet/finding-kinds'
import type { Sheet } from '../../jobsheet/sheet'
import type { Note } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import type { Refused } from '../parts/refused'
import type { ViewMore } from './view-more'

export type FindingView = {
  readonly id: string
  readonly place: string
  readonly text: string
  readonly photoSrc?: string
  readonly panel?: string
  /** Seen when the car came. */
  readonly arrival: boolean
  readonly suggestion: Suggestion | null
}

export type BenchExtraView = {
  /** The finding it was asked from. */
  readonly finding: string | null
  readonly extra: string
  readonly text: string
  readonly minutes: number
  readonly total: number
  readonly within: boolean
  readonly decision: 'agree' | 'refuse' | null
}

export type Unsent = {
  readonly n: number
  readonly why: 'away' | 'signed-out'
  /** Lines the studio did not take: what was typed, and why not. */
  readonly refused: readonly { readonly id: string; readonly what: string; readonly why: string }[]
}

/** A job as the bench sees it: plain data, so that it can be shown without a signal. */
export type BenchView = ViewMore & {
  readonly id: string
  readonly reference: string
  readonly car: string
  readonly sheet: Sheet
  /** The step shown large; null when all are done. */
  readonly current: string | null
  readonly notes: readonly Note[]
  readonly checkIn: Bench['checkIn']
  readonly readings: Bench['readings']
  readonly polished: Bench['polished']
  readonly findings: readonly FindingView[]
  readonly removals: Bench['removals']
  readonly extras: readonly BenchExtraView[]
  /** What was agreed beforehand about extras; absent before a yes. */
  readonly agreement?: {
    readonly limit: number
    readonly left: number
    readonly unanswered: 'wait' | 'least' | 'named'
    readonly decides: string | null
  }
  /** Results that measuring made smaller, with the word on each. */
  readonly reIssues?: ReIssued['reIssues']
  /** What was told of the car, in words. */
  readonly facts: readonly { readonly prompt: string; readonly answer: string }[]
  readonly notesText: readonly { readonly id: string; readonly text: string }[]
  /** Lines written on this device that have not reached the studio; absent: the server shows it. */
  readonly unsent?: Unsent
}

/** Panels a reading may be taken on, in walking order. */
export const panelsOfSheet = (view: BenchView): readonly string[] =>
  view.sheet.panels.map((p) => p.panel)

/** What every part of the sheet is given. */
export type SheetPart = Refused & {
  readonly words: Words
  readonly view: BenchView
  readonly once: string
}
