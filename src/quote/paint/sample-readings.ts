import { assessCar, type PaintInput } from './assess-car'
import type { CarFacts, PaintSet, PanelFacts } from './types'

/** Invented cars and readings that the tests of this folder share. */
export const modern: CarFacts = { year: 2019, nowYear: 2026, finish: 'clear-coat' }
export const panel = (id: string, facts: Partial<PanelFacts> = {}): PanelFacts => ({
  panel: id,
  substrate: 'steel',
  refinish: 'original',
  ...facts,
})
export const spot = (id: string, mean: number, more: Partial<PaintSet> = {}): PaintSet => ({
  panel: id,
  kind: 'panel',
  values: [mean - 1, mean, mean + 1],
  spot: '1',
  ...more,
})
export const jamb = (mean: number, more: Partial<PaintSet> = {}): PaintSet => ({
  panel: 'jamb',
  kind: 'reference',
  values: [mean - 1, mean, mean + 1],
  ...more,
})
export const one = (readings: readonly PaintSet[], more: Partial<PaintInput> = {}) =>
  assessCar({ car: modern, panels: [panel('a')], readings, ...more })
