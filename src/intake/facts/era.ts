import { year } from '../questions/year'
import type { Reader } from '../reader'

export const ERAS = ['lacquer', 'enamel', 'change-over', 'clear'] as const
export type Era = (typeof ERAS)[number]

/** First years of each way of painting (own estimate; the wide change to clear coat 1980-1990 is a value from memory). */
const first = { enamel: 1965, changeOver: 1985, clear: 2000 } as const

/** The era of paint a year belongs to. */
export const eraOf = (built: number): Era => {
  if (built < first.enamel) return 'lacquer'
  if (built < first.changeOver) return 'enamel'
  return built < first.clear ? 'change-over' : 'clear'
}

/** The era the car was painted in at the factory; undefined when its year is not known. */
export const era = (r: Reader): Era | undefined => r.as(year, eraOf)
