import type { Zone } from '../kernel/calendar'

const MINUTE = 60_000
const DAY = 86_400_000
/** No zone keeps an offset for less than this; shorter spells would be stepped over (own estimate). */
const STEP = 10 * DAY

const known = new Map<string, Zone>()

const offsetReader = (name: string): ((ms: number) => number) => {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: name,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
  })
  return (ms) => {
    const part: Record<string, number> = {}
    for (const { type, value } of format.formatToParts(ms)) part[type] = Number(value)
    const local = Date.UTC(part.year!, part.month! - 1, part.day!, part.hour!, part.minute!)
    return Math.round(local / MINUTE) - Math.floor(ms / MINUTE)
  }
}

const changes = (name: string, fromMs: number, toMs: number): Zone => {
  const offset = offsetReader(name)
  const zone = [{ fromUtcMinute: fromMs / MINUTE, offsetMinutes: offset(fromMs) }]
  for (let at = fromMs; at < toMs; at += STEP) {
    let before = at
    let after = Math.min(at + STEP, toMs)
    const next = offset(after)
    if (next === zone.at(-1)!.offsetMinutes) continue
    while (after - before > MINUTE) {
      const middle = before + Math.floor((after - before) / (2 * MINUTE)) * MINUTE
      if (offset(middle) === next) after = middle
      else before = middle
    }
    zone.push({ fromUtcMinute: after / MINUTE, offsetMinutes: next })
  }
  return zone
}

/** Whether the platform knows an IANA zone name such as 'Europe/Berlin'. */
export const isZoneName = (name: string): boolean => {
  try {
    return Boolean(new Intl.DateTimeFormat('en-US', { timeZone: name }))
  } catch {
    return false
  }
}

/**
 * Offsets of an IANA zone between two UTC instants in ms, rounded out to whole UTC years and kept.
 * Offsets are whole minutes (all zones since 1972). Throws RangeError for a name isZoneName denies.
 */
export const zoneOf = (name: string, fromMs: number, toMs: number): Zone => {
  const first = new Date(fromMs).getUTCFullYear()
  const last = new Date(toMs).getUTCFullYear()
  const key = `${name} ${first} ${last}`
  const kept = known.get(key)
  if (kept) return kept
  const zone = changes(name, Date.UTC(first, 0, 1), Date.UTC(last + 1, 0, 1))
  known.set(key, zone)
  return zone
}
