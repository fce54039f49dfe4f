/** Base64 with padding (RFC 4648, 4). */
export const base64Of = (bytes: Uint8Array): string => btoa(String.fromCharCode(...bytes))

/** The bytes of a base64 text; null for what is none. */
export const bytesOfBase64 = (text: string): Uint8Array<ArrayBuffer> | null => {
  if (!/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null
  try {
    return Uint8Array.from(atob(text), (c) => c.charCodeAt(0))
  } catch {
    return null
  }
}
