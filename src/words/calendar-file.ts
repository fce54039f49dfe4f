import type { Zone } from '../kernel/calendar'
import { isoOfMinute, toUtcMinute } from '../kernel/calendar-zone'
import { addDaysText } from '../quote/working-day'

export type CalendarEvent = {
  /** Stays the same for the life of the event; a change counts `sequence` up. */
  readonly uid: string
  readonly sequence: number
  /** UTC ms of the change. */
  readonly stampedAt: number
  readonly summary: string
  readonly description: string
  /** The day in the studio's place; with a minute of that day it has a time, without it is the whole day. */
  readonly date: string
  readonly minute?: number
  readonly lastsMinutes?: number
  readonly url: string
}

const encoder = new TextEncoder()

/** Escaping of text (RFC 5545, 3.3.11); other control characters have no place in a line. */
export const escapeText = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
    .replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, ' ')
    .replace(/[\\;,]/g, (c) => `\\${c}`)
    .replace(/\n/g, '\\n')

/** Folds a content line at 75 octets, never inside a character (RFC 5545, 3.1). */
export const foldLine = (line: string): string => {
  const parts: string[] = []
  let part = ''
  let octets = 0
  for (const char of line) {
    const more = encoder.encode(char).length
    // The blank that begins a folded line counts as one octet of it.
    if (octets + more > 75) {
      parts.push(part)
      part = ''
      octets = 1
    }
    part += char
    octets += more
  }
  return [...parts, part].join('\r\n ')
}

const compact = (iso: string): string => iso.replace(/[-:]/g, '').replace(/\.\d+/, '')
const utc = (minute: number): string => compact(isoOfMinute(minute))
const dayStart = (date: string): number => Math.floor(Date.parse(`${date}T00:00:00Z`) / 60_000)

const when = (e: CalendarEvent, zone: Zone): readonly string[] => {
  if (e.minute === undefined)
    return [
      `DTSTART;VALUE=DATE:${compact(e.date)}`,
      `DTEND;VALUE=DATE:${compact(addDaysText(e.date, 1))}`,
    ]
  const start = toUtcMinute(zone, dayStart(e.date) + e.minute)
  return [`DTSTART:${utc(start)}`, `DTEND:${utc(start + (e.lastsMinutes ?? 30))}`]
}

const eventLines = (e: CalendarEvent, zone: Zone, cancelled: boolean): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${e.uid}`,
  `SEQUENCE:${e.sequence}`,
  `DTSTAMP:${utc(Math.floor(e.stampedAt / 60_000))}`,
  ...when(e, zone),
  `SUMMARY:${escapeText(e.summary)}`,
  `DESCRIPTION:${escapeText(e.description)}`,
  `URL:${e.url}`,
  `STATUS:${cancelled ? 'CANCELLED' : 'CONFIRMED'}`,
  'TRANSP:TRANSPARENT',
  'END:VEVENT',
]

/**
 * Events as an iCalendar file (RFC 5545). Times are UTC, reckoned from the studio's own zone: every
 * calendar reads them, and none needs a description of the zone.
 */
export const calendarFile = (
  events: readonly CalendarEvent[],
  zone: Zone,
  cancelled = false,
): string =>
  [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Jambside//Docket//EN',
    'CALSCALE:GREGORIAN',
    `METHOD:${cancelled ? 'CANCEL' : 'PUBLISH'}`,
    ...events.flatMap((e) => eventLines(e, zone, cancelled)),
    'END:VCALENDAR',
  ]
    .map((line) => `${foldLine(line)}\r\n`)
    .join('')
