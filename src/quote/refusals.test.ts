import { describe, expect, it } from 'vitest'
import { reader } from '../intake/reader'
import { refusals } from './refusals'
import { car, context } from './risks/plain-answers'
import { steps } from './steps'

const ids = (changed: Readonly<Record<string, unknown>>) =>
  refusals.filter((x) => x.when(reader(car(changed)), context()) !== null).map((x) => x.id)

const mould = { dangers: ['growth'], growth: ['mould-hard'], services: ['cabin'] }
const wet = { dangers: ['wet'], services: ['cabin'] }
const old = { year: 1990 }

describe('refusals', () => {
  it.each([
    ['matte-polish', { dangers: ['matte'] }, { dangers: ['matte'], services: ['cabin'] }],
    ['peeling-panels', { dangers: ['peeling'] }, {}],
    [
      'fresh-paint-protection',
      { dangers: ['fresh-paint'], 'fresh-paint-weeks': 12 },
      { dangers: ['fresh-paint'], 'fresh-paint-weeks': 13 },
    ],
    [
      'wet-cabin-cleaning',
      { ...wet, 'wet-source': 'unknown' },
      { ...wet, 'wet-source': 'repaired' },
    ],
    [
      'mould-beyond-limits',
      { ...mould, 'mould-area': 'larger' },
      { ...mould, 'mould-area': 'tray' },
    ],
    ['sewage-cabin', { ...wet, 'wet-source': 'sewage' }, { ...wet, 'wet-source': 'flood' }],
    [
      'lacquer-machine',
      { year: 1958, 'cloth-test': 'colour' },
      { year: 1970, 'cloth-test': 'colour' },
    ],
    ['fixed-price', { body: 'motorcycle' }, { body: 'van' }],
    [
      'lifting-rusty',
      { ...old, services: ['wheels-off'], jacking: 'rusty' },
      { ...old, services: ['wheels-off'], jacking: 'sound' },
    ],
    [
      'cracked-wheel',
      { ...old, services: ['wheels-off'], wheels: 'cracked' },
      { ...old, services: ['wheels-off'], wheels: 'chrome' },
    ],
    [
      'loose-headliner',
      { ...old, services: ['cabin'], headliner: 'loose' },
      { ...old, services: ['cabin'], headliner: 'firm' },
    ],
  ])('turns down %s for its cause and takes it back without', (id, having, lacking) => {
    expect(ids(having)).toContain(id)
    expect(ids(lacking)).not.toContain(id)
  })

  it('refuses nothing on a kept car', () => {
    expect(ids({})).toEqual([])
  })

  it('takes only steps out that the catalogue has', () => {
    const known = new Set(steps.map((s) => s.id))
    for (const { id, steps: refused } of refusals)
      for (const step of refused) expect(known.has(step), `${id}: ${step}`).toBe(true)
  })

  it('leaves the check-in, the look and the hand-over to every refusal', () => {
    for (const { id, steps: refused } of refusals)
      for (const kept of ['check-in', 'look-over', 'hand-over'])
        expect(refused, id).not.toContain(kept)
  })
})
