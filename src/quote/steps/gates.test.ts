import { describe, expect, it } from 'vitest'
import type { Context, PolishLevel } from '../context'
import { panelsOf } from '../panels'
import { answersOf, bench, needOf, plainCar, scopeOf } from './step-bench'

const abrasive = ['polish-cut', 'polish-light', 'polish-finishing', 'polish-hand']
const cabin = { ...plainCar, services: ['cabin'], 'cabin-state': 'tidy' }
const mould = {
  ...cabin,
  dangers: ['growth'],
  growth: ['mould-hard'],
  'sensitive-people': false,
  'mould-area': 'coin',
}
const wet = {
  ...cabin,
  dangers: ['wet'],
  'wet-where': ['front-floor'],
  'wet-source': 'unknown',
  'wet-depth': 'soaked',
}
const measured = (allows: PolishLevel): Context => ({
  ...bench,
  measured: { panels: panelsOf('saloon', 'mid').map((p) => ({ panel: p.id, allows })) },
})
const has = (values: Readonly<Record<string, unknown>>, ...ids: readonly string[]) =>
  scopeOf(answersOf(values)).filter((s) => ids.includes(s))

describe('paint that may not be polished (common practice, no source)', () => {
  const matte = { ...plainCar, dangers: ['matte'], wish: 'show' }
  it('keeps every abrasive, clay, wax and the test spot off matte', () => {
    expect(has(matte, ...abrasive, 'glaze-hand', 'clay', 'wax', 'coating', 'test-spot')).toEqual([])
    expect(has(matte, 'wash', 'decontamination', 'matte-protection')).toHaveLength(3)
  })

  it('works on lacquer by hand only, with no clay and no fallout remover', () => {
    const lacquer = {
      ...plainCar,
      year: 1958,
      'cloth-test': 'colour',
      finish: 'solid',
      wish: 'show',
    }
    expect(has(lacquer, ...abrasive, 'clay', 'decontamination', 'coating')).toEqual([])
    expect(has(lacquer, 'glaze-hand', 'wax')).toEqual(['glaze-hand', 'wax'])
  })

  it('keeps abrasives off metallic single stage', () => {
    const metallic = { ...plainCar, year: 1978, 'cloth-test': 'colour', finish: 'metallic' }
    expect(has(metallic, ...abrasive, 'coating')).toEqual([])
    expect(has(metallic, 'glaze-hand', 'wax')).toHaveLength(2)
  })

  it('waxes solid single stage after one light step, never coats it', () => {
    const solid = { ...plainCar, year: 1988, 'cloth-test': 'colour', finish: 'solid' }
    expect(has(solid, 'polish-light', 'wax', 'coating')).toEqual(['polish-light', 'wax'])
  })

  it('leaves peeling panels out, wherever they are', () => {
    const peel = { ...plainCar, dangers: ['peeling'], 'peel-where': ['roof', 'wings'] }
    const places = needOf('polish-light', answersOf(peel))?.places ?? []
    expect(places).toContain('bonnet')
    for (const p of ['roof', 'front-left', 'rear-right']) expect(places).not.toContain(p)
  })

  it('leaves fresh panels alone and seals nothing while they cure', () => {
    const fresh = {
      ...plainCar,
      'paint-history': 'part',
      'cloth-test': 'clean',
      dangers: ['fresh-paint'],
      'respray-panels': ['bonnet', 'left-doors'],
      'fresh-paint-weeks': 6,
    }
    const places = needOf('polish-light', answersOf(fresh))?.places ?? []
    expect(places).toContain('roof')
    for (const p of ['bonnet', 'left-front-door']) expect(places).not.toContain(p)
    expect(has(fresh, 'coating', 'wax')).toEqual([])
    expect(has({ ...fresh, 'fresh-paint-weeks': 12 }, 'coating')).toEqual([])
    expect(has({ ...fresh, 'fresh-paint-weeks': 13 }, 'coating')).toEqual(['coating'])
    expect(has({ ...fresh, 'respray-panels': [] }, ...abrasive)).toEqual([])
  })
})

describe('one light step until somebody has measured', () => {
  const show = { ...plainCar, wish: 'show' }
  it('offers a cut as a chance only, never without a gauge or over burnt edges', () => {
    const chance = needOf('polish-cut', answersOf(show))?.chance ?? 1
    expect(chance).toBeGreaterThan(0)
    expect(chance).toBeLessThan(1)
    expect(needOf('polish-cut', answersOf({ ...show, defects: ['burn-through'] }))).toBeNull()
    const blind = { ...bench, settings: { ...bench.settings, kit: ['machine-polisher'] as const } }
    expect(needOf('polish-cut', answersOf(show), blind)).toBeNull()
    expect(needOf('polish-light', answersOf(show), blind)).not.toBeNull()
    expect(needOf('polish-cut', answersOf(plainCar))).toBeNull()
  })

  it.each<[PolishLevel, string | null]>([
    ['none', null],
    ['hand', 'polish-hand'],
    ['finishing', 'polish-finishing'],
    ['light', 'polish-light'],
    ['two-step', 'polish-cut'],
  ])('lets each panel go as deep as its readings allow: %s', (allows, deepest) => {
    const c = measured(allows)
    for (const id of abrasive) {
      const on = needOf(id, answersOf(show), c)?.places?.includes('bonnet') ?? false
      const expected = id === deepest || (allows === 'two-step' && id === 'polish-light')
      expect(on, id).toBe(expected)
    }
  })

  it('never polishes deeper than wished, whatever is allowed', () => {
    const c = measured('two-step')
    expect(needOf('polish-cut', answersOf(plainCar), c)).toBeNull()
    expect(needOf('polish-cut', answersOf(show), c)?.chance).toBeUndefined()
  })
})

describe('film on glass alone', () => {
  it('comes off glass and asks nothing of the paint', () => {
    const glass = {
      ...plainCar,
      services: ['glass'],
      dangers: ['film'],
      'film-kind': ['clear-film'],
      'film-where': ['glass'],
      'film-age': 12,
    }
    const film = ['film-test-corner', 'film-top', 'adhesive', 'second-wash', 'film-glass']
    expect(has(glass, ...film)).toEqual(['film-glass'])
    const both = { ...glass, services: ['glass', 'stickers'], 'film-where': ['glass', 'bonnet'] }
    expect(has(both, ...film)).toHaveLength(5)
  })
})

describe('water, growth and animals', () => {
  it('keeps compressed air out of a wet, mouldy, fouled or animal-visited cabin', () => {
    expect(has(cabin, 'cabin-air')).toEqual(['cabin-air'])
    expect(has(wet, 'cabin-air')).toEqual([])
    expect(has(mould, 'cabin-air')).toEqual([])
    for (const mark of ['urine', 'vomit', 'rubbish'])
      expect(
        has({ ...cabin, 'cabin-state': 'family', 'cabin-marks': [mark] }, 'cabin-air'),
      ).toEqual([])
  })

  it('tests and covers an open leak, waits for proof, then dries', () => {
    const open = ['water-test', 'drains', 'leak-cover', 'leak-proof', 'lift-carpet', 'drying-start']
    expect(has(wet, ...open)).toEqual(
      expect.arrayContaining(['water-test', 'leak-cover', 'leak-proof', 'drying-start']),
    )
    const held = { ...wet, 'wet-source': 'repaired', 'dry-check': true }
    expect(has(held, 'leak-cover', 'leak-proof')).toEqual([])
    // A repair from before this water did not hold: the leak is open again.
    expect(has({ ...held, 'dry-check': false }, 'leak-cover', 'leak-proof')).toHaveLength(2)
    expect(has({ ...wet, 'wet-depth': 'surface' }, 'lift-carpet')).toEqual([])
  })

  it.each([
    ['coin', ['mould-hard'], false, true],
    ['hand', ['mould-hard'], false, true],
    ['tray', ['mould-hard'], false, true],
    ['larger', ['mould-hard'], false, false],
    ['coin', ['mould-headliner'], false, false],
    ['coin', ['mould-under-carpet'], false, false],
    ['coin', ['mould-hard'], true, false],
  ])('mould %s on %s, weak health %s: in-house %s', (area, kinds, weak, ours) => {
    const answers = { ...mould, 'mould-area': area, growth: kinds, 'sensitive-people': weak }
    expect(has(answers, 'mould-hepa').length).toBe(ours ? 1 : 0)
    // Past the limits nothing in the cabin is cleaned or priced.
    expect(has(answers, 'cabin-vacuum', 'glass-inside').length).toBe(ours ? 2 : 0)
  })

  it('disinfects hard surfaces only', () => {
    expect(has(mould, 'mould-disinfect')).toHaveLength(1)
    expect(has({ ...mould, growth: ['mould-textile'] }, 'mould-disinfect')).toEqual([])
  })

  it('soaks before it wipes after animals, and looks at the wiring', () => {
    const nest = { ...cabin, dangers: ['growth'], growth: ['nest'] }
    expect(has(nest, 'rodent-air', 'rodent-soak', 'rodent-wipe', 'wiring-look')).toHaveLength(4)
  })
})

describe('limits of what is offered', () => {
  it.each(['boat', 'motorhome', 'motorcycle'])('looks at a %s before any hours', (body) => {
    expect(scopeOf(answersOf({ ...plainCar, body }))).toEqual([
      'check-in',
      'look-over',
      'test-area',
      'hourly-scope',
      'clean-down',
      'hand-over',
    ])
  })

  it('does not lift a car on rusty points', () => {
    const old = { ...plainCar, year: 1995, services: ['wheels-off', 'underside'], jacking: 'rusty' }
    expect(has(old, 'wheels-off', 'wheels-on', 'underside')).toEqual([])
    expect(has({ ...old, jacking: 'sound' }, 'wheels-off', 'wheels-on', 'underside')).toHaveLength(
      3,
    )
  })

  it('cleans dry at a fixed time where the budget stops short of a wet clean', () => {
    const family = {
      ...cabin,
      'cabin-state': 'family',
      'cabin-marks': ['smoke'],
      leather: ['cloth-only'],
    }
    const wetSteps = ['seats-textile', 'carpet-extraction', 'headliner', 'odour-source', 'ozone']
    expect(has({ ...family, headliner: 'firm', budget: 25_000 }, ...wetSteps)).toEqual([])
    expect(has({ ...family, headliner: 'firm', budget: 90_000 }, ...wetSteps)).toHaveLength(5)
  })
})
