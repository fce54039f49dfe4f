import { err, ok, type Result } from '../../kernel/result'

import { ascii, join, type Picture, type PictureFault, u16le, u32, u32le } from './picture-bytes'
import { cleanJpeg } from './picture-jpeg'

export const MOST_PICTURE_BYTES = 10_485_760
/** A picture of 50 million pixels is larger than any phone's and still opens in a browser. */
export const MOST_PIXELS = 50_000_000

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

const cleanPng = (b: Uint8Array): Result<Picture, PictureFault> => {
  const parts: Uint8Array[] = [b.subarray(0, 8)]
  let i = 8
  let size: { width: number; height: number } | null = null
  while (i + 12 <= b.length) {
    const length = u32(b, i)
    const type = ascii(b, i + 4, 4)
    if (i + 12 + length > b.length) return err('ERR_FILE_BROKEN')
    // A second head could tell another size than the one a browser draws.
    if ((type === 'IHDR') !== (i === 8) || (i === 8 && length !== 13)) return err('ERR_FILE_BROKEN')
    if (i === 8) size = { width: u32(b, 16), height: u32(b, 20) }
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

const cleanWebp = (b: Uint8Array): Result<Picture, PictureFault> => {
  const parts: Uint8Array[] = []
  let size: { width: number; height: number } | null = null
  let drawn = 0
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
    if (type === 'VP8 ' || type === 'VP8L') drawn += 1
    if (WEBP_KEPT.has(type)) {
      const chunk = b.slice(i, i + 8 + padded)
      // The flags for Exif and XMP go with their chunks.
      if (type === 'VP8X') chunk[8] = (chunk[8] ?? 0) & ~0b1100
      parts.push(chunk)
    }
    i += 8 + padded
  }
  if (size === null || drawn !== 1) return err('ERR_FILE_BROKEN')
  const body = join(parts)
  const head = new Uint8Array(12)
  head.set(b.subarray(0, 12))
  new DataView(head.buffer).setUint32(4, 4 + body.length, true)
  return ok({ bytes: join([head, body]), mime: 'image/webp', ending: 'webp', ...size })
}

/** Brands of the ISO base media format (ISO/IEC 23008-12, annex B) that phones keep pictures in. */
const HEIC = new Set(['heic', 'heix', 'heim', 'heis', 'hevc', 'mif1', 'msf1', 'avif'])

const otherType = (b: Uint8Array): PictureFault =>
  ascii(b, 4, 4) === 'ftyp' && HEIC.has(ascii(b, 8, 4)) ? 'ERR_FILE_HEIC' : 'ERR_FILE_TYPE'

/**
 * A picture by its signature, without the data that tells who, where and with what it was taken.
 * Orientation and colour profile stay. Sizes in pixels.
 */
export const cleanPicture = (b: Uint8Array): Result<Picture, PictureFault> => {
  if (b.length > MOST_PICTURE_BYTES) return err('ERR_FILE_TOO_LARGE')
  const found =
    b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff
      ? cleanJpeg(b)
      : ascii(b, 0, 8) === '\x89PNG\r\n\x1a\n'
        ? cleanPng(b)
        : ascii(b, 0, 4) === 'RIFF' && ascii(b, 8, 4) === 'WEBP'
          ? cleanWebp(b)
          : err(otherType(b))
  if (found.ok && found.value.width * found.value.height === 0) return err('ERR_FILE_BROKEN')
  if (found.ok && found.value.width * found.value.height > MOST_PIXELS)
    return err('ERR_FILE_PIXELS')
  return found
}
