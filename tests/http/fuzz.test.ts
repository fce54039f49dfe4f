import { expect, it } from 'vitest'
import { fuzz } from './fuzz'
import { prepared } from './stages'

it('a thousand bodies made from the shapes: every answer is as described, nothing repeats or runs', {
  timeout: 300_000,
}, async () => {
  const { requests, statuses, faults } = await fuzz(await prepared(), 1_000, 20_260_302)
  expect(faults).toEqual([])
  expect(requests).toBeGreaterThanOrEqual(1_000)
  // It would find nothing if all were refused, or none.
  const good = Object.entries(statuses).filter(([s]) => Number(s) < 300)
  expect(good.reduce((sum, [, n]) => sum + n, 0)).toBeGreaterThan(50)
  expect(statuses[422]).toBeGreaterThan(200)
})
