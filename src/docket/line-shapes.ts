import * as z from 'zod'
import { parseDate } from '../kernel/calendar'

export const maybe = z.exactOptional
export const id = z.string().min(1).max(64)
export const micrometres = z.number().min(0).max(5000)
export const minor = z.int()
export const minutes = z.int().min(0).max(100_000)
export const words = z.string().min(1).max(64)
/** A day that is in the calendar. */
export const day = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/)
  .refine((text) => parseDate(text).ok, 'not a day of the calendar')

/** Free text stands in its own erasable table; the line keeps only where. */
export const text = z.strictObject({ text: id })

/** A time as it is kept, by a day that is in the calendar: a page that shows it must not break on it. */
export const moment = z
  .string()
  .max(40)
  .refine((text) => parseDate(text.slice(0, 10)).ok, 'not a time')
