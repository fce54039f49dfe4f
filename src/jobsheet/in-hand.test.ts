import { describe, expect, it } from 'vitest'
import type { EstimateStep } from '../quote/estimate-types'
import { steps as catalogue } from '../quote/steps'
import { english } from '../words/en'
import { type InHandBench, inHandOf } from './in-hand'

const step = (id: string, more: Partial<EstimateStep> = {}): EstimateStep =>
  ({ id, materials: [], duties: [], ...more }) as unknown as EstimateStep

const bench = (more: Partial<InHandBench> = {}, done: readonly string[] = []) => ({
  wanted: {},
  supply: {},
  ...more,
  done: (id: string) => done.includes(id),
})

const of = (steps: readonly EstimateStep[], more: object = {}) => ({ steps, ...more })

describe('inHandOf', () => {
  it('asks once for what two steps need, and says for which', () => {
    const steps = [
      step('mould-clean', { materials: ['disinfectant'] }),
      step('mould-soft', { materials: ['disinfectant'] }),
    ]
    const [only, ...more] = inHandOf(of(steps), bench(), null)
    expect(more).toEqual([])
    expect(only).toMatchObject({
      item: 'material:disinfectant',
      what: 'product',
      steps: ['mould-clean', 'mould-soft'],
      orderBy: null,
      state: 'wanted',
    })
  })

  // Days to order: our own estimate, counted back from the day by hand.
  it('counts the last day to order back from the day of the work, over a month', () => {
    const steps = [
      step('coating', { materials: ['coating'] }),
      step('touch-up', { materials: ['touch-up-paint'] }),
      step('leak-proof'),
    ]
    const list = inHandOf(of(steps), bench(), '2026-07-03')
    expect(list.map((w) => [w.item, w.what, w.orderBy])).toEqual([
      ['material:coating', 'product', '2026-06-28'],
      ['material:touch-up-paint', 'part', '2026-06-23'],
      ['trade:leak-proof', 'trade', '2026-06-19'],
    ])
  })

  it.each([
    ['have', 'key:locking-nut', 'key'],
    [undefined, 'key:locking-nut', 'key'],
    ['missing', 'part:locking-nut', 'part'],
  ])('wants the locking key by what its owner said: %s', (answer, item, what) => {
    const list = inHandOf(of([step('wheels-off')], { lockingKey: answer }), bench(), null)
    expect(list.map((w) => [w.item, w.what])).toEqual([[item, what]])
  })

  it('wants no locking key where there is none, or the wheels stay on', () => {
    expect(
      inHandOf(of([step('wheels-off')], { lockingKey: 'none-needed' }), bench(), null),
    ).toEqual([])
    expect(inHandOf(of([step('wheels')], { lockingKey: 'have' }), bench(), null)).toEqual([])
  })

  it('names an outside trade as the quote did', () => {
    const trades = { 'own:trimmer': 'Headliner by a trimmer' }
    const [trade] = inHandOf(of([step('wash')], { trades }), bench(), '2026-07-15')
    expect(trade).toMatchObject({
      what: 'trade',
      thing: 'Headliner by a trimmer',
      orderBy: '2026-07-01',
    })
  })

  it('adds what the studio wrote down, and takes its word on a day and on how far it is', () => {
    const wanted = {
      'own:1': { what: 'part' as const, thing: 'Badge pins', line: 'l1' },
      'material:clay': { orderBy: '2026-06-01', line: 'l2' },
    }
    const supply = {
      'own:1': { state: 'on-its-way' as const, expected: '2026-06-20', at: 1 },
    }
    const list = inHandOf(
      of([step('clay', { materials: ['clay'] })]),
      bench({ wanted, supply }),
      '2026-07-03',
    )
    expect(list.map((w) => [w.item, w.thing, w.orderBy, w.state, w.expected, w.line])).toEqual([
      ['material:clay', null, '2026-06-01', 'wanted', null, 'l2'],
      ['own:1', 'Badge pins', '2026-06-23', 'on-its-way', '2026-06-20', 'l1'],
    ])
  })

  it('asks for nothing any more once every step that needs it is done', () => {
    const steps = [step('clay', { materials: ['clay'] }), step('clay-2', { materials: ['clay'] })]
    expect(inHandOf(of(steps), bench({}, ['clay']), null)[0]?.state).toBe('wanted')
    expect(inHandOf(of(steps), bench({}, ['clay', 'clay-2']), null)[0]?.state).toBe('in-hand')
  })

  it('has words for every material and every outside step of the catalogue', () => {
    for (const rule of catalogue) {
      for (const m of rule.materials ?? []) expect(english).toHaveProperty([`material.${m}`])
      if (rule.outside) expect(english).toHaveProperty([`wanted.trade.${rule.id}`])
    }
  })
})
