/** A set of questions as bits, by their place in a session: no allocation where many rules read. */
export type Marks = { a: number; b: number; c: number; d: number }

const BITS = 30
/** Questions a set has room for. */
export const MOST_MARKS = 4 * BITS

/** A set of none. */
export const noMarks = (): Marks => ({ a: 0, b: 0, c: 0, d: 0 })

/** The set of the one question at this place. */
export const markAt = (place: number): Marks => {
  const bit = (word: number): number =>
    Math.floor(place / BITS) === word ? 1 << (place % BITS) : 0
  return { a: bit(0), b: bit(1), c: bit(2), d: bit(3) }
}

/** Adds the second set to the first. */
export const merge = (into: Marks, from: Marks): void => {
  into.a |= from.a
  into.b |= from.b
  into.c |= from.c
  into.d |= from.d
}

/** True when they have a question in common. */
export const meet = (m: Marks, n: Marks): boolean =>
  ((m.a & n.a) | (m.b & n.b) | (m.c & n.c) | (m.d & n.d)) !== 0

/** True when every question of the first stands in the second. */
export const within = (m: Marks, n: Marks): boolean =>
  ((m.a & ~n.a) | (m.b & ~n.b) | (m.c & ~n.c) | (m.d & ~n.d)) === 0
