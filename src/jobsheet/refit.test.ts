import { expect, it } from 'vitest'
import { blockersOf, checksOf } from './checks'
import { checksRaised, type Removal, refitHolds } from './refit'

const off = (id: string, more: Partial<Removal> = {}): Removal => ({
  id,
  item: id,
  refitted: false,
  ...more,
})

it('holds the step that puts a wheel on until what goes behind it is back', () => {
  const spacer = off('spacer', { before: 'wheel' })
  const badge = off('badge', { sort: 'trim' })
  expect(refitHolds('wheels-on', [spacer, badge]).map((r) => r.id)).toEqual(['spacer'])
  expect(refitHolds('wheels-on', [{ ...spacer, refitted: true }])).toEqual([])
  expect(refitHolds('wash', [spacer])).toEqual([])
  expect(refitHolds('carpet-refit', [off('clip', { before: 'trim' }), spacer])).toHaveLength(1)
})

it('raises checks by what came off, though no step of the plan asked for them', () => {
  expect(
    checksOf([], {}, [off('front seat', { sort: 'seat' })]).map((c) => [c.id, c.items]),
  ).toEqual([
    ['belts', ['front seat']],
    ['battery', ['front seat']],
  ])
  expect(checksRaised([off('x')])).toEqual([])
  const both = checksOf([{ id: 'wheels-off', duties: ['torque'] }], {}, [
    off('wheel', { sort: 'wheel' }),
    off('spacer', { before: 'wheel' }),
  ])
  expect(both.map((c) => c.id)).toEqual(['torque', 'recheck-distance', 'brakes'])
  expect(both[0]).toMatchObject({ from: ['wheels-off'], items: ['wheel', 'spacer'] })
})

it('lets a car leave without a badge, never without what it rolls, stops or holds people with', () => {
  const blocked = (r: Removal) => blockersOf([], [], [r]).length
  expect(blocked(off('badge', { sort: 'trim' }))).toBe(0)
  expect(blocked(off('mirror cap'))).toBe(0)
  for (const sort of ['wheel', 'seat', 'battery'] as const)
    expect(blocked(off(sort, { sort }))).toBe(1)
  expect(blocked(off('spacer', { before: 'wheel' }))).toBe(1)
  expect(blocked(off('wheel', { sort: 'wheel', refitted: true }))).toBe(0)
})

it('blocks on the named checks alone, and on an extra nobody decided', () => {
  const checks = [
    'torque',
    'brakes',
    'belts',
    'battery',
    'leak',
    'dry',
    'clips',
    'recheck-distance',
  ]
  const raised = checksOf([{ id: 's', duties: checks }], {})
  expect(blockersOf(raised, [], []).map((b) => b.id)).toEqual(checks.slice(0, 6))
  const settled = Object.fromEntries(checks.map((c) => [c, { waived: c === 'dry' }]))
  expect(blockersOf(checksOf([{ id: 's', duties: checks }], settled), [], [])).toEqual([])
  expect(blockersOf([], [{ extra: 'e1', decision: null }], [])).toEqual([
    { kind: 'extra', id: 'e1' },
  ])
})
