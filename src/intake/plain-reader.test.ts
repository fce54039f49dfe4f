import { describe, expect, it } from 'vitest'
import { anyAnswer } from '../../tests/corpus/levels'
import { draws } from '../../tests/corpus/random'
import type { Answers } from './answers'
import { plainReader } from './plain-reader'
import { reader } from './reader'
import { replay } from './replay'
import { script } from './script'

/** Answers to about two questions in three, asked or not. */
const someAnswers = (seed: number): Answers => {
  const draw = draws(seed)
  return Object.fromEntries(
    script.questions.flatMap((q) => (draw(3) > 0 ? [[q.id, anyAnswer(q, draw)]] : [])),
  )
}

describe('the plain reader', () => {
  it('says of every question what the recording reader says', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const answers = someAnswers(seed)
      const plain = plainReader(answers)
      const recording = reader(answers)
      for (const q of script.questions) {
        expect([q.id, plain.asks(q), plain.value(q), plain.unsettled(q)]).toEqual([
          q.id,
          recording.asks(q),
          recording.value(q),
          recording.unsettled(q),
        ])
      }
    }
  })
  it('finds answers to questions the script does not have, sorted, beside those not asked', () => {
    const strange = { zebra: { value: 1 }, apple: { unsure: true as const } }
    expect(replay(script, { ...strange, 'film-age': { value: 3 } }).setAside).toEqual([
      'film-age',
      'apple',
      'zebra',
    ])
    expect(replay(script, { 'begun-year': { value: 2026 } }).setAside).toEqual([])
  })
})
