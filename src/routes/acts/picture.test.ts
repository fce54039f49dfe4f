import { describe, expect, it } from 'vitest'
import { cleanPicture } from './picture'

// Marker codes, lengths and byte stuffing as in ITU-T T.81 (JPEG) annex B; chunks as in the W3C PNG
// specification; the Exif layout (TIFF directories, tag 0x0112 and 0x8825) value from memory.
const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  new Uint8Array(
    parts.flatMap((p) =>
      typeof p === 'string' ? [...p].map((c) => c.charCodeAt(0)) : (p as number[]),
    ),
  )
const segment = (marker: number, body: string): string => {
  const n = body.length + 2
  return `\xff${String.fromCharCode(marker, n >> 8, n & 255)}${body}`
}
const exif = (orientation: number): string =>
  `Exif\0\0MM\0*\0\0\0\x08\0\x02\x01\x12\0\x03\0\0\0\x01\0${String.fromCharCode(orientation)}\0\0` +
  '\x88\x25\0\x04\0\0\0\x01\0\0\0\x26\0\0\0\0GPS 53.35N 6.26W'
const SIZE = '\x08\0\x10\0\x20\x01\x01\x11\0'
const SCAN = segment(0xda, '\x01\x01\0\0\x3f\0')
const jpeg = (before: string, between = '', behind = ''): Uint8Array =>
  bytes(
    `\xff\xd8${before}${segment(0xc0, SIZE)}${SCAN}\x12\xff\0\xff\xd0\x34${between}${SCAN}\x56\xff\xd9${behind}`,
  )
const textOf = (b: Uint8Array): string => String.fromCharCode(...b)
const cleaned = (b: Uint8Array): string => {
  const done = cleanPicture(b)
  if (!done.ok) throw new Error(done.error)
  return textOf(done.value.bytes)
}

describe('cleanPicture', () => {
  it.each([
    ['Exif', segment(0xe1, exif(1)), 'GPS 53'],
    ['XMP', segment(0xe1, 'http://ns.adobe.com/xap/1.0/\0<x:gps/>'), 'gps'],
    ['a comment', segment(0xfe, '<script>1</script>'), 'script'],
    ['a second small picture', segment(0xe0, 'JFXX\0SMALL'), 'SMALL'],
    [
      'the small picture of the head',
      segment(0xe0, 'JFIF\0\x01\x01\0\0\x01\0\x01\x01\x01RGB'),
      'RGB',
    ],
    ['other uses of APP2', segment(0xe2, 'MPF\0MORE'), 'MORE'],
  ])('takes %s out of a JPEG, before and between its scans', (_, part, told) => {
    for (const b of [jpeg(part), jpeg('', part)]) {
      expect(textOf(b)).toContain(told)
      expect(cleaned(b)).not.toContain(told)
    }
  })

  it('keeps both scans, their restarts, the colours and which side is up', () => {
    const kept = cleaned(jpeg(segment(0xe1, exif(6)) + segment(0xe2, 'ICC_PROFILE\0\x01\x01c')))
    expect(kept).toContain('\x12\xff\0\xff\xd0\x34')
    expect(kept.endsWith(`${SCAN}\x56\xff\xd9`)).toBe(true)
    expect(kept).toContain('ICC_PROFILE\0\x01\x01c')
    expect(kept).toContain('\x01\x12\0\x03\0\0\0\x01\0\x06')
  })

  it('cuts what hangs behind the end', () => {
    expect(cleaned(jpeg('', '', '<html>'))).not.toContain('<html>')
  })

  const png = (width: number, height: number): Uint8Array => {
    const u32 = (n: number): number[] => [n >>> 24, (n >>> 16) & 255, (n >>> 8) & 255, n & 255]
    const head = bytes('IHDR', u32(width), u32(height), [8, 2, 0, 0, 0])
    return bytes(
      '\x89PNG\r\n\x1a\n',
      u32(13),
      [...head],
      [0, 0, 0, 0],
      u32(0),
      'IEND',
      [0, 0, 0, 0],
    )
  }
  const chunk = (type: string, body: Uint8Array | readonly number[]): readonly number[] => [
    ...[
      body.length >>> 24,
      (body.length >>> 16) & 255,
      (body.length >>> 8) & 255,
      body.length & 255,
    ],
    ...bytes(type),
    ...body,
    ...[0, 0, 0, 0],
  ]
  const HEAD = '\x89PNG\r\n\x1a\n'
  const small = [0, 0, 0, 4, 0, 0, 0, 4, 8, 2, 0, 0, 0]
  const huge = [0, 0, 200, 0, 0, 0, 200, 0, 8, 2, 0, 0, 0]

  it('cuts a page that hangs behind a PNG, and the pages its other chunks hold', () => {
    const page = '<script>1</script>'
    const b = bytes(
      HEAD,
      chunk('IHDR', small),
      chunk('tEXt', bytes(page)),
      chunk('eXIf', bytes('GPS 53')),
      chunk('iCCP', bytes('colours')),
      chunk('IDAT', [1]),
      chunk('IEND', []),
      page,
    )
    const kept = cleaned(b)
    expect(kept).not.toContain(page)
    expect(kept).not.toContain('GPS 53')
    expect(kept).toContain('iCCPcolours')
    expect(kept.endsWith('IEND\0\0\0\0')).toBe(true)
  })

  // ISO/IEC 23008-12: the brand stands in the first box. Magic numbers of the others from memory.
  it.each([
    ['a phone’s HEIC', bytes('\0\0\0\x18ftypheic\0\0\0\0mif1'), 'ERR_FILE_HEIC'],
    ['AVIF', bytes('\0\0\0\x1cftypavif\0\0\0\0'), 'ERR_FILE_HEIC'],
    ['a film', bytes('\0\0\0\x18ftypisom\0\0\0\0'), 'ERR_FILE_TYPE'],
    ['a GIF that is a script', bytes('GIF89a/*\0\0*/=1;alert(1)'), 'ERR_FILE_TYPE'],
    ['a PDF', bytes('%PDF-1.7'), 'ERR_FILE_TYPE'],
    ['an archive', bytes('PK\x03\x04'), 'ERR_FILE_TYPE'],
    ['nothing', bytes(''), 'ERR_FILE_TYPE'],
    [
      'a PNG that tells its size twice',
      bytes(HEAD, chunk('IHDR', huge), chunk('IHDR', small), chunk('IEND', [])),
      'ERR_FILE_BROKEN',
    ],
    [
      'a PNG that tells its size late',
      bytes(HEAD, chunk('IDAT', [1]), chunk('IHDR', small), chunk('IEND', [])),
      'ERR_FILE_BROKEN',
    ],
    ['a PNG bomb', bytes(HEAD, chunk('IHDR', huge), chunk('IEND', [])), 'ERR_FILE_PIXELS'],
    [
      'a WebP that moves and holds no still picture',
      bytes('RIFF\x1a\0\0\0WEBPVP8X\x0a\0\0\0\x02\0\0\0\x03\0\0\x03\0\0'),
      'ERR_FILE_BROKEN',
    ],
  ])('tells %s from a picture', (_, b, error) => {
    expect(cleanPicture(b)).toEqual({ ok: false, error })
  })

  it.each([
    ['a page', bytes('<html>'), 'ERR_FILE_TYPE'],
    ['a drawing with script', bytes('<svg onload="x"/>'), 'ERR_FILE_TYPE'],
    ['more pixels than a phone takes', png(50_000, 50_000), 'ERR_FILE_PIXELS'],
    ['no pixels', png(0, 10), 'ERR_FILE_BROKEN'],
    ['a JPEG without an end', jpeg('').subarray(0, -2), 'ERR_FILE_BROKEN'],
    ['a segment longer than the file', bytes('\xff\xd8\xff\xe1\xff\xffx'), 'ERR_FILE_BROKEN'],
  ])('refuses %s', (_, b, error) => {
    expect(cleanPicture(b)).toEqual({ ok: false, error })
  })
})
