import { describe, expect, it } from 'vitest'
import { reader } from '../reader'
import { finishSystem } from './finish-system'

const car = (values: Readonly<Record<string, unknown>>) =>
  reader(
    Object.fromEntries(
      Object.entries({
        services: ['paint'],
        body: 'saloon',
        dangers: [],
        wish: 'improve',
        'paint-history': 'original',
        colour: 'mid',
        ...values,
      }).map(([k, value]) => [k, { value }]),
    ),
  )

/** What the cloth, the year and the respray say about the paint; common practice, no source. */
describe('the finish system', () => {
  it.each([
    [{ year: 2015 }, 'clear-coat'],
    [{ year: 2015, dangers: ['matte'] }, 'matte'],
    [{ year: 1990, 'cloth-test': 'colour', finish: 'solid' }, 'single-stage-solid'],
    [{ year: 1990, 'cloth-test': 'part', finish: 'metallic' }, 'single-stage-metallic'],
    [{ year: 1990, 'cloth-test': 'clean' }, 'clear-coat'],
    [{ year: 1958, 'cloth-test': 'colour' }, 'lacquer'],
    [{ year: 1958 }, 'lacquer'],
    [{ year: 1958, 'cloth-test': 'clean' }, 'refinished'],
    [{ year: 1964, 'cloth-test': 'colour' }, 'lacquer'],
    [{ year: 1965, 'cloth-test': 'colour', finish: 'solid' }, 'single-stage-solid'],
    [{ year: 1975 }, 'unknown'],
    [{ year: 1975, 'paint-history': 'all', 'cloth-test': 'clean' }, 'refinished'],
    [{ year: 1958, 'paint-history': 'all', 'cloth-test': 'clean' }, 'refinished'],
  ])('%j → %s', (values, expected) => {
    expect(finishSystem(car(values))).toBe(expected)
  })
})
