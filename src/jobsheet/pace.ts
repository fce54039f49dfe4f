import { wilsonInterval } from '../kernel/statistics'

/** What one finished job says of one step: minutes reckoned with and minutes used. */
export type StepUse = {
  readonly step: string
  readonly planned: number
  readonly used: number
}

export type PaceProposal = {
  readonly step: string
  /** Finished jobs it rests on. */
  readonly jobs: number
  /** What those jobs alone say, times the catalogue. */
  readonly seen: number
  /** The proposal: drawn towards the catalogue by as much as few jobs can tell. */
  readonly pace: number
  /** Share of what was seen that the proposal takes over, 0 to 1. */
  readonly weight: number
  /** 90 % range of the pace. */
  readonly low: number
  readonly high: number
}

/** Sd of log pace between studios: before any job two in three lie between 0.7 and 1.4 times (own estimate). */
const PRIOR_SD = 0.35
/** Sd of log minutes from job to job at one studio (own estimate). */
const JOB_SD = 0.35
/** Least change worth proposing (own estimate). */
const LEAST_CHANGE = 0.05
/** Limits of a pace in the settings. */
const LEAST = 0.25
const MOST = 4

const Z90 = 1.6448536269514722

/**
 * The pace of one step from its jobs: log(used / planned) with a normal prior at the catalogue and a
 * known spread, conjugate, so that the mean is the weighted mean (closed form). Planned minutes are a
 * mean, and the logarithm of a spread lies below that of its mean by half its variance: added back.
 */
export const paceOf = (uses: readonly Pick<StepUse, 'planned' | 'used'>[]) => {
  const logs = uses
    .filter((u) => u.planned > 0 && u.used > 0)
    .map((u) => Math.log(u.used / u.planned) + (JOB_SD * JOB_SD) / 2)
  const n = logs.length
  const prior = 1 / (PRIOR_SD * PRIOR_SD)
  const data = n / (JOB_SD * JOB_SD)
  const weight = data / (prior + data)
  const seen = n === 0 ? 0 : logs.reduce((sum, x) => sum + x, 0) / n
  const mean = weight * seen
  const sd = 1 / Math.sqrt(prior + data)
  const clamped = (x: number): number => Math.min(MOST, Math.max(LEAST, Math.exp(x)))
  return {
    jobs: n,
    seen: Math.exp(seen),
    weight,
    pace: clamped(mean),
    low: clamped(mean - Z90 * sd),
    high: clamped(mean + Z90 * sd),
  }
}

/**
 * Proposals by step, those with most jobs first: only where there are enough jobs and the change is worth
 * it against the pace set now. Nothing is applied before the studio takes it.
 */
export const paceProposals = (
  uses: readonly StepUse[],
  now: Readonly<Record<string, number>> = {},
  leastJobs = 3,
): readonly PaceProposal[] => {
  const bySteps = new Map<string, StepUse[]>()
  for (const u of uses) bySteps.set(u.step, [...(bySteps.get(u.step) ?? []), u])
  return [...bySteps]
    .map(([step, own]) => ({ step, ...paceOf(own) }))
    .filter((p) => p.jobs >= leastJobs)
    .filter((p) => Math.abs(p.pace / (now[p.step] ?? 1) - 1) >= LEAST_CHANGE)
    .sort((a, b) => b.jobs - a.jobs || (a.step < b.step ? -1 : 1))
}

export type Calibration = {
  readonly jobs: number
  readonly within: number
  /** Wilson interval of the share that lies within, 90 %. */
  readonly low: number
  readonly high: number
  /** How it reads: too few to say, as it should be, ranges too narrow, ranges too wide. */
  readonly says: 'too-few' | 'as-promised' | 'too-narrow' | 'too-wide'
}

/** Share of jobs a range of p10 to p90 is meant to hold. */
const PROMISED = 0.8

/**
 * Whether the ranges told beforehand held: eight of ten jobs should lie within. It is said to be off only
 * where the interval leaves the promise out.
 */
export const calibrationOf = (
  jobs: readonly { readonly low: number; readonly high: number; readonly used: number }[],
): Calibration => {
  const within = jobs.filter((j) => j.used >= j.low && j.used <= j.high).length
  const n = jobs.length
  if (n === 0) return { jobs: 0, within: 0, low: 0, high: 1, says: 'too-few' }
  const { low, high } = wilsonInterval(within, n, 0.9)
  const says =
    n < 10
      ? 'too-few'
      : high < PROMISED
        ? 'too-narrow'
        : low > PROMISED
          ? 'too-wide'
          : 'as-promised'
  return { jobs: n, within, low, high, says }
}
