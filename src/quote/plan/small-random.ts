/**
 * A small repeatable source of numbers in [0, 1): 32-bit xorshift (Marsaglia 2003, triple 13, 17, 5).
 * Same seed, same sequence on every machine; the seed must not be 0.
 */
export const smallRandom = (seed: number): (() => number) => {
  let state = seed | 0
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 4_294_967_296
  }
}
