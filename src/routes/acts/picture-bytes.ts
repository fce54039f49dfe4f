export type Picture = {
  readonly bytes: Uint8Array
  readonly mime: 'image/jpeg' | 'image/png' | 'image/webp'
  readonly ending: 'jpg' | 'png' | 'webp'
  readonly width: number
  readonly height: number
}

export type PictureFault =
  | 'ERR_FILE_TYPE'
  | 'ERR_FILE_HEIC'
  | 'ERR_FILE_TOO_LARGE'
  | 'ERR_FILE_PIXELS'
  | 'ERR_FILE_BROKEN'

export const u16 = (b: Uint8Array, i: number): number => ((b[i] ?? 0) << 8) | (b[i + 1] ?? 0)
export const u32 = (b: Uint8Array, i: number): number => u16(b, i) * 65_536 + u16(b, i + 2)
export const u32le = (b: Uint8Array, i: number): number =>
  (b[i] ?? 0) + (b[i + 1] ?? 0) * 256 + (b[i + 2] ?? 0) * 65_536 + (b[i + 3] ?? 0) * 16_777_216
export const ascii = (b: Uint8Array, i: number, n: number): string =>
  String.fromCharCode(...b.subarray(i, i + n))

export const join = (parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((n, p) => n + p.length, 0))
  let at = 0
  for (const p of parts) {
    all.set(p, at)
    at += p.length
  }
  return all
}

export const u16le = (b: Uint8Array, i: number): number => (b[i] ?? 0) + (b[i + 1] ?? 0) * 256
