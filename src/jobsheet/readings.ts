import {
  type PaintSet,
  type PaintStepId,
  type SequenceId,
  type SetsDone,
  sequenceById,
  sequenceIds,
} from '../quote/paint'
import type { BenchFacts } from './bench-facts'

/**
 * Readings as the paint model takes them. One taken after the panel was first polished counts as an
 * "after" reading unless the bench said otherwise.
 */
export const benchReadings = (bench: BenchFacts): readonly PaintSet[] => {
  const first = new Map<string, number>()
  for (const p of bench.polished) {
    const was = first.get(p.panel)
    if (was === undefined || p.at < was) first.set(p.panel, p.at)
  }
  return bench.readings.map((r) => {
    const since = first.get(r.panel)
    const after = since !== undefined && r.at >= since
    return {
      panel: r.panel,
      kind: r.kind,
      values: r.values,
      when: r.when ?? (after && r.kind === 'panel' ? 'after' : 'before'),
      ...(r.probe === undefined ? {} : { probe: r.probe }),
      ...(r.overFilm === undefined ? {} : { overFilm: r.overFilm }),
      ...(r.spot === undefined ? {} : { spot: r.spot }),
    }
  })
}

const isSequence = (id: string): id is SequenceId => (sequenceIds as readonly string[]).includes(id)

/** Sets run in this job, by panel; each set of a sequence runs every step of it once. */
export const doneSets = (
  bench: BenchFacts,
): readonly { readonly panel: string; readonly sets: readonly SetsDone[] }[] => {
  const byPanel = new Map<string, Map<PaintStepId, number>>()
  for (const p of bench.polished) {
    if (!isSequence(p.sequence)) continue
    const steps = byPanel.get(p.panel) ?? new Map<PaintStepId, number>()
    for (const step of sequenceById(p.sequence).steps)
      steps.set(step, (steps.get(step) ?? 0) + p.sets)
    byPanel.set(p.panel, steps)
  }
  return [...byPanel].map(([panel, steps]) => ({
    panel,
    sets: [...steps].map(([step, sets]) => ({ step, sets })),
  }))
}
