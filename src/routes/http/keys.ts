const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
/** Digits and letters that are not taken for one another when read out. */
const SPOKEN = '23456789ABCDEFGHJKMNPQRSTVWXYZ'

/** Base64url without padding. */
export const base64url = (bytes: Uint8Array): string => {
  let out = ''
  for (let i = 0; i < bytes.length; i += 3) {
    const n = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0)
    const chars = Math.min(4, Math.ceil(((bytes.length - i) * 8) / 6))
    for (let c = 0; c < chars; c += 1) out += ALPHABET[(n >> (18 - 6 * c)) & 63]
  }
  return out
}

const spoken = (bytes: Uint8Array): string =>
  [...bytes].map((b) => SPOKEN[b % SPOKEN.length]).join('')

type Random = (bytes: number) => Uint8Array

/** A secret of 256 bits, as handed to somebody once. */
export const newKey = (random: Random): string => base64url(random(32))
/** An id of 120 bits for a docket, a line, a person or a text. */
export const newId = (random: Random): string => base64url(random(15))
/** A reference people can read out: AAA-AAA. */
export const newReference = (random: Random): string => {
  const s = spoken(random(6))
  return `${s.slice(0, 3)}-${s.slice(3)}`
}

/** SHA-256 of a text (as UTF-8) or of bytes, as lower-case hex; only hashes of keys are kept. */
export const sha256 = async (of: string | Uint8Array<ArrayBuffer>): Promise<string> => {
  const given = typeof of === 'string' ? new TextEncoder().encode(of) : of
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', given))
  return [...bytes].map((b) => b.toString(16).padStart(2, '0')).join('')
}

/** Compares two hashes of equal length without telling where they differ. */
export const sameHash = (a: string, b: string): boolean => {
  if (a.length !== b.length) return false
  let difference = 0
  for (let i = 0; i < a.length; i += 1) difference |= a.charCodeAt(i) ^ b.charCodeAt(i)
  return difference === 0
}
