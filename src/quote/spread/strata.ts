/** Integer hash that spreads neighbouring numbers (finaliser of a well-known 32-bit mixer). */
const mix = (n: number): number => {
  let h = n | 0
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return h ^ (h >>> 16)
}

/** Small 32-bit generator (mulberry32): the next whole number of a sequence fixed by its seed. */
const sequence = (seed: number): (() => number) => {
  let state = mix(seed)
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return (t ^ (t >>> 14)) >>> 0
  }
}

const SEED = 0x5eed

const orders = new Map<number, Uint16Array>()

/** A fixed shuffle of 0..points−1, its own for each dimension: which point takes which stratum. */
export const orderOf = (points: number, dimension: number): Uint16Array => {
  const key = dimension * 32768 + points
  const found = orders.get(key)
  if (found !== undefined) return found
  const next = sequence(SEED + key)
  const order = new Uint16Array(points)
  for (let i = 0; i < points; i++) order[i] = i
  for (let i = points - 1; i > 0; i--) {
    const j = next() % (i + 1)
    const kept = order[i]!
    order[i] = order[j]!
    order[j] = kept
  }
  orders.set(key, order)
  return order
}
