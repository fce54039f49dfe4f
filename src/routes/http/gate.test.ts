import { expect, it } from 'vitest'
import { createGate } from './gate'
import type { Problem } from './problem'

const LIMITS = { perMinute: 2, bytesPerMinute: 100, atOnce: 3, largeAtOnce: 1 }
const problemOf = async (work: () => unknown): Promise<Problem | null> => {
  try {
    await work()
    return null
  } catch (error) {
    return error as Problem
  }
}

it('counts an address by the minute, and begins anew with the next', async () => {
  const gate = createGate(LIMITS)
  const at = 7 * 60_000 + 20_000
  for (const _ of [1, 2]) gate.enter('a', at)
  expect(await problemOf(() => gate.enter('a', at))).toMatchObject({
    code: 'too-many',
    retryAfter: 40,
  })
  gate.enter('b', at)
  gate.enter('a', at + 40_000)
})

it('counts bytes beside requests', async () => {
  const gate = createGate(LIMITS)
  gate.spend('a', 100, 0)
  expect(await problemOf(() => gate.spend('a', 1, 0))).toMatchObject({ code: 'too-many' })
  gate.enter('a', 0)
})

it('a crowd of addresses shares one count, so that the memory stays small', async () => {
  const gate = createGate({ ...LIMITS, perMinute: 1 })
  for (let i = 0; i < 20_001; i += 1) gate.enter(`a${i}`, 0)
  expect(await problemOf(() => gate.enter('another', 0))).toMatchObject({ code: 'too-many' })
})

it('sheds with 503 where all places are taken, large ones first, and frees them also after a fault', async () => {
  const gate = createGate(LIMITS)
  const ends: (() => void)[] = []
  const wait = () => new Promise<void>((done) => ends.push(done))
  const running = [gate.inside(wait, true), gate.inside(wait, false)]
  expect(await problemOf(() => gate.inside(wait, true))).toMatchObject({
    code: 'away',
    retryAfter: 5,
  })
  running.push(gate.inside(wait, false))
  expect(await problemOf(() => gate.inside(wait, false))).toMatchObject({ code: 'away' })
  for (const end of ends) end()
  await Promise.all(running)
  await expect(gate.inside(() => Promise.reject(new Error('x')), true)).rejects.toThrow('x')
  expect(await gate.inside(async () => 'in', true)).toBe('in')
})
