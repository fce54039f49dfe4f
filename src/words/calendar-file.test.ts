import * as fc from 'fast-check'
import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { type CalendarEvent, calendarFile } from './calendar-file'

// Read back by ical.js, an independent reader of RFC 5545.
const EVENT: CalendarEvent = {
  uid: 'd1-bring@jambside',
  sequence: 2,
  stampedAt: Date.UTC(2027, 4, 1, 9, 30),
  summary: 'Bring the car',
  description: 'Keys; papers, and the locking-nut key',
  date: '2027-05-10',
  url: 'https://example.org/e/d1/day',
}
/** Dublin: one hour ahead of UTC from 28 March to 31 October 2027 (EU summer time, Directive 2000/84/EC). */
const DUBLIN = [
  { fromUtcMinute: 0, offsetMinutes: 0 },
  { fromUtcMinute: Date.UTC(2027, 2, 28, 1) / 60_000, offsetMinutes: 60 },
  { fromUtcMinute: Date.UTC(2027, 9, 31, 1) / 60_000, offsetMinutes: 0 },
]
const read = (text: string) => {
  const calendar = new ICAL.Component(ICAL.parse(text))
  const events = calendar
    .getAllSubcomponents('vevent')
    .map((c: InstanceType<typeof ICAL.Component>) => new ICAL.Event(c))
  return { calendar, events }
}
const first = (text: string) => {
  const [event] = read(text).events
  if (!event) throw new Error('no event')
  return event
}

describe('calendarFile', () => {
  it('is a whole day where no time is fixed', () => {
    const e = first(calendarFile([EVENT], DUBLIN))
    expect(e.startDate.isDate).toBe(true)
    expect(e.startDate.toString()).toBe('2027-05-10')
    // RFC 5545 3.6.1: the end of a day is the day after, and no part of the event.
    expect(e.endDate.toString()).toBe('2027-05-11')
    expect([e.uid, e.sequence]).toEqual(['d1-bring@jambside', 2])
  })

  it.each([
    ['in summer', '2027-05-10', '2027-05-10T07:30:00.000Z'],
    ['in winter', '2027-12-10', '2027-12-10T08:30:00.000Z'],
    ['on the day the clocks go forward', '2027-03-28', '2027-03-28T07:30:00.000Z'],
  ])('is the studio’s 8:30 %s', (_, date, start) => {
    const e = first(calendarFile([{ ...EVENT, date, minute: 510 }], DUBLIN))
    expect(e.startDate.isDate).toBe(false)
    expect(e.startDate.toJSDate().toISOString()).toBe(start)
    expect(e.endDate.toJSDate().getTime() - e.startDate.toJSDate().getTime()).toBe(30 * 60_000)
  })

  it('takes back what it announced under the same name', () => {
    const { calendar, events } = read(calendarFile([EVENT], DUBLIN, true))
    expect(calendar.getFirstPropertyValue('method')).toBe('CANCEL')
    expect(events[0]?.component.getFirstPropertyValue('status')).toBe('CANCELLED')
    expect(events[0]?.uid).toBe(EVENT.uid)
  })

  it('reads back as written, whatever is in it, in lines of at most 75 octets that end in CRLF', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 300 })
    fc.assert(
      fc.property(text, text, (summary, description) => {
        const file = calendarFile([{ ...EVENT, summary, description }], DUBLIN)
        expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true)
        for (const line of file.split('\r\n')) {
          expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
          expect(line).not.toMatch(/[\r\n]/)
        }
        const e = first(file)
        expect([e.summary, e.description]).toEqual([plain(summary), plain(description)])
      }),
      { numRuns: 200 },
    )
  })

  it('cannot be broken out of', () => {
    const hostile = 'x\r\nEND:VEVENT\r\nBEGIN:VALARM\nACTION:EMAIL;a,b\\n'
    const { events, calendar } = read(calendarFile([{ ...EVENT, summary: hostile }], DUBLIN))
    expect(events.length).toBe(1)
    expect(calendar.getAllSubcomponents('valarm')).toEqual([])
    expect(events[0]?.summary).toBe(plain(hostile))
  })
})

const plain = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
    .replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, ' ')
