/** A small repeatable stream of whole numbers below `n`; the same seed gives the same stream. */
export type Draw = (n: number) => number

/** Lehmer's generator (Park and Miller, "minimal standard": 16807 modulo 2^31 − 1). */
export const draws = (seed: number): Draw => {
  let state = seed
  return (n) => {
    state = (state * 16_807) % 2_147_483_647
    return state % n
  }
}
