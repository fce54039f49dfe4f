import { year } from '../questions/year'
import type { Reader } from '../reader'

/** Years since the car was built; undefined when the year is not known. Never negative. */
export const age = (r: Reader, nowYear: number): number | undefined => {
  const built = r.value(year)
  return built === undefined ? undefined : Math.max(0, nowYear - built)
}
