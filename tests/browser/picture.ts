import { crc32, deflateSync } from 'node:zlib'

const chunk = (type: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data])
  const out = Buffer.alloc(body.length + 8)
  out.writeUInt32BE(data.length, 0)
  body.copy(out, 4)
  out.writeUInt32BE((crc32 as unknown as (b: Buffer) => number)(body), body.length + 4)
  return out
}

/** A small true PNG (ISO/IEC 15948): a grey step from dark to light. */
export const picture = (width = 64, height = 48): Buffer => {
  const header = Buffer.alloc(13)
  header.writeUInt32BE(width, 0)
  header.writeUInt32BE(height, 4)
  header.set([8, 0, 0, 0, 0], 8)
  const rows = Buffer.alloc((width + 1) * height)
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) rows[y * (width + 1) + 1 + x] = (x * 255) / width
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ])
}
