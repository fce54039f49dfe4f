import type { Phrase, Question } from './question'
import type { Reader } from './reader'

const phrase = (q: Question<unknown>, variant: string, params?: Phrase['params']): Phrase => ({
  key: `reply.${q.id}.${variant}`,
  ...(params && { params }),
})

const missing = (r: Reader, q: Question<unknown>): Phrase =>
  phrase(q, r.unsettled(q) ? 'unsure' : 'none')

/** One reply for each option of a choice; `groups` sends options that change the same thing to one. */
export const byOption = (
  r: Reader,
  q: Question<string>,
  groups: Readonly<Record<string, string>> = {},
): Phrase => {
  const v = r.value(q)
  return v === undefined ? missing(r, q) : phrase(q, groups[v] ?? v)
}

/**
 * The reply to what weighs most among the options picked: the first of `order` that was picked,
 * else `some`. The picked options go along as `picked` (keys of their words).
 */
export const byWeight = <T extends string>(
  r: Reader,
  q: Question<readonly T[]>,
  order: readonly T[] = [],
  groups: Readonly<Record<string, string>> = {},
): Phrase => {
  const v = r.value(q)
  if (v === undefined) return missing(r, q)
  if (v.length === 0) return phrase(q, 'none')
  const first = order.find((o) => v.includes(o))
  const picked = v.map((o) => `q.${q.id}.o.${o}`)
  return phrase(q, first === undefined ? 'some' : (groups[first] ?? first), { picked })
}

/** The reply to a number: the name beside the first limit it does not pass, else `above`. */
export const byLimit = (
  r: Reader,
  q: Question<number>,
  limits: readonly (readonly [upTo: number, name: string])[],
  above: string,
): Phrase => {
  const n = r.value(q)
  if (n === undefined) return missing(r, q)
  return phrase(q, limits.find(([upTo]) => n <= upTo)?.[1] ?? above, { n })
}

/** `given` or `none` for what may be left out, `unsure` where that is allowed. */
export const byGiven = (r: Reader, q: Question<unknown>): Phrase =>
  r.value(q) === undefined ? missing(r, q) : phrase(q, 'given')

/** `yes`, `no` or `unsure`. */
export const byYes = (r: Reader, q: Question<boolean>): Phrase => {
  const v = r.value(q)
  return v === undefined ? missing(r, q) : phrase(q, v ? 'yes' : 'no')
}
