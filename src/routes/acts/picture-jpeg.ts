import { err, ok, type Result } from '../../kernel/result'
import { ascii, join, type Picture, type PictureFault, u16, u32, u32le } from './picture-bytes'

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

const startsWith = (b: Uint8Array, at: number, word: string): boolean =>
  ascii(b, at, word.length) === word

/** Whether a segment draws the picture or tells its colours (JFIF head, ICC profile, Adobe's word). */
const draws = (segment: Uint8Array, marker: number): boolean => {
  if (marker === 0xe0) return startsWith(segment, 4, 'JFIF\0')
  if (marker === 0xe2) return startsWith(segment, 4, 'ICC_PROFILE\0')
  if (marker === 0xee) return startsWith(segment, 4, 'Adobe')
  return !(marker >= 0xe0 && marker <= 0xef) && marker !== 0xfe
}

/** A JFIF head without the small picture it may carry, which can show what was cut off. */
const withoutThumbnail = (segment: Uint8Array): Uint8Array => {
  if (segment.length <= 18) return segment
  const head = segment.slice(0, 18)
  head.set([0, 16], 2)
  head.set([0, 0], 16)
  return head
}

/** Where the coded data of a scan ends: at the next marker that is neither a stuffed byte nor a restart. */
const endOfScan = (b: Uint8Array, from: number): number => {
  let i = from
  while (i + 1 < b.length) {
    const next = b[i + 1] ?? 0
    if (b[i] === 0xff && next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return i
    i += 1
  }
  return b.length
}

const EOI = 0xd9
const SOS = 0xda

/** Keeps what draws the picture, through every scan; whatever hangs behind its end is cut off. */
export const cleanJpeg = (b: Uint8Array): Result<Picture, PictureFault> => {
  const parts: Uint8Array[] = [b.subarray(0, 2)]
  let width = 0
  let height = 0
  let orientation = 1
  let i = 2
  while (i + 2 <= b.length) {
    if (b[i] !== 0xff) return err('ERR_FILE_BROKEN')
    const marker = b[i + 1] ?? 0
    if (marker === 0xff) {
      i += 1
      continue
    }
    if (marker === EOI) {
      if (width === 0 || height === 0) return err('ERR_FILE_BROKEN')
      parts.push(b.subarray(i, i + 2))
      if (orientation !== 1) parts.splice(1, 0, orientationSegment(orientation))
      return ok({ bytes: join(parts), mime: 'image/jpeg', ending: 'jpg', width, height })
    }
    const length = u16(b, i + 2)
    if (length < 2 || i + 2 + length > b.length) return err('ERR_FILE_BROKEN')
    const segment = b.subarray(i, i + 2 + length)
    if (SIZE_MARKERS.has(marker)) {
      height = u16(b, i + 5)
      width = u16(b, i + 7)
    }
    if (marker === 0xe1) orientation = Math.max(orientation, orientationOf(b, i + 4, length - 2))
    if (draws(segment, marker)) parts.push(marker === 0xe0 ? withoutThumbnail(segment) : segment)
    i += 2 + length
    if (marker === SOS) {
      const end = endOfScan(b, i)
      parts.push(b.subarray(i, end))
      i = end
    }
  }
  return err('ERR_FILE_BROKEN')
}
