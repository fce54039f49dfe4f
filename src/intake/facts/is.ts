import type { Question } from '../question'
import type { Reader } from '../reader'

/** True when a choice is known to be one of the wanted options. */
export const is = <T extends string>(
  r: Reader,
  q: Question<T>,
  ...wanted: readonly NoInfer<T>[]
): boolean => r.as(q, (v) => wanted.includes(v)) ?? false
