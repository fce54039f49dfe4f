import type { Phrase } from '../../intake/question'
import type { Estimate } from '../estimate-types'
import { removalOf, type SequenceId, sequenceById } from '../paint'
import { levelOfTreatment, type Treatment } from './treatment'

type Work = Pick<Estimate, 'steps'>

/** Of each option the steps that not every one has, in working order: only how they differ. */
export const onlyHere = (options: readonly Work[]): readonly (readonly string[])[] => {
  const shared = (id: string): boolean => options.every((o) => o.steps.some((s) => s.id === id))
  return options.map((o) => o.steps.map((s) => s.id).filter((id) => !shared(id)))
}

/** What a level is run as, for what it takes off the paint. */
const SEQUENCE: Readonly<Partial<Record<string, SequenceId>>> = {
  finishing: 'finish',
  light: 'light',
  'two-step': 'two-step',
}

/** The middle eight tenths of a normal quantity, in standard deviations (standard normal table). */
const Z80 = 1.2816

/**
 * What a treatment leaves for later, as a sentence: the marks, the paint that is gone for good in whole
 * µm (one pass, ordinary clear coat), or another trade's work.
 */
export const leavesFor = (treatment: Treatment): Phrase => {
  const key = `option.${treatment}.leaves`
  const sequence = SEQUENCE[levelOfTreatment(treatment)]
  if (sequence === undefined) return { key }
  const { mean, sd } = removalOf(sequenceById(sequence).steps)
  const low = Math.max(0, Math.floor(mean - Z80 * sd))
  return { key, params: { low, high: Math.max(low + 1, Math.ceil(mean + Z80 * sd)) } }
}
