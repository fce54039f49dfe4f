import type { Bench } from '../docket/bench'
import { shimVerdicts } from '../jobsheet/gauge-check'
import type { ViewMore } from './bench/view-more'

const stamp = { at: 0, by: 'bench' } as const

export const sampleReadings: Bench['readings'] = [
  { ...stamp, id: 'm1', panel: 'bonnet', kind: 'reference', values: [78, 79], probe: 'magnetic' },
  { ...stamp, id: 'm2', panel: 'bonnet', kind: 'panel', values: [96, 101], spot: 'middle' },
]

/** Every part of a job sheet filled in, with text as somebody may type it. */
export const sampleBenchMore = (
  t: { readonly name: string; readonly text: string },
  current: string | null,
): ViewMore & { readonly checkIn: Bench['checkIn'] } => ({
  checkIn:
    current === null
      ? {
          ...stamp,
          id: 'c1',
          mileage: 88_120,
          fuel: t.name,
          keys: 2,
          consents: ['drive'],
          lockingKey: 'with-car',
        }
      : null,
  order: [
    { id: 'check-in', hard: true, first: [] },
    { id: 'dust-before-glass', hard: false, first: ['polish-light'] },
  ],
  holds: [{ id: 'r2', item: t.text, where: t.name }],
  film: { lifts: 2, state: 'ask', here: true },
  gauge: shimVerdicts({ shims: [{ nominal: 102, read: 120 }] }),
  trust: { m1: 'failed', m2: 'unchecked' },
  decided: [{ panel: 'bonnet', sequence: 'gentle', why: t.text, name: t.name }],
  timers: [{ what: t.text, minutes: 10, ends: 600_000, clock: 615 }],
  came: { warnings: t.text, valuables: t.text, notes: t.text, name: t.name },
  crew: { ...stamp, id: 'k1', people: 1, noLifting: true, readyLikely: '2026-06-04T15:00:00Z' },
  waits: ['lettering'],
  late: '2026-06-02',
  night: { ...stamp, id: 'n1', go: 'tell-owner', where: t.name, keys: t.text, shut: false },
  recorded: [{ ...stamp, id: 'b1', what: 'coating-batch', value: t.text }],
  supply: [
    { item: 'own:pins', thing: t.text, state: 'on-its-way', expected: '2026-06-10' },
    { item: 'own:clip', thing: t.text, state: 'in-hand', expected: null },
  ],
})
