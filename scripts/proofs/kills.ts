import { killWriter } from '../../tests/store/kill-writer'
import { range } from './figures'
import type { Found } from './proof'

/** Whether anything acknowledged is lost when the writer is killed in the middle of its work. */
export const proveKills = async (kills: number): Promise<Found> => {
  const counts = range(kills).map((n) => 1 + ((n * 7) % 40))
  const reports = await killWriter(counts)
  const sum = (pick: (r: (typeof reports)[number]) => number) =>
    reports.reduce((total, report) => total + pick(report), 0)
  const lost = sum((r) => r.lost)
  const half = sum((r) => r.halfBatches)
  const dangling = sum((r) => r.danglingReferences)
  const unsound = reports.filter((r) => r.integrity !== 'ok').length
  return {
    holds: reports.length === kills && lost + half + dangling + unsound === 0,
    figures: [
      ['kills', String(reports.length)],
      ['lines kept at the end', String(reports.at(-1)?.kept ?? 0)],
      ['acknowledged lines lost', String(lost)],
      ['half batches, dangling references', `${half}, ${dangling}`],
      ['files that failed the integrity check', String(unsound)],
    ],
  }
}
