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

/** A docket as the studio looks at it. */
export type DocketView = {
  readonly id: string
  readonly rev: number
  readonly reference: string | null
  readonly state: State
  readonly whyMoved: string | null
  readonly car: string
  readonly person: {
    readonly name: string
    readonly email?: string
    readonly phone?: string
  } | null
  readonly facts: readonly FactView[]
  readonly photos: readonly PhotoView[]
  /** Questions that are still open, as prompts. */
  readonly unknowns: readonly string[]
  /** Sentences about answers that do not fit together. */
  readonly contradictions: readonly string[]
  readonly estimate: Estimate | null
  /** What would be offered: the engine's offer with the adjustments in force or on trial. */
  readonly offer: Offer | null
  readonly adjustments: readonly Adjustment[]
  /** Adjustments that no longer apply to anything. */
  readonly dropped: readonly Adjustment[]
  readonly revisions: readonly Pick<
    Docket['revisions'][number],
    'revision' | 'offer' | 'validUntil' | 'sentAt'
  >[]
  /** A customer's question waiting for a reply. */
  readonly question: string | null
  readonly moves: readonly State[]
  readonly history: readonly HistoryLine[]
}

/** Ready to paste: the sent link with the message around it. */
export type MessageView = {
  readonly text: string
  readonly subject: string
  readonly email?: string
  readonly phone?: string
}
