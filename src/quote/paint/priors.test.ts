import { describe, expect, it } from 'vitest'
import { lightlyClearedWeight, priorsFor } from './priors'
import { finishSystems } from './types'

describe('what is expected before anybody measures', () => {
  it('weights add to one for every system and year, known or not', () => {
    for (const finish of finishSystems)
      for (const year of [null, 1955, 1969, 1970, 1984, 1985, 1999, 2000, 2005, 2025]) {
        const sum = priorsFor(finish, year).reduce((s, p) => s + p.weight, 0)
        expect(sum).toBeCloseTo(1, 12)
      }
  })
  it('never repeats a component', () => {
    const shapes = priorsFor('unknown', null).map(({ weight: _, ...shape }) =>
      JSON.stringify(shape),
    )
    expect(new Set(shapes).size).toBe(shapes.length)
  })
  // Totals of original paint: clear over base 98-140 µm, single stage of the 1990s 89-102 (trade pages).
  it.each([
    ['clear-coat', 2015, 98, 140],
    ['clear-coat', 1992, 98, 140],
    ['single-stage-solid', 1993, 89, 102],
    ['lacquer', 1958, 75, 150],
  ] as const)('%s of %d: total between %d and %d µm', (finish, year, low, high) => {
    const [p] = priorsFor(finish, year)
    const total = p!.undercoat.mean + p!.topcoat.mean
    expect(total).toBeGreaterThanOrEqual(low)
    expect(total).toBeLessThanOrEqual(high)
  })
  // A car maker's service text: clear is typically 1.5-2 mil, 38-51 µm.
  it.each([1985, 2015])('clear of %d lies in 38-51 µm', (year) => {
    const c = priorsFor('clear-coat', year)[0]!.topcoat.mean
    expect(c).toBeGreaterThanOrEqual(38)
    expect(c).toBeLessThanOrEqual(51)
  })
  it('takes a jamb for lightly cleared more often on old cars', () => {
    const w = [1990, 2005, 2020].map(lightlyClearedWeight)
    expect([...w].sort((a, b) => b - a)).toEqual(w)
    expect(lightlyClearedWeight(null)).toBe(0.5)
  })
})
