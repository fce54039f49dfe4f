import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodyStyles, outerAreaM2, panelSizes, panelsAt, panelsOf } from './panels'

fc.configureGlobal({ seed: 20_260_101 })

describe('outer panels by body style', () => {
  // A paint-maker text reprinted on a trade page gives 15-25 m² for the painted surface of a car. That is the
  // whole of it, with door edges, jambs and the inside of lids; our outer panels are a part of it, taken as a half
  // to four fifths (own estimate). So outer / 0.5 must reach 15 and outer / 0.8 stay under 25.
  const cars = bodyStyles.filter((b) => b !== 'van')
  it.each(cars)('%s: whole surface can lie in the published 15-25 m²', (style) => {
    const outer = outerAreaM2(panelsOf(style))
    expect(outer / 0.5).toBeGreaterThanOrEqual(15)
    expect(outer / 0.8).toBeLessThanOrEqual(25)
  })
  it('a van may reach past the span but stays the largest', () => {
    const areas = bodyStyles.map((b) => outerAreaM2(panelsOf(b)))
    expect(outerAreaM2(panelsOf('van'))).toBe(Math.max(...areas))
    expect(outerAreaM2(panelsOf('van'))).toBeLessThan(25)
  })
  it('is ordered by what the eye sees: city car < hatchback < saloon < estate < seven-seater', () => {
    const areas = (['city-car', 'hatchback', 'saloon', 'estate', 'mpv'] as const).map((b) =>
      outerAreaM2(panelsOf(b)),
    )
    expect([...areas].sort((a, b) => a - b)).toEqual(areas)
  })
  it('walks round from the left front wing and ends on the roof', () => {
    expect(panelsOf('saloon').map((p) => p.id)).toEqual([
      'front-left',
      'left-front-door',
      'left-rear-door',
      'left-sill',
      'rear-left',
      'rear-bumper',
      'boot',
      'rear-right',
      'right-sill',
      'right-rear-door',
      'right-front-door',
      'front-right',
      'front-bumper',
      'bonnet',
      'roof',
    ])
  })
  it('has no painted roof on a convertible, a sliding door on the right of a van only', () => {
    expect(panelsAt(panelsOf('convertible'), 'roof')).toEqual([])
    expect(panelsAt(panelsOf('van'), 'left-doors')).toEqual(['left-front-door'])
    expect(panelsAt(panelsOf('van'), 'right-doors')).toEqual([
      'right-rear-door',
      'right-front-door',
    ])
  })
  it('takes bumpers for plastic, but not on a classic', () => {
    const bumper = (style: 'saloon' | 'classic-large') =>
      panelsOf(style).find((p) => p.id === 'front-bumper')?.material
    expect(bumper('saloon')).toBe('plastic')
    expect(bumper('classic-large')).toBe('steel')
  })
  it('scales by size, keeps ids unique and both sides alike but for a sliding door', () => {
    fc.assert(
      fc.property(fc.constantFrom(...bodyStyles), fc.constantFrom(...panelSizes), (style, size) => {
        const panels = panelsOf(style, size)
        expect(new Set(panels.map((p) => p.id)).size).toBe(panels.length)
        expect(panels.every((p) => p.areaM2 > 0)).toBe(true)
        const side = (s: string) => outerAreaM2(panels.filter((p) => p.side === s))
        expect(side('left')).toBeCloseTo(side('right'), 9)
        const scale = size === 'small' ? 0.85 : size === 'large' ? 1.2 : 1
        expect(outerAreaM2(panels)).toBeCloseTo(scale * outerAreaM2(panelsOf(style)), 9)
      }),
    )
  })
})
