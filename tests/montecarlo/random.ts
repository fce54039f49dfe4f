/** A seeded 32-bit generator (sfc32 of Chris Doty-Humphrey's family) giving numbers in (0, 1). */
export const randomFrom = (seed: number): (() => number) => {
  let a = seed | 0
  let b = 0x9e3779b9 | 0
  let c = 0x243f6a88 | 0
  let d = 1
  const next = (): number => {
    const t = (((a + b) | 0) + d) | 0
    d = (d + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = (c << 21) | (c >>> 11)
    c = (c + t) | 0
    return ((t >>> 0) + 0.5) / 4294967296
  }
  for (let i = 0; i < 20; i++) next()
  return next
}
