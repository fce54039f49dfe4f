import { base64Of, bytesOfBase64 } from './base64'

const PREFIX = 'whsec_'

/** A new secret of 256 bits as the standard writes it: `whsec_` and base64. */
export const newSecret = (random: (bytes: number) => Uint8Array): string =>
  `${PREFIX}${base64Of(random(32))}`

/** The bytes of a secret; null for what is none (24 to 64 bytes by the standard). */
export const secretBytes = (secret: string): Uint8Array<ArrayBuffer> | null => {
  const bytes = bytesOfBase64(secret.startsWith(PREFIX) ? secret.slice(PREFIX.length) : secret)
  return bytes !== null && bytes.length >= 24 && bytes.length <= 64 ? bytes : null
}

/**
 * The signature of a message as Standard Webhooks 1.0.0 defines it: `v1,` and the base64 of
 * HMAC-SHA-256 over `id.timestamp.body`. `seconds` since 1970 of the attempt.
 */
export const signMessage = async (
  secret: string,
  id: string,
  seconds: number,
  body: string,
): Promise<string> => {
  const bytes = secretBytes(secret)
  if (bytes === null) throw new Error('not a secret')
  const key = await crypto.subtle.importKey(
    'raw',
    bytes,
    { name: 'HMAC', hash: 'SHA-256' },
    false,
    ['sign'],
  )
  const content = new TextEncoder().encode(`${id}.${seconds}.${body}`)
  const signed = await crypto.subtle.sign('HMAC', key, content)
  return `v1,${base64Of(new Uint8Array(signed))}`
}
