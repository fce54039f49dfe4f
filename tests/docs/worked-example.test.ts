import { describe, expect, it } from 'vitest'
import { sumOf, taxOn } from '../../src/kernel/money'
import { grossRange, offerNet, outwardRange, shareLines } from '../../src/quote/price'
import { moments, pertMean, pertVariance, spread, type ThreePoint } from '../../src/quote/spread'
import { docPages } from './pages-of-docs'

const page = docPages().find((p) => p.path === 'docs/handbook/numbers.md')?.text ?? ''

/** Rows of the page's tables whose last cells are numbers: first cell → the others. */
const rows = new Map(
  [...page.matchAll(/^\| ([^|]+) \|((?: [\d.]+ \|)+)$/gm)].map(([, name = '', rest = '']) => [
    name,
    rest
      .split('|')
      .map((cell) => cell.trim())
      .filter((cell) => cell !== ''),
  ]),
)

const cell = (start: string): string => {
  const found = [...rows].filter(([name]) => name.startsWith(start))
  if (found.length !== 1 || found[0]?.[1].length !== 1) throw new Error(`no one row "${start}"`)
  return found[0][1][0] ?? ''
}

const step = (name: string): { minutes: ThreePoint; chance: number } => {
  const [optimistic, mode, pessimistic, chance] = (rows.get(name) ?? []).map(Number)
  if (chance === undefined) throw new Error(`no step "${name}"`)
  return { minutes: { optimistic: optimistic!, mode: mode!, pessimistic: pessimistic! }, chance }
}

const NONE: ThreePoint = { optimistic: 0, mode: 0, pessimistic: 0 }
const RATE = 6400

describe('the example of the handbook', () => {
  const all = ['wash', 'light polish, bonnet and two wings', 'an extra pass is needed'].map(step)
  const input = {
    items: all.map(({ minutes, chance }, i) => ({
      id: String(i),
      ratePerHour: RATE,
      cases: [{ when: [], chance, minutes, money: NONE }],
    })),
    unknowns: [],
    carSd: 0.16,
    fixedMoney: 0,
    minimumMoney: 0,
  }
  const [wash, polish, pass] = all as [(typeof all)[0], (typeof all)[0], (typeof all)[0]]
  const found = spread(input)
  const net = offerNet({ mean: found.price.mean, quantile: found.priceQuantile }, 0.72)

  it('has the means and variances of each step', () => {
    expect(cell('wash, mean')).toBe(pertMean(wash.minutes).toFixed(2))
    expect(cell('wash, variance')).toBe(pertVariance(wash.minutes).toFixed(2))
    expect(cell('polish, mean')).toBe(pertMean(polish.minutes).toFixed(2))
    expect(cell('polish, variance')).toBe(pertVariance(polish.minutes).toFixed(2))
    expect(cell('extra pass, mean')).toBe(pertMean(pass.minutes).toFixed(2))
    expect(cell('extra pass, variance')).toBe(pertVariance(pass.minutes).toFixed(2))
  })

  it('comes together as the page says', () => {
    const { labour } = moments(input)
    expect(cell('minutes, mean')).toBe(labour.mean.toFixed(2))
    expect(cell('variance with it')).toBe(labour.variance.toFixed(2))
    expect(cell('standard deviation')).toBe(Math.sqrt(labour.variance).toFixed(2))
    const without = moments({ ...input, carSd: 0 }).labour.variance
    expect(cell('variance without')).toBe(without.toFixed(2))
    expect(cell('factor')).toBe(Math.exp(0.16 * 0.16).toFixed(4))
  })

  it('has the range and the price of the program', () => {
    expect(cell('low (')).toBe(found.labour.p10.toFixed(0))
    expect(cell('likely (')).toBe(found.labour.p50.toFixed(0))
    expect(cell('high (')).toBe(found.labour.p90.toFixed(0))
    const money = (minor: number): string => (minor / 100).toFixed(2)
    expect(cell('price, mean')).toBe(money(found.price.mean))
    expect(cell('offer')).toBe(money(net))
    const shared = shareLines(
      net,
      [wash, polish].map((s, i) => ({
        id: String(i),
        expected: (pertMean(s.minutes) * RATE) / 60,
      })),
    ).map((l) => l.amount)
    expect(shared.map(money)).toEqual([cell('of it wash'), cell('of it polish')])
    expect(sumOf(shared)).toBe(net)
    expect(cell('tax on it')).toBe(money(taxOn(shared, 200_000, 'half-up', 'total')))
    const { p10: low, p50: likely, p90: high } = found.price
    const shown = outwardRange(grossRange({ low, likely, high }, 200_000), 1000)
    expect(cell('range shown with tax, low')).toBe(money(shown.low))
    expect(cell('range shown with tax, high')).toBe(money(shown.high))
  })
})
