/** Integer hash that spreads neighbouring numbers (finaliser of a well-known 32-bit mixer). */
const mix = (n: number): number => {
  let h = n | 0
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) >>> 0
}

/** A shuffle of 0..points−1 fixed by its seed (mulberry32 as the generator). */
const shuffle = (points: number, seed: number): Uint16Array => {
  const order = new Uint16Array(points)
  for (let i = 0; i < points; i++) order[i] = i
  let state = mix(seed)
  for (let i = points - 1; i > 0; i--) {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    const j = ((t ^ (t >>> 14)) >>> 0) % (i + 1)
    const kept = order[i]!
    order[i] = order[j]!
    order[j] = kept
  }
  return order
}

type Deck = {
  readonly inner: Uint16Array
  readonly outer: Uint16Array
  readonly orders: Uint16Array[]
}
const decks = new Map<number, Deck>()

/**
 * A fixed order of the points (a power of two), its own for each dimension: which point takes which stratum.
 * Two true shuffles with an odd multiple between them: as unrelated as new shuffles, far cheaper at start.
 */
export const orderOf = (points: number, dimension: number): Uint16Array => {
  let deck = decks.get(points)
  if (deck === undefined) {
    deck = { inner: shuffle(points, 1), outer: shuffle(points, 2), orders: [] }
    decks.set(points, deck)
  }
  const found = deck.orders[dimension]
  if (found !== undefined) return found
  const { inner, outer } = deck
  const mask = points - 1
  const times = (mix(2 * dimension + 3) & mask) | 1
  const plus = mix(2 * dimension + 4) & mask
  const order = new Uint16Array(points)
  for (let p = 0; p < points; p++) order[p] = outer[(inner[p]! * times + plus) & mask]!
  deck.orders[dimension] = order
  return order
}
