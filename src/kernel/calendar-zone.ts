import { formatDay, type Zone } from './calendar'

export const DAY_MINUTES = 1440

/** A local wall-clock moment: 'YYYY-MM-DD' and the minute of that day, 0-1439. */
export type LocalMinute = { readonly date: string; readonly minute: number }

export const UTC: Zone = []

/** Offset in minutes in force at a UTC minute. */
export const offsetAt = (zone: Zone, utcMinute: number): number => {
  let offset = zone[0]?.offsetMinutes ?? 0
  for (const entry of zone) {
    if (entry.fromUtcMinute > utcMinute) break
    offset = entry.offsetMinutes
  }
  return offset
}

/** Local minute (day number × 1440 + minute of day) of a UTC minute. */
export const toLocalMinute = (zone: Zone, utcMinute: number): number =>
  utcMinute + offsetAt(zone, utcMinute)

/**
 * UTC minute of a local minute. A local time that occurs twice (clocks go back) is its first
 * occurrence; one that never occurs (clocks go forward) is the moment of the change itself.
 */
export const toUtcMinute = (zone: Zone, localMinute: number): number => {
  let offset = zone[0]?.offsetMinutes ?? 0
  for (const entry of zone) {
    const latest = localMinute - offset
    if (latest < entry.fromUtcMinute) return latest
    if (localMinute - entry.offsetMinutes < entry.fromUtcMinute) return entry.fromUtcMinute
    offset = entry.offsetMinutes
  }
  return localMinute - offset
}

/** Date and minute of day of a local minute. */
export const splitLocal = (localMinute: number): LocalMinute => {
  const day = Math.floor(localMinute / DAY_MINUTES)
  return { date: formatDay(day), minute: localMinute - day * DAY_MINUTES }
}

/** 'HH:MM' of a minute of day; 1440 is '24:00' (ISO 8601 end of day). */
export const formatMinute = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`

/** ISO 8601 UTC instant 'YYYY-MM-DDTHH:MM:00Z' of a UTC minute. */
export const isoOfMinute = (utcMinute: number): string => {
  const local = splitLocal(utcMinute)
  return `${local.date}T${formatMinute(local.minute)}:00Z`
}

/** ISO 8601 UTC instant with milliseconds of whole milliseconds since 1970-01-01T00:00Z. */
export const isoOfMs = (ms: number): string => {
  const minute = Math.floor(ms / 60_000)
  const rest = ms - minute * 60_000
  const local = splitLocal(minute)
  const seconds = String(Math.floor(rest / 1000)).padStart(2, '0')
  return `${local.date}T${formatMinute(local.minute)}:${seconds}.${String(rest % 1000).padStart(3, '0')}Z`
}
