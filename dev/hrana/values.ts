import type { HranaValue } from './protocol'

/** A value of the wire as the native driver binds it. */
export const fromWire = (value: HranaValue): string | number | bigint | Buffer | null => {
  switch (value.type) {
    case 'null':
      return null
    case 'integer':
      return BigInt(value.value)
    case 'float':
    case 'text':
      return value.value
    case 'blob':
      return Buffer.from(value.base64, 'base64')
  }
}

/** A value of the native driver (integers as bigint) for the wire; blobs without padding. */
export const toWire = (value: unknown): HranaValue => {
  if (value === null || value === undefined) return { type: 'null' }
  if (typeof value === 'bigint') return { type: 'integer', value: value.toString() }
  if (typeof value === 'number') return { type: 'float', value }
  if (typeof value === 'string') return { type: 'text', value }
  return {
    type: 'blob',
    base64: Buffer.from(value as Buffer)
      .toString('base64')
      .replace(/=+$/, ''),
  }
}
