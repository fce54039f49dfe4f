import { describe, expect, it } from 'vitest'
import { parseContact } from './parse-contact'

const codes = (json: unknown): string[] => {
  const parsed = parseContact(json)
  return parsed.ok ? [] : parsed.error.map((i) => `${i.pointer} ${i.code}`)
}
const phone = (text: string) => codes({ name: 'Ada', phone: text })
const email = (text: string) => codes({ name: 'Ada', email: text })

describe('parseContact', () => {
  it('takes phone numbers of up to 15 digits (ITU-T E.164)', () => {
    // E.123 shows these notations: national with brackets, international with a plus.
    for (const text of ['(0607) 123 4567', '+22 607 123 4567', '+123456789012345', '12345'])
      expect(phone(text)).toEqual([])
    expect(phone('+1234567890123456')).toEqual(['/value/phone ERR_PHONE_DIGITS'])
    expect(phone('1234')).toEqual(['/value/phone ERR_PHONE_DIGITS'])
    expect(phone('call me')).toEqual(['/value/phone ERR_PHONE_CHARACTER'])
    expect(phone('12+345678')).toEqual(['/value/phone ERR_PHONE_CHARACTER'])
  })

  it('takes addresses of RFC 5322 dot-atoms within the lengths of RFC 5321', () => {
    // The first four are examples of RFC 3696 section 3 (values from memory); the others are ours.
    for (const text of [
      'customer/department=shipping@example.com',
      '$A12345@example.com',
      '!def!xyz%abc@example.com',
      '_somename@example.com',
      'jürgen@bücher.example',
      `${'a'.repeat(64)}@example.com`,
    ])
      expect(email(text)).toEqual([])
    for (const text of [
      'ada',
      'ada@',
      '@example.com',
      'ada@example',
      'a..b@example.com',
      'a b@example.com',
      'a@-x.com',
      'a@b@c.com',
      'a@example.com, b@example.com',
      `${'a'.repeat(65)}@example.com`,
    ])
      expect(email(text)).toEqual(['/value/email ERR_EMAIL'])
    expect(email(`a@${'b.'.repeat(130)}com`)).toEqual(['/value/email ERR_TEXT_LONG'])
  })

  it('names everything that is missing at once', () => {
    expect(codes({})).toEqual(['/value/name ERR_NAME_MISSING', '/value/email ERR_REACH_MISSING'])
    expect(codes({ name: 'Ada', email: ' ', phone: null })).toEqual([
      '/value/email ERR_REACH_MISSING',
    ])
    expect(codes({ name: 5, email: 'x', phone: 'y', fax: 'z' })).toEqual([
      '/value/name ERR_NOT_TEXT',
      '/value/email ERR_EMAIL',
      '/value/phone ERR_PHONE_CHARACTER',
      '/value ERR_UNKNOWN_PART',
    ])
    expect(codes({ name: 'A\nB', phone: '12345' })).toEqual(['/value/name ERR_CONTROL_CHARACTER'])
    for (const json of [null, 'Ada', ['Ada'], 5])
      expect(codes(json)).toEqual(['/value ERR_NOT_CONTACT'])
  })
})
