import { readyGap } from '../../src/quote/plan/ready-simulation'
import { sampleJob } from '../../src/quote/plan/sample-jobs'
import { percent, range } from './figures'
import type { Found } from './proof'

/** Half of a working day of the invented studios: 495 minutes open, 30 of them set-up. */
const HALF_DAY = (495 - 30) / 2

/** How far the two ready times lie from a simulation that plans every draw anew. */
export const proveReady = (jobs: number, samples: number): Found => {
  const found = range(jobs).map((seed) => readyGap(sampleJob(seed), samples))
  const all = found.flatMap(({ likely, cautious }) => [Math.abs(likely), Math.abs(cautious)])
  const near = all.filter((gap) => gap <= HALF_DAY).length / all.length
  const sorted = [...all].sort((a, b) => a - b)
  const at = (share: number) =>
    `${sorted[Math.ceil(share * sorted.length) - 1]?.toFixed(0)} minutes`
  return {
    holds: near >= 0.95,
    figures: [
      ['jobs × simulations', `${jobs} × ${samples}`],
      ['ready times within half a working day', percent(near, 1)],
      ['gap: median, 95 %, largest', [at(0.5), at(0.95), at(1)].join(', ')],
    ],
  }
}
