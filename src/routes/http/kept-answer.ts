import type { Outcome } from '../route'
import { base64url, sha256 } from './keys'

/**
 * An answer kept for repeating may hold a key or an address. It is sealed with the caller's own
 * idempotency key, of which only a hash is kept: without the caller nobody can read it.
 */
const sealKey = async (key: string): Promise<CryptoKey> => {
  const raw = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(`seal:${key}`))
  return crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt'])
}

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'))
  const bytes = new Uint8Array(binary.length)
  for (let i = 0; i < binary.length; i += 1) bytes[i] = binary.charCodeAt(i)
  return bytes
}

export const seal = async (
  o: Outcome,
  key: string,
  random: (bytes: number) => Uint8Array,
): Promise<string> => {
  const { json, to, headers } = o
  const iv = new Uint8Array(random(12))
  const plain = new TextEncoder().encode(JSON.stringify({ json, to, headers }))
  const sealed = await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, await sealKey(key), plain)
  const all = new Uint8Array(12 + sealed.byteLength)
  all.set(iv)
  all.set(new Uint8Array(sealed), 12)
  return base64url(all)
}

export const unseal = async (
  body: string,
  key: string,
): Promise<Pick<Outcome, 'json' | 'to' | 'headers'>> => {
  const all = bytesOf(body)
  const plain = await crypto.subtle.decrypt(
    { name: 'AES-GCM', iv: all.slice(0, 12) },
    await sealKey(key),
    all.slice(12),
  )
  return JSON.parse(new TextDecoder().decode(plain)) as Pick<Outcome, 'json' | 'to' | 'headers'>
}

/** What a key is kept under. */
export const keptUnder = (key: string): Promise<string> => sha256(`key:${key}`)
