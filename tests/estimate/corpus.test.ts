import { beforeAll, describe, expect, it } from 'vitest'
import type { Answers } from '../../src/intake/answers'
import { answerSets } from '../corpus/answer-sets'
import { corpusFaults } from './corpus-faults'

/** Every how manieth set is tried here; the proofs try them all. */
const EVERY = 24

describe('estimates over every pair of answers', () => {
  let all: readonly Answers[] = []
  let sets: readonly Answers[] = []
  beforeAll(() => {
    all = answerSets()
    sets = all.filter((_, i) => i % EVERY === 0)
  }, 120_000)

  it('is in order, sums up, and says where each line comes from', () => {
    expect(corpusFaults.whole(sets)).toEqual({ tried: sets.length, faults: [] })
    expect(sets.length).toBeGreaterThan(80)
  })

  it('moves no line whose reasons do not name the answer that changed', () => {
    const { tried, faults } = corpusFaults.because(sets)
    expect(faults).toEqual([])
    expect(tried).toBeGreaterThan(50)
  })

  it('is never surer, nor off to one side, for not knowing', () => {
    const { by, faults } = corpusFaults.unsure(all, 3)
    expect(faults).toEqual([])
    expect([...by].filter(([, times]) => times < 3)).toEqual([])
  })

  it('takes no fewer minutes for a worse or larger car with the same steps', () => {
    const { tried, faults } = corpusFaults.worse(sets)
    expect(faults).toEqual([])
    expect(tried).toBeGreaterThan(20)
  })
})
