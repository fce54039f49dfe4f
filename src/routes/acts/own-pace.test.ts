import { expect, it } from 'vitest'
import type { FinishedPlan } from '../../store/finished'
import type { StoredLine } from '../../store/lines'
import { ownPace } from './own-pace'

let seq = 0
const line = (docket: string, kind: string, body: unknown): StoredLine => {
  seq += 1
  const at = seq * 60_000
  return { docket, seq, id: `l${seq}`, v: 1, kind, body, by: 'bench', device: 'a', n: seq, at }
}

/** A finished job: agreed at a plan, the wash done in so many minutes. */
const job = (docket: string, digest: string, minutes: number): readonly StoredLine[] => [
  line(docket, 'revised', { revision: 1, digest }),
  line(docket, 'sent', { revision: 1 }),
  line(docket, 'decided', { decision: 'accept', revision: 1, acknowledged: [] }),
  line(docket, 'done', { step: 'wash', minutes, entered: true }),
]

const plan = (digest: string, pace?: number): FinishedPlan => ({
  digest,
  steps: [{ id: 'wash', expectedMinutes: 60 * (pace ?? 1) }],
  labour: { low: 50, high: 100 },
  setUp: 10,
  paces: pace === undefined ? {} : { wash: { pace } },
})

it('reckons a job planned with a pace of the studio back to the catalogue', () => {
  const lines = ['a', 'b', 'c', 'd'].flatMap((d) => job(d, 'slow', 90))
  const { proposals } = ownPace(lines, [plan('slow', 1.5)], { wash: { pace: 1 } })
  // 90 minutes where the catalogue has 60, though the plan of that day had 90 as well.
  expect(proposals[0]).toMatchObject({ step: 'wash', jobs: 4 })
  expect(proposals[0]?.seen).toBeGreaterThan(1.5)
  expect(proposals[0]?.pace).toBeGreaterThan(1.3)
})

it('counts a job whose minutes with the set-up lie in the range told, and none without a plan', () => {
  const lines = [...job('a', 'p', 60), ...job('b', 'p', 95), ...job('c', 'gone', 60)]
  const { calibration } = ownPace(lines, [plan('p')], {})
  expect(calibration).toMatchObject({ jobs: 2, within: 1, says: 'too-few' })
})

it('leaves out a step whose line was struck', () => {
  const lines = job('a', 'p', 60)
  const struck = line('a', 'struck', { line: lines.at(-1)?.id, why: 'a slip' })
  expect(ownPace([...lines, struck], [plan('p')], {}).calibration).toMatchObject({ within: 0 })
})
