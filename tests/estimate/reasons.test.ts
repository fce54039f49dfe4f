import { describe, expect, it } from 'vitest'
import { reader } from '../../src/intake/reader'
import { estimate } from '../../src/quote/estimate'
import { limits } from '../../src/quote/paint'
import { type Reason, STUDIO } from '../../src/quote/reason'
import type { Need } from '../../src/quote/rules'
import { steps } from '../../src/quote/steps'
import { minutes } from '../../src/quote/steps/minutes'
import { answerSets } from '../corpus/answer-sets'
import { english, estimateOf, settings, TODAY } from './studio'

const every = <T>(list: readonly T[], n: number): readonly T[] => list.filter((_, i) => i % n === 0)
const READINGS = [
  { panel: 'bonnet', kind: 'panel', values: [66, 64, 68, 65, 67], probe: 'dual' },
  { panel: 'roof', kind: 'panel', values: [262, 271, 255, 268, 280], probe: 'dual' },
] as const

describe('the rows behind a step', () => {
  it('come to its minutes, whatever was answered', () => {
    const c = { settings, nowYear: 2026 }
    const seen = new Set<string>()
    for (const answers of every(answerSets(), 2)) {
      const r = reader(answers)
      for (const rule of steps) {
        const need: Need | null = rule.need(r, c)
        if (need === null) continue
        seen.add(rule.id)
        expect(need.rows?.length ?? 0, rule.id).toBeGreaterThan(0)
        const rows = need.rows ?? []
        const sum = (at: 0 | 1 | 2) => rows.reduce((s, row) => s + row.per[at] * row.times, 0)
        const { optimistic, mode, pessimistic } = need.minutes
        for (const [found, said] of [
          [optimistic, sum(0)],
          [mode, sum(1)],
          [pessimistic, sum(2)],
        ] as const) {
          // Each row is rounded to whole minutes, and none is less than one.
          expect(Math.abs(found - said), `${rule.id} ${JSON.stringify(rows)}`).toBeLessThanOrEqual(
            0.5 * rows.length + 0.5,
          )
        }
        for (const { row, per, source } of rows) {
          const known = minutes[row as keyof typeof minutes]
          if (known !== undefined) expect([per, source]).toEqual([known.per, known.source])
          else expect(row).toMatch(/^film-top\./)
        }
      }
    }
    expect(seen.size).toBeGreaterThan(60)
  })
})

describe('every figure of an estimate', () => {
  it('answers with the facts, the rule, the row and the source, in data and in words', () => {
    for (const answers of every(answerSets(), 7)) {
      const e = estimateOf(answers, READINGS)
      const chains: readonly (readonly [string, readonly Reason[] | undefined])[] = [
        ...e.steps.map((s) => [`step ${s.id}`, s.reasons] as const),
        ...e.couldAdd.map((s) => [`could add ${s.id}`, s.reasons] as const),
        ...e.riskNotes.map((s) => [`note ${s.id}`, s.reasons] as const),
        ['offer', e.offer.reasons],
        ['plan', e.plan.reasons],
        ['paint', e.paint.reasons],
      ]
      for (const [what, reasons] of chains) {
        expect(reasons?.length ?? 0, what).toBeGreaterThan(0)
        for (const r of reasons ?? []) {
          expect(r.source, what).toMatch(/\S/)
          expect(english.say(`reason.${r.rule}`, r.row ?? {}), what).toMatch(/^[^{}]+$/)
        }
      }
      for (const p of e.paint.panels)
        for (const { row, source } of p.reasons ?? []) {
          const limit = limits[row?.row as keyof typeof limits]
          expect([row?.value, source]).toEqual([limit.value, limit.source])
        }
      expect(e.offer.because).toEqual([...new Set(e.steps.flatMap((s) => s.because))].sort())
    }
  })
  it('names the limit a thin and a thick panel met', () => {
    const e = estimateOf({ body: { value: 'saloon' }, size: { value: 'mid' } }, READINGS)
    const rowsOf = (panel: string) =>
      e.paint.panels.find((p) => p.panel === panel)?.reasons?.map((r) => r.row?.row)
    expect(rowsOf('bonnet')).toContain('thinStop')
    expect(rowsOf('roof')).toContain('thickOffSills')
  })
})

describe('a limit of the studio’s own', () => {
  it('is the one that is named, as the studio’s', () => {
    const answers = answerSets()[0] ?? {}
    const at = (own?: number) =>
      estimate({
        answers,
        settings: { ...settings, ...(own === undefined ? {} : { limits: { thinStop: own } }) },
        today: TODAY,
        readings: [{ panel: 'bonnet', kind: 'panel', values: [62, 61, 63, 62, 62], probe: 'dual' }],
        adjustments: [],
      })
        .paint.panels.find((p) => p.panel === 'bonnet')
        ?.reasons?.find((r) => r.row?.row === 'thinStop')
    expect(at()).toMatchObject({ row: { value: limits.thinStop.value } })
    const own = limits.thinStop.hardMax
    expect(at(own)).toEqual({ rule: 'limit', row: { row: 'thinStop', value: own }, source: STUDIO })
  })
})
