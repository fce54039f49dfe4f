import { createHash, randomBytes } from 'node:crypto'

/**
 * Bytes for ids and references: the same in every run. Keys (32 bytes and more) are really random,
 * so that nobody who knows this file can open a demo that was put on a network.
 */
export const drawn = (seed: string): ((bytes: number) => Uint8Array) => {
  let n = 0
  return (bytes) => {
    if (bytes >= 32) return new Uint8Array(randomBytes(bytes))
    n += 1
    const digest = createHash('sha256').update(`${seed} ${n}`).digest()
    return new Uint8Array(digest.subarray(0, bytes))
  }
}
