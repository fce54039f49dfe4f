import { formatDay, parseDay } from '../kernel/calendar'

/** The day `days` after a day, as text. Throws on what is no day: a programming mistake. */
export const addDaysText = (day: string, days: number): string => {
  const parsed = parseDay(day)
  if (!parsed.ok) throw new Error(`not a day: ${day}`)
  return formatDay(parsed.value + days)
}
