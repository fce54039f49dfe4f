import type { Question } from '../question'
import type { Reader } from '../reader'

/** True when the multi question `q` is settled and names at least one of `options`. */
export const has = (
  r: Reader,
  q: Question<readonly string[]>,
  ...options: readonly string[]
): boolean => r.as(q, (picked) => picked.some((p) => options.includes(p))) ?? false
