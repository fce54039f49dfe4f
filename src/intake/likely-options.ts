import type { Question } from './question'

/** Some of the options of an unsettled question, as bits by their place in `likely`. */
export type Options = number

/** All options there are. */
export const allOptions = (q: Question<unknown>): Options => (1 << (q.likely?.length ?? 0)) - 1

/** How likely the answer is among these options. */
export const weightOf = (q: Question<unknown>, options: Options): number => {
  let sum = 0
  q.likely?.forEach(([, weight], i) => {
    if (options & (1 << i)) sum += weight
  })
  return sum
}

/** The value of the first of these options. */
export const firstOf = (q: Question<unknown>, options: Options): unknown =>
  q.likely?.find((_, i) => options & (1 << i))?.[0]

/** The likeliest of these options alone; the first of equals. */
export const likeliestOf = (q: Question<unknown>, options: Options): Options => {
  let best = -1
  q.likely?.forEach(([, weight], i) => {
    if (options & (1 << i) && weight > (q.likely?.[best]?.[1] ?? -1)) best = i
  })
  return 1 << best
}

/** These options put together by what `seen` makes of them, in the order of their first. */
export const partsOf = (
  q: Question<unknown>,
  options: Options,
  seen: (value: unknown) => unknown,
): { readonly parts: readonly Options[]; readonly kinds: readonly unknown[] } => {
  const kinds: unknown[] = []
  const parts: Options[] = []
  q.likely?.forEach(([value], i) => {
    if (!(options & (1 << i))) return
    const kind = seen(value)
    const at = kinds.indexOf(kind)
    if (at >= 0) parts[at]! |= 1 << i
    else {
      kinds.push(kind)
      parts.push(1 << i)
    }
  })
  return { parts, kinds }
}
