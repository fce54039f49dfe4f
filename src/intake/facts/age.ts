import { year } from '../questions/year'
import type { Reader } from '../reader'

/** What `seen` makes of the years since the car was built (never negative); undefined when not known. */
export const ageAs = <K>(r: Reader, nowYear: number, seen: (years: number) => K): K | undefined =>
  r.as(year, (built) => seen(Math.max(0, nowYear - built)))
