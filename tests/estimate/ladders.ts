import type { Answers } from '../../src/intake/answers'
import type { Estimated } from '../../src/quote/estimate'
import { estimateOf } from './studio'

/** Answers from mild to worse, or from small to large. */
export const ladders: readonly (readonly [question: string, rungs: readonly unknown[]])[] = [
  ['film-state', [['pliable'], ['dull'], ['cracked']]],
  ['film-age', [2, 6, 12]],
  ['cabin-state', ['tidy', 'family', 'neglected']],
  ['size', ['small', 'mid', 'large']],
  ['wet-depth', ['surface', 'soaked', 'standing']],
  ['mould-area', ['coin', 'hand', 'tray', 'larger']],
  ['kept-washed', ['hand', 'rarely']],
  ['hard-soft', ['normal', 'very-hard']],
  ['ride', ['normal', 'lowered']],
  ['roof-state', [[], ['dirty-green']]],
  ['cabin-marks', [['sand'], ['sand', 'stains'], ['sand', 'stains', 'rubbish']]],
]

const minutesOf = (e: Estimated): number => e.steps.reduce((sum, s) => sum + s.expectedMinutes, 0)
const idsOf = (e: Estimated): string => e.steps.map((s) => s.id).join()

/** Rungs with the same steps that take fewer minutes than the rung below; and how many were compared. */
export const climb = (
  answers: Answers,
  question: string,
  rungs: readonly unknown[],
): { readonly compared: number; readonly faults: readonly string[] } => {
  const found = rungs.map((value) => estimateOf({ ...answers, [question]: { value } }))
  const faults: string[] = []
  let compared = 0
  found.forEach((worse, i) => {
    const milder = found[i - 1]
    if (milder === undefined || idsOf(milder) !== idsOf(worse)) return
    compared += 1
    if (minutesOf(worse) < minutesOf(milder))
      faults.push(
        `${question} ${JSON.stringify(rungs[i])}: ${minutesOf(worse)} < ${minutesOf(milder)}`,
      )
  })
  return { compared, faults }
}
