import { expect, it } from 'vitest'
import { steps as catalogue } from '../quote/steps'
import { english } from '../words/en'
import { ORDER_RULES, orderWarnings } from './order-warnings'

const job = (states: Readonly<Record<string, string>>, checkedIn = true) => ({
  steps: Object.entries(states).map(([id, state]) => ({ id, state })),
  checkedIn,
})
const ids = (step: string, j: ReturnType<typeof job>) => orderWarnings(step, j).map((w) => w.id)

it('asks for the check-in before water, and only before water', () => {
  expect(ids('wash', job({ wash: 'waiting' }, false))).toEqual(['check-in'])
  expect(ids('wash', job({ wash: 'waiting' }))).toEqual([])
  expect(ids('readings', job({ readings: 'waiting' }, false))).toEqual([])
})

it('names the open steps that come first, and falls silent when they are done', () => {
  const open = job({ 'tape-edges': 'waiting', 'mask-trim': 'done', 'polish-light': 'waiting' })
  expect(orderWarnings('polish-light', open)).toEqual([
    { id: 'mask-before-machine', hard: true, first: ['tape-edges'] },
  ])
  expect(ids('polish-light', job({ 'tape-edges': 'done', 'polish-light': 'waiting' }))).toEqual([])
})

it('warns of wet and dusty work beside a fresh coating, and of air in a damp cabin', () => {
  const coated = job({ coating: 'done', 'carpet-extraction': 'waiting', 'cabin-air': 'waiting' })
  expect(ids('carpet-extraction', coated)).toContain('fresh-coating')
  expect(ids('cabin-air', job({ 'cabin-air': 'waiting', 'mould-hepa': 'done' }))).toContain(
    'air-only-dry',
  )
})

it('puts what does harm before what costs work', () => {
  const found = orderWarnings(
    'cabin-wipe',
    job({ 'leak-proof': 'waiting', 'cabin-vacuum': 'waiting', 'cabin-wipe': 'waiting' }),
  )
  expect(found.map((w) => w.hard)).toEqual([true, false])
})

it('speaks of steps that exist, has words for each rule, and never contradicts the catalogue', () => {
  const known = new Map(catalogue.map((s) => [s.id, s]))
  for (const rule of ORDER_RULES) {
    expect(english).toHaveProperty([`order.${rule.id}`])
    for (const id of [...rule.steps, ...(rule.first ?? [])])
      expect([id, known.has(id)]).toEqual([id, true])
    // A step the plan puts after another cannot be asked for before it.
    for (const step of rule.steps)
      for (const first of rule.first ?? [])
        expect([step, first, known.get(first)?.after.includes(step) ?? false]).toEqual([
          step,
          first,
          false,
        ])
  }
})
