import { expect, it } from 'vitest'
import { normalQuantile } from '../kernel/statistics'
import { smallRandom } from '../quote/plan/small-random'
import { calibrationOf, paceOf, paceProposals } from './pace'

/** Minutes used at a studio of this pace: lognormal round the plan, its mean the plan times the pace. */
const jobsOf = (pace: number, sd: number, n: number, random: () => number) =>
  Array.from({ length: n }, () => {
    const z = normalQuantile(Math.min(0.999999, Math.max(0.000001, random())))
    return { step: 'wash', planned: 60, used: 60 * pace * Math.exp(sd * z - (sd * sd) / 2) }
  })

it('recovers a studio that is a fifth slower within 5 % after 30 jobs, over 400 simulated studios', () => {
  const random = smallRandom(11)
  const found = Array.from({ length: 400 }, () => paceOf(jobsOf(1.2, 0.35, 30, random)))
  const mean = found.reduce((sum, p) => sum + p.pace, 0) / found.length
  expect(mean / 1.2).toBeGreaterThan(0.95)
  expect(mean / 1.2).toBeLessThan(1.05)
  // The range it states holds the truth about as often as it says.
  const held = found.filter((p) => p.low <= 1.2 && p.high >= 1.2).length / found.length
  expect(held).toBeGreaterThan(0.84)
  expect(held).toBeLessThan(0.96)
})

it('is the closed form of a normal mean with a normal prior, and draws few jobs to the catalogue', () => {
  // Gelman et al., Bayesian Data Analysis, 2.5 (value from memory): weight n/σ² over 1/τ² + n/σ².
  const sds = 0.35 * 0.35
  for (const n of [1, 4, 30]) {
    const p = paceOf(Array.from({ length: n }, () => ({ planned: 60, used: 90 })))
    const weight = n / sds / (1 / sds + n / sds)
    expect(p.weight).toBeCloseTo(weight, 12)
    expect(Math.log(p.pace)).toBeCloseTo(weight * (Math.log(1.5) + sds / 2), 12)
  }
  expect(paceOf([])).toMatchObject({ jobs: 0, weight: 0, pace: 1 })
})

it('proposes only what enough jobs bear out and is worth changing', () => {
  const use = (step: string, used: number, n: number) =>
    Array.from({ length: n }, () => ({ step, planned: 60, used }))
  const all = [...use('wash', 90, 6), ...use('clay', 90, 2), ...use('dry', 57, 8)]
  const proposals = paceProposals(all)
  expect(proposals.map((p) => p.step)).toEqual(['wash'])
  const wash = proposals[0]?.pace ?? 0
  // Taken once, it is not proposed again.
  expect(paceProposals(all, { wash })).toEqual([])
  expect(paceProposals(use('wash', 0, 9))).toEqual([])
})

it('says whether the ranges held, and says nothing of a few jobs', () => {
  const job = (used: number) => ({ low: 100, high: 200, used })
  const of = (within: number, out: number) =>
    calibrationOf([
      ...Array.from({ length: within }, () => job(150)),
      ...Array.from({ length: out }, () => job(250)),
    ])
  expect(of(0, 0).says).toBe('too-few')
  expect(of(4, 5).says).toBe('too-few')
  expect(of(16, 4).says).toBe('as-promised')
  expect(of(8, 12).says).toBe('too-narrow')
  expect(of(60, 0).says).toBe('too-wide')
  expect(of(16, 4)).toMatchObject({ jobs: 20, within: 16 })
})
