import { fold } from '../../docket/fold'
import type { LastVisit } from '../../pages/studio/docket-view'
import type { StoredLine } from '../../store/lines'
import { todayOf } from '../acts/estimating'
import type { Any } from './page'

const mean = (values: readonly number[]): number | null =>
  values.length === 0
    ? null
    : Math.round((values.reduce((s, v) => s + v, 0) / values.length) * 10) / 10

/** The earlier visit of a car with what was read then, panel by panel; nothing when there was none. */
export const lastVisit = (call: Any, lines: readonly StoredLine[]): LastVisit | undefined => {
  if (lines.length === 0) return undefined
  const docket = fold(lines)
  const read = docket.bench.readings.filter((r) => r.kind === 'panel')
  const panels = [...new Set(read.map((r) => r.panel))]
  const of = (panel: string, when: 'before' | 'after') =>
    mean(
      read
        .filter((r) => r.panel === panel && (r.when ?? 'before') === when)
        .flatMap((r) => r.values),
    )
  return {
    id: docket.id,
    reference: docket.reference,
    date: todayOf(call.studio, docket.submittedAt ?? docket.openedAt),
    readings: panels.map((panel) => ({
      panel,
      before: of(panel, 'before'),
      after: of(panel, 'after'),
    })),
  }
}
