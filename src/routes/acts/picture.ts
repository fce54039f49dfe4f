import { err, ok, type Result } from '../../kernel/result'

export type Picture = {
  readonly bytes: Uint8Array
  readonly mime: 'image/jpeg' | 'image/png' | 'image/webp'
  readonly ending: 'jpg' | 'png' | 'webp'
  readonly width: number
  readonly height: number
}

export const MOST_PICTURE_BYTES = 10_485_760
/** A picture of 50 million pixels is larger than any phone's and still opens in a browser. */
export const MOST_PIXELS = 50_000_000

type Fault = 'ERR_FILE_TYPE' | 'ERR_FILE_TOO_LARGE' | 'ERR_FILE_PIXELS' | 'ERR_FILE_BROKEN'

const u16 = (b: Uint8Array, i: number): number => ((b[i] ?? 0) << 8) | (b[i + 1] ?? 0)
const u32 = (b: Uint8Array, i: number): number => u16(b, i) * 65_536 + u16(b, i + 2)
const u32le = (b: Uint8Array, i: number): number =>
  (b[i] ?? 0) + (b[i + 1] ?? 0) * 256 + (b[i + 2] ?? 0) * 65_536 + (b[i + 3] ?? 0) * 16_777_216
const ascii = (b: Uint8Array, i: number, n: number): string =>
  String.fromCharCode(...b.subarray(i, i + n))

const join = (parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((n, p) => n + p.length, 0))
  let at = 0
  for (const p of parts) {
    all.set(p, at)
    at += p.length
  }
  return all
}

/** The orientation an Exif segment tells, 1 to 8; 1 where it tells none. */
const orientationOf = (b: Uint8Array, at: number, length: number): number => {
  if (ascii(b, at, 6) !== 'Exif\0\0') return 1
  const tiff = at + 6
  const little = ascii(b, tiff, 2) === 'II'
  const get16 = (i: number): number => (little ? (b[i] ?? 0) + (b[i + 1] ?? 0) * 256 : u16(b, i))
  const get32 = (i: number): number => (little ? u32le(b, i) : u32(b, i))
  const ifd = tiff + get32(tiff + 4)
  const end = at + length
  if (ifd + 2 > end) return 1
  const count = Math.min(get16(ifd), 64)
  for (let i = 0; i < count; i += 1) {
    const entry = ifd + 2 + i * 12
    if (entry + 12 > end) break
    if (get16(entry) === 0x0112) {
      const value = get16(entry + 8)
      return value >= 1 && value <= 8 ? value : 1
    }
  }
  return 1
}

/** A smallest Exif segment that tells the orientation and nothing else. */
const orientationSegment = (orientation: number): Uint8Array =>
  new Uint8Array([
    0xff,
    0xe1,
    0,
    34,
    0x45,
    0x78,
    0x69,
    0x66,
    0,
    0,
    0x4d,
    0x4d,
    0,
    42,
    0,
    0,
    0,
    8,
    0,
    1,
    0x01,
    0x12,
    0,
    3,
    0,
    0,
    0,
    1,
    0,
    orientation,
    0,
    0,
    0,
    0,
    0,
    0,
  ])

const SIZE_MARKERS = new Set([
  0xc0, 0xc1, 0xc2, 0xc3, 0xc5, 0xc6, 0xc7, 0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf,
])

/** Keeps what draws the picture, its colour profile (APP2) and Adobe's colour word (APP14). */
const cleanJpeg = (b: Uint8Array): Result<Picture, Fault> => {
  const parts: Uint8Array[] = [b.subarray(0, 2)]
  let width = 0
  let height = 0
  let orientation = 1
  let i = 2
  while (i + 4 <= b.length) {
    if (b[i] !== 0xff) return err('ERR_FILE_BROKEN')
    const marker = b[i + 1] ?? 0
    if (marker === 0xff) {
      i += 1
      continue
    }
    const length = u16(b, i + 2)
    if (length < 2 || i + 2 + length > b.length) return err('ERR_FILE_BROKEN')
    const segment = b.subarray(i, i + 2 + length)
    if (SIZE_MARKERS.has(marker)) {
      height = u16(b, i + 5)
      width = u16(b, i + 7)
    }
    if (marker === 0xe1) orientation = Math.max(orientation, orientationOf(b, i + 4, length - 2))
    const told = (marker >= 0xe0 && marker <= 0xef) || marker === 0xfe
    if (!told || marker === 0xe0 || marker === 0xe2 || marker === 0xee) parts.push(segment)
    i += 2 + length
    if (marker === 0xda) break
  }
  const end = endOfScan(b, i)
  if (width === 0 || height === 0 || end === null) return err('ERR_FILE_BROKEN')
  parts.push(b.subarray(i, end))
  if (orientation !== 1) parts.splice(1, 0, orientationSegment(orientation))
  return ok({ bytes: join(parts), mime: 'image/jpeg', ending: 'jpg', width, height })
}

/** Just behind the end-of-image marker; whatever hangs behind it is not part of the picture. */
const endOfScan = (b: Uint8Array, from: number): number | null => {
  for (let i = from; i + 1 < b.length; i += 1) if (b[i] === 0xff && b[i + 1] === 0xd9) return i + 2
  return null
}

const PNG_KEPT = new Set([
  'IHDR',
  'PLTE',
  'IDAT',
  'IEND',
  'tRNS',
  'gAMA',
  'cHRM',
  'sRGB',
  'iCCP',
  'sBIT',
])

const cleanPng = (b: Uint8Array): Result<Picture, Fault> => {
  const parts: Uint8Array[] = [b.subarray(0, 8)]
  let i = 8
  let size: { width: number; height: number } | null = null
  while (i + 12 <= b.length) {
    const length = u32(b, i)
    const type = ascii(b, i + 4, 4)
    if (i + 12 + length > b.length) return err('ERR_FILE_BROKEN')
    if (type === 'IHDR') size = { width: u32(b, i + 8), height: u32(b, i + 12) }
    if (PNG_KEPT.has(type)) parts.push(b.subarray(i, i + 12 + length))
    i += 12 + length
    if (type === 'IEND')
      return size === null
        ? err('ERR_FILE_BROKEN')
        : ok({ bytes: join(parts), mime: 'image/png', ending: 'png', ...size })
  }
  return err('ERR_FILE_BROKEN')
}

const WEBP_KEPT = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ICCP'])

const cleanWebp = (b: Uint8Array): Result<Picture, Fault> => {
  const parts: Uint8Array[] = []
  let size: { width: number; height: number } | null = null
  const end = Math.min(b.length, 8 + u32le(b, 4))
  let i = 12
  while (i + 8 <= end) {
    const type = ascii(b, i, 4)
    const length = u32le(b, i + 4)
    const padded = length + (length % 2)
    if (i + 8 + length > end) return err('ERR_FILE_BROKEN')
    if (type === 'VP8X') {
      const at = i + 12
      size = { width: 1 + (u32le(b, at) & 0xffffff), height: 1 + (u32le(b, at + 3) & 0xffffff) }
    }
    if (type === 'VP8 ' && size === null)
      size = { width: u16le(b, i + 14) & 0x3fff, height: u16le(b, i + 16) & 0x3fff }
    if (type === 'VP8L' && size === null) {
      const bits = u32le(b, i + 9)
      size = { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) }
    }
    if (WEBP_KEPT.has(type)) {
      const chunk = b.slice(i, i + 8 + padded)
      // The flags for Exif and XMP go with their chunks.
      if (type === 'VP8X') chunk[8] = (chunk[8] ?? 0) & ~0b1100
      parts.push(chunk)
    }
    i += 8 + padded
  }
  if (size === null) return err('ERR_FILE_BROKEN')
  const body = join(parts)
  const head = new Uint8Array(12)
  head.set(b.subarray(0, 12))
  new DataView(head.buffer).setUint32(4, 4 + body.length, true)
  return ok({ bytes: join([head, body]), mime: 'image/webp', ending: 'webp', ...size })
}

const u16le = (b: Uint8Array, i: number): number => (b[i] ?? 0) + (b[i + 1] ?? 0) * 256

/**
 * A picture by its signature, without the data that tells who, where and with what it was taken.
 * Orientation and colour profile stay. Sizes in pixels.
 */
export const cleanPicture = (b: Uint8Array): Result<Picture, Fault> => {
  if (b.length > MOST_PICTURE_BYTES) return err('ERR_FILE_TOO_LARGE')
  const found =
    b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff
      ? cleanJpeg(b)
      : ascii(b, 0, 8) === '\x89PNG\r\n\x1a\n'
        ? cleanPng(b)
        : ascii(b, 0, 4) === 'RIFF' && ascii(b, 8, 4) === 'WEBP'
          ? cleanWebp(b)
          : err('ERR_FILE_TYPE' as const)
  if (found.ok && found.value.width * found.value.height > MOST_PIXELS)
    return err('ERR_FILE_PIXELS')
  return found
}
