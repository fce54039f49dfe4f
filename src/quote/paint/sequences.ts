import { normalQuantile } from '../../kernel/statistics'
import type { PaintSettings } from './constants'
import type { Reach, Spread } from './types'

export type PaintStepId =
  | 'hand-glaze'
  | 'hand-finish'
  | 'finish'
  | 'gentle'
  | 'light'
  | 'cut-foam'
  | 'cut-microfibre'
  | 'cut-wool'
  | 'sand-3000'
  | 'sand-2000'
  | 'compound'

/**
 * Clear removed by one set (4-6 overlapping strokes over 50 × 50 cm, one pad and product), µm.
 * Inside the trade's bands: finishing 0.5 or less, light 1-2, medium 2.5-3 with a rotary, two-step 3-5,
 * wool 3-8, 3000 paper 1-3, 2000 paper 3-6 (common practice; no peer-reviewed rate was found).
 */
export const stepRemoval: Readonly<Record<PaintStepId, Spread>> = {
  'hand-glaze': { mean: 0, sd: 0 },
  'hand-finish': { mean: 0.2, sd: 0.15 },
  finish: { mean: 0.5, sd: 0.3 },
  gentle: { mean: 0.8, sd: 0.3 },
  light: { mean: 1.3, sd: 0.4 },
  'cut-foam': { mean: 2.3, sd: 0.6 },
  'cut-microfibre': { mean: 3.5, sd: 1.2 },
  'cut-wool': { mean: 5, sd: 1.5 },
  'sand-3000': { mean: 2, sd: 0.6 },
  'sand-2000': { mean: 4.5, sd: 1 },
  compound: { mean: 2, sd: 0.6 },
}

/** One set of each named step, in order; `reach` is the guard level the whole needs. */
export type PaintSequence = {
  readonly id: SequenceId
  readonly steps: readonly PaintStepId[]
  /** The kind of polishing it is priced as. */
  readonly level: 'hand' | 'finishing' | 'light' | 'two-step'
  readonly reach: Exclude<Reach, 'none'>
}

export const sequenceIds = [
  'hand-glaze',
  'hand-finish',
  'finish',
  'gentle',
  'light',
  'light-finish',
  'mild-cut',
  'two-step',
  'heavy-cut',
  'sand',
] as const
export type SequenceId = (typeof sequenceIds)[number]

/** The catalogue, weakest first: deepest means latest in this list. */
export const sequences: readonly PaintSequence[] = [
  { id: 'hand-glaze', level: 'hand', steps: ['hand-glaze'], reach: 'glaze' },
  { id: 'hand-finish', level: 'hand', steps: ['hand-finish'], reach: 'hand' },
  { id: 'finish', level: 'finishing', steps: ['finish'], reach: 'light' },
  { id: 'gentle', level: 'light', steps: ['gentle'], reach: 'light' },
  { id: 'light', level: 'light', steps: ['light'], reach: 'light' },
  { id: 'light-finish', level: 'light', steps: ['light', 'finish'], reach: 'cut' },
  { id: 'mild-cut', level: 'two-step', steps: ['cut-foam', 'finish'], reach: 'cut' },
  { id: 'two-step', level: 'two-step', steps: ['cut-microfibre', 'finish'], reach: 'cut' },
  { id: 'heavy-cut', level: 'two-step', steps: ['cut-wool', 'finish'], reach: 'cut' },
  {
    id: 'sand',
    level: 'two-step',
    steps: ['sand-2000', 'sand-3000', 'compound', 'finish'],
    reach: 'cut',
  },
]

export const sequenceById = (id: SequenceId): PaintSequence => sequences.find((s) => s.id === id)!

/**
 * How much more soft or single-stage paint gives than a factory clear. `colourWeight` is the chance of a colour
 * coat on top, so an unknown system lies between.
 */
export const removalFactor = (soft: boolean, colourWeight: number, s: PaintSettings): number => {
  const onClear = soft ? s.softFactor : 1
  const onColour = soft ? s.softSingleStageFactor : s.singleStageFactor
  return onClear + (onColour - onClear) * colourWeight
}

/** Removal of a list of independent steps in µm, every one scaled by the paint's factor. */
export const removalOf = (steps: readonly PaintStepId[], factor = 1): Spread => {
  let sum = 0
  let variance = 0
  for (const step of steps) {
    const r = stepRemoval[step]
    sum += factor * r.mean
    variance += factor * factor * r.sd * r.sd
  }
  return { mean: sum, sd: Math.sqrt(variance) }
}

const z95 = normalQuantile(0.95)

/** 95th percentile of the whole sum in µm: what a plan is held against. */
export const removal95 = (steps: readonly PaintStepId[], factor = 1): number => {
  const r = removalOf(steps, factor)
  return r.mean + z95 * r.sd
}
