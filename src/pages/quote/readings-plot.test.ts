import { expect, it } from 'vitest'
import { plotPlaces } from './readings-plot'

it('draws every reading to one scale, the thinnest at the left end, and nothing that was not read', () => {
  const places = plotPlaces([
    { before: 100, after: 90 },
    { before: 120, after: null },
    { before: 95, after: 95 },
  ])
  expect(places).toEqual([
    { before: 4 + (10 / 30) * 92, after: 4 },
    { before: 96, after: null },
    { before: 4 + (5 / 30) * 92, after: 4 + (5 / 30) * 92 },
  ])
  expect(plotPlaces([{ before: 80, after: 80 }])).toEqual([{ before: 4, after: 4 }])
})
