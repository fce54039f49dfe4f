import { describe, expect, it } from 'vitest'
import { anyAnswer } from '../../../tests/corpus/levels'
import { draws } from '../../../tests/corpus/random'
import { walk } from '../../../tests/corpus/walk'
import type { Answers } from '../../intake/answers'
import { script } from '../../intake/script'
import { answersOf, minutesOf, plainCar, scopeOf } from './step-bench'

/** Minutes of the steps both answer sets have in common, first and second. */
const shared = (a: Answers, b: Answers): readonly [number, number, number] => {
  const in2 = new Set(scopeOf(b))
  const both = scopeOf(a).filter((id) => in2.has(id))
  return [minutesOf(a, both), minutesOf(b, both), both.length]
}

const ladders: readonly (readonly [question: string, milder: unknown, worse: unknown])[] = [
  ['size', 'small', 'mid'],
  ['size', 'mid', 'large'],
  ['cabin-state', 'tidy', 'family'],
  ['cabin-state', 'family', 'neglected'],
  ['film-age', 2, 6],
  ['film-age', 6, 12],
  ['film-state', ['pliable'], ['dull']],
  ['film-state', ['dull'], ['cracked']],
  ['wet-depth', 'surface', 'soaked'],
  ['wet-depth', 'soaked', 'standing'],
  ['wet-where', ['front-floor'], ['front-floor', 'rear-floor']],
  ['mould-area', 'coin', 'hand'],
  ['mould-area', 'hand', 'tray'],
  ['hard-soft', 'normal', 'very-hard'],
  ['cabin-marks', [], ['sand', 'stains']],
  ['roof-state', [], ['dirty-green']],
  ['kept-washed', 'hand', 'rarely'],
  ['ride', 'normal', 'lowered'],
  ['defects', ['wash-marks'], ['wash-marks', 'overspray']],
]

const draw = draws(77)
const sets = Array.from({ length: 45 }, () => walk(script, (q) => anyAnswer(q, draw)))

describe('worse or larger never takes fewer minutes with the same steps', () => {
  it.each(ladders)('%s: %j → %j', (question, milder, worse) => {
    let compared = 0
    const cars = [
      ...sets,
      answersOf({
        ...plainCar,
        body: 'convertible',
        dangers: ['film', 'wet', 'growth', 'soft-roof'],
        services: ['paint', 'protect', 'cabin', 'roof'],
        'roof-kind': 'cloth',
        growth: ['mould-hard'],
        'mould-area': 'coin',
        'sensitive-people': false,
        'film-kind': ['clear-film'],
        'film-where': ['bonnet'],
        'film-age': 3,
        'film-state': [],
        'wet-source': 'repaired',
        'wet-depth': 'surface',
        'wet-where': ['front-floor'],
        'cabin-state': 'family',
        'hard-soft': 'normal',
      }),
      answersOf(plainCar),
    ]
    for (const base of cars) {
      const [a, b, n] = shared(
        { ...base, [question]: { value: milder } },
        { ...base, [question]: { value: worse } },
      )
      if (n === 0) continue
      expect(b).toBeGreaterThanOrEqual(a - 1e-9)
      if (b > a) compared += 1
    }
    expect(compared).toBeGreaterThan(0)
  })
})
