import { deflateSync } from 'node:zlib'

const chunk = (name: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data])
  const out = Buffer.alloc(body.length + 8)
  out.writeUInt32BE(data.length, 0)
  body.copy(out, 4)
  out.writeUInt32BE(crc(body), body.length + 4)
  return out
}

/** CRC of PNG (W3C PNG, annex D). */
const crc = (bytes: Buffer): number => {
  let c = 0xffffffff
  for (const byte of bytes) {
    c ^= byte
    for (let k = 0; k < 8; k += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1
  }
  return (c ^ 0xffffffff) >>> 0
}

/** A grey PNG of `side` by `side` pixels; `text` stands in a comment chunk. */
export const grey = (side = 4, text = ''): Uint8Array<ArrayBuffer> => {
  const header = Buffer.alloc(13)
  header.writeUInt32BE(side, 0)
  header.writeUInt32BE(side, 4)
  header.set([8, 0, 0, 0, 0], 8)
  const rows = Buffer.alloc((side + 1) * side, 0x80)
  for (let y = 0; y < side; y += 1) rows[y * (side + 1)] = 0
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      chunk('IHDR', header),
      ...(text === '' ? [] : [chunk('tEXt', Buffer.from(`Comment\0${text}`, 'latin1'))]),
      chunk('IDAT', deflateSync(rows)),
      chunk('IEND', Buffer.alloc(0)),
    ]),
  )
}

/** A picture as a form sends it. */
export const pictureForm = (subject = 'outside', text = ''): FormData => {
  const form = new FormData()
  form.set('file', new Blob([grey(4, text)], { type: 'image/png' }), 'car.png')
  form.set('subject', subject)
  return form
}
