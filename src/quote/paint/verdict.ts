import { type Allowance, fits } from './allowance'
import type { PaintSettings } from './constants'
import { type PaintSequence, removal95, type SequenceId, sequences } from './sequences'
import { type Reach, reaches, type Verdict } from './types'

/** All that decides whether a sequence may be run on a panel; plain data, so the bench can hold it offline. */
export type Permit = {
  readonly reach: Reach
  readonly stop: boolean
  readonly unreadable: boolean
  readonly topcoatKnown: boolean
  readonly handOnly: boolean
  readonly allowance: Allowance
  readonly factor: number
  /** Counted removal of this job so far at its upper value, µm. */
  readonly counted: number
}

export type Consent = { readonly decision?: boolean; readonly testSpotPassed?: boolean }

export type Permission =
  | { readonly allowed: true; readonly by: 'allowance' | 'decision' }
  | { readonly allowed: false; readonly needs: 'decision' | 'test-spot' | 'nothing-helps' }

const isHand = (q: PaintSequence): boolean => q.reach === 'glaze' || q.reach === 'hand'

const within = (q: PaintSequence, reach: Reach): boolean =>
  reaches.indexOf(q.reach) <= reaches.indexOf(reach)

const fitsPlain = (q: PaintSequence, p: Permit, s: PaintSettings): boolean =>
  within(q, p.reach) && fits(removal95(q.steps, p.factor), p.counted, isHand(q), p.allowance, s)

const fitsByDecision = (q: PaintSequence, p: Permit): boolean =>
  within(q, p.reach) && removal95(q.steps, p.factor) <= p.allowance.decision

/**
 * May this sequence be run? A decision never passes the guards or a cap, and an unknown topcoat asks for a
 * passed test spot before anything abrasive.
 */
export const allowed = (
  q: PaintSequence,
  p: Permit,
  s: PaintSettings,
  consent: Consent = {},
): Permission => {
  const plain = fitsPlain(q, p, s)
  const decided = fitsByDecision(q, p)
  if (!plain && !decided) return { allowed: false, needs: 'nothing-helps' }
  if (!plain && !consent.decision) return { allowed: false, needs: 'decision' }
  if (!p.topcoatKnown && q.reach !== 'glaze' && !consent.testSpotPassed)
    return { allowed: false, needs: 'test-spot' }
  return { allowed: true, by: plain ? 'allowance' : 'decision' }
}

const last = (list: readonly PaintSequence[]): SequenceId | null => list.at(-1)?.id ?? null

export type Deepest = {
  readonly plain: SequenceId | null
  readonly byDecision: SequenceId | null
}

/** The deepest sequence of the catalogue that fits, without and with the owner's written decision. */
export const deepestOf = (p: Permit, s: PaintSettings): Deepest => ({
  plain: last(sequences.filter((q) => fitsPlain(q, p, s))),
  byDecision: last(sequences.filter((q) => fitsPlain(q, p, s) || fitsByDecision(q, p))),
})

/** One word for the panel. A visible mark has no say in it. */
export const verdictOf = (p: Permit, { plain, byDecision }: Deepest): Verdict => {
  if (p.stop) return 'stop'
  if (p.unreadable) return 'cannot-be-read'
  if (plain === null) return 'stop'
  const q = sequences.find((x) => x.id === plain)!
  if (!isHand(q) && plain !== 'finish')
    return p.topcoatKnown ? 'another-set' : 'topcoat-unknown-test-spot'
  if (plain === 'finish') return 'finishing-only'
  if (byDecision !== plain) return 'by-decision'
  return plain === 'hand-finish' || p.handOnly ? 'finishing-only' : 'stop'
}
