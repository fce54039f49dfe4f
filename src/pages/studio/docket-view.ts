import type { Docket } from '../../docket/fold'
import type { Adjustment, Offer } from '../../docket/kinds'
import type { State } from '../../docket/states'
import type { Estimate } from '../../quote/estimate-types'
import type { PhotoView } from '../intake/question-view'

export type FactView = {
  readonly question: string
  readonly prompt: string
  readonly answer: string
  readonly by: string
  readonly unsure: boolean
  /** Taken over from an earlier visit and not said anew. */
  readonly lastTime?: boolean
  /** Why the studio changed it for the customer. */
  readonly corrected?: string
  readonly askedAgain?: boolean
}

export type HistoryLine = {
  readonly at: string
  readonly by: string
  readonly text: string
  /** What somebody typed on it: a question, a reply, a finding. */
  readonly said?: string
  /** Reason it was struck; struck lines stay and count nowhere. */
  readonly struck?: string
}

export type RevisionView = Pick<
  Docket['revisions'][number],
  'revision' | 'offer' | 'validUntil' | 'sentAt'
> & {
  /** What it changes against the one before, in sentences. */
  readonly changes: readonly string[]
  /** Total and deposit as written, in the money it was made in. */
  readonly totalText: string
  readonly depositText: string
  /** The ways it offers, each with what it comes to. */
  readonly options: readonly string[]
}

/** The last visit of the same car. */
export type LastVisit = {
  readonly id: string
  readonly reference: string | null
  readonly date: string
  readonly readings: readonly {
    readonly panel: string
    readonly before: number | null
    readonly after: number | null
  }[]
}

/** A docket as the studio looks at it. */
export type DocketView = {
  readonly id: string
  readonly rev: number
  readonly reference: string | null
  readonly state: State
  readonly whyMoved: string | null
  readonly car: string
  readonly plate?: string
  readonly person: {
    readonly name: string
    readonly email?: string
    readonly phone?: string
  } | null
  readonly facts: readonly FactView[]
  readonly photos: readonly PhotoView[]
  /** Questions that are still open, as prompts. */
  readonly unknowns: readonly string[]
  /** Asked and not known: may be asked again or answered for the customer. */
  readonly unsure?: readonly { readonly question: string; readonly prompt: string }[]
  /** Asked again and not answered yet. */
  readonly waiting?: readonly { readonly prompt: string; readonly text: string | null }[]
  /** Sentences about answers that do not fit together. */
  readonly contradictions: readonly string[]
  readonly estimate: Estimate | null
  /** What would be offered: the engine's offer with the adjustments in force or on trial. */
  readonly offer: Offer | null
  readonly adjustments: readonly Adjustment[]
  /** The ways offered in the last revision, as the form takes them. */
  readonly options?: readonly {
    readonly option: string
    readonly treatment: string
    readonly panels: readonly string[]
    readonly text: string
  }[]
  /** Changes that no longer apply to anything, in words. */
  readonly dropped: readonly string[]
  readonly revisions: readonly RevisionView[]
  /** Why it may not be from a person; empty when nobody doubts it. */
  readonly doubts: readonly string[]
  /** A customer's question waiting for a reply. */
  readonly question: string | null
  readonly moves: readonly State[]
  readonly history: readonly HistoryLine[]
  readonly agreedTotal?: number
  readonly dated?: {
    readonly start: string
    readonly startMinute?: number
    readonly readyLikely: string
    readonly readyCautious: string
  }
  readonly last?: LastVisit
  readonly inHand?: InHandView
  /** The studio's own questions with what was answered. */
  readonly own?: readonly {
    readonly id: string
    readonly prompt: string
    readonly answer: string | null
  }[]
  /** Work of the studio's own that can be added, by name. */
  readonly ownWork?: readonly string[]
  readonly canCorrect?: boolean
  readonly canAsk?: boolean
}

/** What a trial changes, side by side; the words stand ready. */
export type TrialView = {
  readonly rows: readonly {
    readonly what: string
    readonly before: string
    readonly after: string
  }[]
  /** What each option on trial comes to. */
  readonly options?: readonly string[]
  readonly notesGone: readonly string[]
  readonly notesNew: readonly string[]
}

/** Somebody else wrote meanwhile: what, and what both changed. */
export type StaleView = {
  readonly lines: readonly { readonly at: string; readonly by: string; readonly text: string }[]
  readonly both: readonly string[]
}

/** What has to be there before the car comes; the words stand ready. */
export type InHandView = {
  readonly items: readonly {
    readonly n: number
    readonly item: string
    readonly thing: string
    readonly steps: readonly string[]
    readonly state: 'wanted' | 'on-its-way' | 'in-hand'
    readonly expected: string | null
    readonly when: string
    readonly late: boolean
  }[]
}

/** What stands against a day in words, with the day as it was typed. */
export type AgainstView = {
  readonly start: string
  readonly time: string
  readonly conflicts: readonly string[]
  readonly ready: { readonly date: string; readonly minute: number }
  readonly readyAlone: { readonly date: string; readonly minute: number }
  readonly firstFree: { readonly start: string; readonly startMinute: number } | null
}

/** Ready to paste: the sent link with the message around it. */
export type MessageView = {
  readonly text: string
  readonly subject: string
  /** The line it tells of, while nobody said that it was told. */
  readonly line?: string
  readonly email?: string
  readonly phone?: string
}
