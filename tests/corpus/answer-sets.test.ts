import { describe, expect, it } from 'vitest'
import { script } from '../../src/intake/script'
import { answerSets, build, pairLedger } from './answer-sets'
import { anyAnswer } from './levels'
import { draws } from './random'
import { walk } from './walk'

const sets = answerSets()

describe('answerSets', () => {
  it('shows every pair of levels that thousands of other conversations show', () => {
    const seen = pairLedger(script)
    for (const answers of sets) seen.add(answers)
    const draw = draws(7)
    const missed: string[] = []
    for (let n = 0; n < 2_000; n += 1)
      missed.push(...seen.add(walk(script, (q) => anyAnswer(q, draw))))
    expect(missed).toEqual([])
  })

  it('is the same whenever it is made', () => {
    const small = { version: 't', questions: script.questions.slice(0, 12) }
    expect(build(small, draws(1), 200)).toEqual(build(small, draws(1), 200))
    expect(build(small, draws(1), 200)).not.toEqual(build(small, draws(2), 200))
  })
})
