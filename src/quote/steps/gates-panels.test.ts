import { describe, expect, it } from 'vitest'
import { reader } from '../../intake/reader'
import type { Context, KitPiece } from '../context'
import { answersOf, bench, needOf, plainCar, rule, scopeOf } from './step-bench'

const cabin = { ...plainCar, services: ['cabin'] }
const has = (values: Readonly<Record<string, unknown>>, ...ids: readonly string[]) =>
  scopeOf(answersOf(values)).filter((s) => ids.includes(s))

describe('what a gauge cannot read (ASTM D7091: magnetic on steel, eddy current on other metals)', () => {
  const show = { ...plainCar, wish: 'show', 'paint-history': 'part', 'cloth-test': 'clean' }
  const of = (material: string) => ({ ...show, 'panel-material': material })
  const gauged = ['references', 'readings', 'cold-reading', 'polish-cut']
  const blind = (kit: readonly KitPiece[]): Context => ({
    ...bench,
    settings: { ...bench.settings, kit },
  })
  it('takes no reading of composite and cuts nothing there', () => {
    expect(has(of('plastic-composite'), ...gauged)).toEqual([])
    expect(has(of('plastic-composite'), 'polish-light', 'test-spot')).toHaveLength(2)
    expect(has(of('steel'), ...gauged)).toHaveLength(4)
  })
  it('reads aluminium only with the gauge for both metals', () => {
    const scope = (kit: readonly KitPiece[]) =>
      scopeOf(answersOf(of('aluminium')), blind(['machine-polisher', ...kit])).filter((s) =>
        gauged.includes(s),
      )
    expect(scope(['gauge-ferrous'])).toEqual([])
    expect(scope(['gauge-dual'])).toHaveLength(4)
  })
  it('cuts no single panel that was painted again, and the others as before', () => {
    const places = (car: object) => needOf('polish-cut', answersOf({ ...car }))?.places ?? []
    const some = { ...show, 'respray-panels': ['roof', 'left-doors'] }
    for (const p of ['roof', 'left-front-door', 'left-rear-door'])
      expect(places(some), p).not.toContain(p)
    expect(places(some)).toContain('bonnet')
    expect(places(show)).toContain('roof')
    expect(needOf('polish-light', answersOf(some))?.places).toContain('roof')
  })
  it('refines nothing on top of one set where edges are through', () => {
    const black = { ...plainCar, colour: 'black' }
    expect(has(black, 'polish-finishing')).toHaveLength(1)
    expect(has({ ...black, defects: ['burn-through'] }, 'polish-finishing')).toEqual([])
  })
})

describe('film on a bumper', () => {
  const film = {
    ...plainCar,
    dangers: ['film'],
    'film-kind': ['clear-film'],
    'film-where': ['bonnet', 'front-bumper'],
    'film-age': 2,
    'film-state': ['pliable'],
  }
  it('is a line of its own that comes last, and not without a signed yes', () => {
    expect(needOf('film-top', answersOf(film))?.places).toEqual(['bonnet'])
    expect(needOf('film-bumper', answersOf(film))?.places).toEqual(['front-bumper'])
    expect(rule('film-bumper').after).toContain('film-top')
    expect(rule('film-bumper').cautions(reader({}))).toContain('film-consent')
  })
  it.each([
    ['factory', 0],
    ['bumper', 1],
    ['repaint', 1],
  ])('over %s paint opens %d test corners first', (over, n) => {
    expect(has({ ...film, 'film-over': over }, 'film-test-corner')).toHaveLength(n)
  })
})

describe('a car with film that comes for something else', () => {
  const steps = ['film-test-corner', 'film-top', 'film-bumper', 'lettering', 'stickers', 'adhesive']
  const car = {
    ...plainCar,
    dangers: ['film'],
    'film-kind': ['clear-film', 'lettering', 'stickers'],
    'film-where': ['bonnet', 'front-bumper', 'glass'],
    'film-age': 12,
    'cabin-state': 'tidy',
  }
  it.each([
    [['cabin'], []],
    [['wheels-off', 'engine-bay'], []],
    [
      ['cabin', 'stickers'],
      [...steps, 'film-glass', 'second-wash'],
    ],
    [['protect'], [...steps, 'film-glass', 'second-wash']],
    [['glass'], ['film-glass']],
  ])('for %j has this taken off: %j', (services, expected) => {
    expect([...has({ ...car, services }, ...steps, 'film-glass', 'second-wash')].sort()).toEqual(
      [...expected].sort(),
    )
  })
})

describe('seats of suede', () => {
  it('are brushed dry, never cleaned wet', () => {
    const suede = { ...cabin, 'cabin-state': 'neglected', leather: ['suede'] }
    expect(has(suede, 'suede-brush', 'leather-clean', 'seats-textile')).toEqual(['suede-brush'])
  })
})

describe('glass alone', () => {
  it('is cleaned on a washed car', () => {
    const glass = { ...plainCar, services: ['glass'] }
    expect(has(glass, 'rinse', 'wash', 'dry', 'glass-outside', 'wheels-arches')).toHaveLength(4)
  })
})
