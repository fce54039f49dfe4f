import { fold } from '../../docket/fold'
import { benchReadings } from '../../jobsheet/readings'
import { beforeAfter } from '../../jobsheet/record'
import type { LastVisit } from '../../pages/studio/docket-view'
import type { StoredLine } from '../../store/lines'
import { todayOf } from '../acts/estimating'
import type { Any } from './page'

/** The earlier visit of a car with what was read then, panel by panel; nothing when there was none. */
export const lastVisit = (call: Any, lines: readonly StoredLine[]): LastVisit | undefined => {
  if (lines.length === 0) return undefined
  const docket = fold(lines)
  return {
    id: docket.id,
    reference: docket.reference,
    date: todayOf(call.studio, docket.submittedAt ?? docket.openedAt),
    readings: beforeAfter(benchReadings(docket.bench)),
  }
}
