import { describe, expect, it } from 'vitest'
import { anyAnswer } from '../../../tests/corpus/levels'
import { draws } from '../../../tests/corpus/random'
import { walk } from '../../../tests/corpus/walk'
import { script } from '../../intake/script'
import { worlds } from '../../intake/worlds'
import { stepCautionWords } from '../../words/en/cautions'
import { eventWords } from '../../words/en/events'
import { cautionWords } from '../../words/en/risks'
import { stepWords } from '../../words/en/steps'
import { KIT } from '../context'
import { events } from '../events'
import { withAncestors } from './ancestors'
import { steps } from './index'
import { step } from './step'
import { answersOf, bench, plainCar } from './step-bench'

const draw = draws(41)
const sets = [
  ...Array.from({ length: 500 }, () => walk(script, (q) => anyAnswer(q, draw))),
  answersOf({ ...plainCar, wish: 'show', defects: ['chips'] }),
]
const seen = steps.map((s) => ({
  rule: s,
  runs: sets.map((answers) => worlds(answers, (r) => s.need(r, bench))),
}))
const needs = seen.flatMap(({ rule, runs }) =>
  runs.flatMap((run) => run.worlds.flatMap((w) => (w.result ? [{ rule, need: w.result }] : []))),
)

describe('the catalogue of steps', () => {
  it('has every id once and stands in working order', () => {
    expect(new Set(steps.map((s) => s.id)).size).toBe(steps.length)
    expect(steps.map((s) => s.order)).toEqual(steps.map((s) => s.order).toSorted((a, b) => a - b))
  })

  it('names known steps only, none after itself, each later than all before it', () => {
    const order = new Map(steps.map((s) => [s.id, s.order]))
    for (const s of steps)
      for (const a of s.after) {
        expect(order.has(a), `${s.id} after ${a}`).toBe(true)
        expect(order.get(a), `${a} before ${s.id}`).toBeLessThan(s.order)
      }
  })

  it('refuses a circle and an unknown step', () => {
    const bare = (id: string, after: readonly string[]) =>
      step({ id, after, track: 'body', order: 1, source: '', need: () => null })
    expect(() => withAncestors([bare('a', ['b']), bare('b', ['a'])])).toThrow('circle')
    expect(() => withAncestors([bare('a', ['zzz'])])).toThrow('zzz')
  })

  it('keeps "first this, then that" when the step in between is out of scope', () => {
    const bare = (id: string, order: number, after: readonly string[]) =>
      step({ id, after, track: 'body', order, source: '', need: () => null })
    const three = withAncestors([bare('c', 3, ['b']), bare('b', 2, ['a']), bare('a', 1, [])])
    expect(three.find((s) => s.id === 'c')?.after).toEqual(['a', 'b'])
  })

  it('has words for every step, event, caution, mask, material and duty', () => {
    for (const s of steps) {
      expect(stepWords, s.id).toHaveProperty([`step.${s.id}`])
      expect(stepWords, s.id).toHaveProperty([`step.${s.id}.do`])
      for (const m of s.masks ?? []) expect(stepWords).toHaveProperty([`mask.${m}`])
      for (const m of s.materials ?? []) expect(stepWords).toHaveProperty([`material.${m}`])
      for (const d of s.duties ?? []) expect(stepWords).toHaveProperty([`duty.${d}`])
    }
    for (const e of events) expect(eventWords).toHaveProperty([`event.${e.id}`])
    const used = new Set(
      steps.flatMap((s) =>
        sets.flatMap((a) => worlds(a, (r) => s.cautions(r)).worlds.flatMap((w) => w.result)),
      ),
    )
    const known = { ...stepCautionWords, ...cautionWords }
    for (const id of used) expect(known, id).toHaveProperty([`caution.${id}`])
    expect(used.size).toBeGreaterThan(30)
  })

  it('lets every safety caution defer to a label, a maker, a code, local rules or a trade', () => {
    for (const [id, text] of Object.entries(stepCautionWords))
      expect(text, id).toMatch(/label|maker|code|local|licensed|handbook|outside work/i)
  })

  it('uses kit the studio can own and says where its minutes come from', () => {
    for (const s of steps) {
      for (const k of s.kit) expect(KIT).toContain(k)
      expect(['common practice, no source', 'own estimate']).toContain(s.source)
    }
    for (const e of events) expect(e.source).toBe('own estimate')
  })

  it('has every figure in order: 0 < optimistic ≤ likely ≤ pessimistic, chance in (0, 1]', () => {
    expect(needs.length).toBeGreaterThan(2_000)
    for (const { rule, need } of needs) {
      const { optimistic, mode, pessimistic } = need.minutes
      expect(optimistic, rule.id).toBeGreaterThan(0)
      expect(mode, rule.id).toBeGreaterThanOrEqual(optimistic)
      expect(pessimistic, rule.id).toBeGreaterThan(mode)
      expect(need.quantity.amount, rule.id).toBeGreaterThan(0)
      expect(need.chance ?? 1, rule.id).toBeGreaterThan(0)
      expect(need.chance ?? 1, rule.id).toBeLessThanOrEqual(1)
    }
  })

  it('fires each step in some answers and not in others, but for the four every car gets', () => {
    const always = ['check-in', 'look-over', 'clean-down', 'hand-over']
    for (const { rule, runs } of seen) {
      const fired = runs.filter((run) => run.worlds.some((w) => w.result)).length
      if (always.includes(rule.id)) expect(fired, rule.id).toBe(sets.length)
      // Hand finishing is a level only readings can ask for.
      else if (rule.id === 'polish-hand') expect(fired).toBe(0)
      else {
        expect(fired, rule.id).toBeGreaterThan(0)
        expect(fired, rule.id).toBeLessThan(sets.length)
      }
    }
  })

  it('caps what is offered by time between its likely and its pessimistic minutes and a half hour', () => {
    let caps = 0
    for (const s of steps)
      for (const a of sets.slice(0, 80))
        for (const w of worlds(a, (r) => ({ n: s.need(r, bench), t: s.byTime?.(r, bench) }))
          .worlds) {
          const { n, t } = w.result
          if (!n || !t) continue
          caps += 1
          expect(t.capMinutes, s.id).toBeGreaterThanOrEqual(n.minutes.mode)
          expect(t.capMinutes, s.id).toBeLessThanOrEqual(n.minutes.pessimistic + 30)
        }
    expect(caps).toBeGreaterThan(20)
  })

  it('has events that may happen and are never sure', () => {
    for (const e of events) {
      const chances = sets.flatMap((a) =>
        worlds(a, (r) => e.need(r, bench)).worlds.flatMap((w) => (w.result ? [w.result] : [])),
      )
      expect(chances.length, e.id).toBeGreaterThan(0)
      for (const { chance, minutes, money } of chances) {
        expect(chance, e.id).toBeGreaterThan(0)
        expect(chance, e.id).toBeLessThan(1)
        expect(minutes.mode, e.id).toBeGreaterThan(minutes.optimistic)
        expect(minutes.pessimistic, e.id).toBeGreaterThan(minutes.mode)
        if (money) expect(money.mode).toBeGreaterThan(money.optimistic)
      }
    }
  })
})
