import type { State } from './states'

/** How long personal data stays by itself, from the last change on; null: until somebody asks. */
export type Retention = {
  /** Days until an enquiry that was never sent is removed whole. */
  readonly unsentDays: number
  /** Months until a car we did no work on is nobody's any more. */
  readonly noJobMonths: number | null
  /** Months after the hand-over. */
  readonly jobMonths: number | null
}

/** What counts until the studio says otherwise (own estimate; what the law asks differs by country). */
export const DEFAULT_RETENTION: Retention = { unsentDays: 60, noJobMonths: 12, jobMonths: 120 }

export const UNSENT: readonly State[] = ['answering']
export const NO_JOB: readonly State[] = [
  'declined',
  'lapsed',
  'withdrawn',
  'turned-down',
  'called-off',
  'not-brought',
]
export const JOB_DONE: readonly State[] = ['handed-over']

const DAY = 86_400_000
/** A month as 31 days: never shorter than what was promised to be kept. */
const MONTH = 31 * DAY

export type Due = {
  readonly states: readonly State[]
  /** Last changed before this, UTC ms. */
  readonly before: number
  /** The whole docket goes, not only what tells whose it is. */
  readonly whole: boolean
}

/** Which dockets have stayed long enough at `now` (UTC ms). */
export const dueAt = (kept: Retention, now: number): readonly Due[] => [
  { states: UNSENT, before: now - kept.unsentDays * DAY, whole: true },
  ...(kept.noJobMonths === null
    ? []
    : [{ states: NO_JOB, before: now - kept.noJobMonths * MONTH, whole: false }]),
  ...(kept.jobMonths === null
    ? []
    : [{ states: JOB_DONE, before: now - kept.jobMonths * MONTH, whole: false }]),
]
