import { expect, it } from 'vitest'
import { killWriter } from './kill-writer'

it('a killed server loses no acknowledged line and leaves no half batch', {
  timeout: 300_000,
}, async () => {
  const reports = await killWriter([1, 2, 17, 60, 150])
  expect(reports).toHaveLength(5)
  for (const report of reports) {
    const whole = { lost: 0, halfBatches: 0, integrity: 'ok', danglingReferences: 0 }
    expect(report).toMatchObject(whole)
  }
  expect(reports.at(-1)?.acknowledged).toBeGreaterThanOrEqual(1 + 2 + 17 + 60 + 150)
})
