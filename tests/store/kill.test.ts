import { expect, it } from 'vitest'
import { killWriter } from './kill-writer'

/** After how many acknowledged batches each kill comes. */
const KILLS = [1, 2, 3, 5, 8, 17, 30, 41, 60, 100]

it('a killed server loses no acknowledged line and leaves no half batch', {
  timeout: 300_000,
}, async () => {
  const reports = await killWriter(KILLS)
  expect(reports).toHaveLength(KILLS.length)
  for (const report of reports) {
    const whole = { lost: 0, halfBatches: 0, integrity: 'ok', danglingReferences: 0 }
    expect(report).toMatchObject(whole)
  }
  expect(reports.at(-1)?.acknowledged).toBeGreaterThanOrEqual(KILLS.reduce((sum, n) => sum + n, 0))
})
