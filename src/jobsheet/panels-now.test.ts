import { expect, it } from 'vitest'
import type { PaintCase } from '../quote/paint-of'
import { mayRun, type PaintBench, panelsNow } from './panels-now'

const paint: PaintCase = {
  input: {
    car: { year: 2018, nowYear: 2026, finish: 'clear-coat' },
    panels: [{ panel: 'bonnet', substrate: 'steel', refinish: 'original' }],
    wish: 'improve',
  },
  because: ['year'],
}

const bench = (more: Partial<PaintBench> = {}): PaintBench => ({
  readings: [
    { panel: 'bonnet', kind: 'reference', values: [114, 115, 116], at: 1_000 },
    { panel: 'bonnet', kind: 'panel', values: [121, 120, 122, 119, 121], at: 2_000 },
  ],
  unreadable: {},
  polished: [],
  gaugeChecks: [],
  ...more,
})

const now = (b: PaintBench) => panelsNow(paint, b)[0]
const cut = { panel: 'bonnet', sequence: 'mild-cut', word: false }
const light = { ...cut, sequence: 'light' }

it('shows the reference, what this job took off, and less left after each set', () => {
  const before = now(bench())
  expect(before?.reference).toBe(115)
  expect(before?.removed).toEqual({ um: 0, measured: null, told: false })
  const after = now(
    bench({ polished: [{ panel: 'bonnet', sequence: 'light', sets: 1, at: 3_000 }] }),
  )
  expect(after?.removed?.um).toBeGreaterThan(0)
  expect(after?.light).toBeLessThan(before?.light ?? 0)
})

it('rests nothing strong on a gauge that missed its shims', () => {
  const missed = bench({ gaugeChecks: [{ at: 500, shims: [{ nominal: 100, read: 125 }] }] })
  expect(now(missed)?.strong).toBe(0)
  expect(now(missed)?.why.map((w) => w.key)).toContain('paint.why.gauge-out-of-band')
  const passed = bench({ gaugeChecks: [{ at: 500, shims: [{ nominal: 100, read: 100 }] }] })
  expect(now(passed)?.why.map((w) => w.key)).not.toContain('paint.why.gauge-out-of-band')
})

it('lets no decision pass what nothing can allow', () => {
  expect(mayRun(paint, bench(), undefined, light)).toEqual({ allowed: true, by: 'allowance' })
  // Sanding never fits the cap, whoever decides.
  for (const word of [false, true])
    expect(mayRun(paint, bench(), undefined, { ...cut, sequence: 'sand', word })).toEqual({
      allowed: false,
      needs: 'nothing-helps',
    })
  for (const asked of [
    { ...light, panel: 'nowhere' },
    { ...light, sequence: 'unheard-of' },
  ])
    expect(mayRun(paint, bench(), undefined, asked).allowed).toBe(false)
  expect(mayRun(paint, bench({ unreadable: { bonnet: 'filler' } }), undefined, light).allowed).toBe(
    false,
  )
})

it('asks for the owner’s word beyond the allowance, and takes it', () => {
  const thin = bench({
    readings: [
      { panel: 'bonnet', kind: 'reference', values: [70, 70, 70], at: 1_000 },
      { panel: 'bonnet', kind: 'panel', values: [95, 95, 96, 95, 94], at: 2_000 },
    ],
  })
  expect(mayRun(paint, thin, undefined, { ...light, sequence: 'gentle' })).toEqual({
    allowed: false,
    needs: 'decision',
  })
  expect(
    mayRun(paint, thin, undefined, { panel: 'bonnet', sequence: 'gentle', word: true }),
  ).toEqual({ allowed: true, by: 'decision' })
})
