import { fold } from '../../docket/fold'
import { calibrationOf, paceProposals, type StepUse } from '../../jobsheet/pace'
import type { FinishedPlan } from '../../store/finished'
import type { StoredLine } from '../../store/lines'

/** Finished dockets looked at. */
export const MOST_FINISHED = 60

const byDocket = (lines: readonly StoredLine[]): ReadonlyMap<string, readonly StoredLine[]> => {
  const found = new Map<string, StoredLine[]>()
  for (const line of lines) found.set(line.docket, [...(found.get(line.docket) ?? []), line])
  return found
}

type Job = {
  readonly uses: readonly StepUse[]
  readonly setUp: number
  readonly low: number
  readonly high: number
}

/** One finished job: minutes used by step against the catalogue's, and the range that was told. */
const jobOf = (
  lines: readonly StoredLine[],
  plans: ReadonlyMap<string, FinishedPlan>,
): Job | null => {
  const { agreed, revisions, bench } = fold(lines)
  const revision = revisions.find((r) => r.revision === agreed?.revision)
  const plan = revision ? plans.get(revision.digest) : undefined
  if (!plan) return null
  const uses = plan.steps.flatMap((s): readonly StepUse[] => {
    const did = bench.steps[s.id]
    if (did?.state !== 'done' || did.minutes <= 0) return []
    // Back to the catalogue's own minutes: what was planned held the pace set then.
    const pace = plan.paces[s.id]?.pace ?? 1
    return [{ step: s.id, planned: s.expectedMinutes / pace, used: did.minutes }]
  })
  return { uses, setUp: plan.setUp, low: plan.labour.low, high: plan.labour.high }
}

/**
 * What the studio's finished jobs say of its pace by step, and whether the ranges told beforehand held.
 */
export const ownPace = (
  lines: readonly StoredLine[],
  plans: readonly FinishedPlan[],
  now: Readonly<Record<string, { readonly pace?: number | undefined }>>,
) => {
  const byDigest = new Map(plans.map((p) => [p.digest, p]))
  const jobs = [...byDocket(lines).values()].flatMap((own) => jobOf(own, byDigest) ?? [])
  const paces = Object.fromEntries(
    Object.entries(now).flatMap(([id, s]) => (s.pace === undefined ? [] : [[id, s.pace]])),
  )
  return {
    proposals: paceProposals(
      jobs.flatMap((j) => j.uses),
      paces,
    ),
    calibration: calibrationOf(
      jobs.map((j) => ({
        low: j.low,
        high: j.high,
        used: j.uses.reduce((sum, u) => sum + u.used, j.setUp),
      })),
    ),
  }
}
export type OwnPace = ReturnType<typeof ownPace>
