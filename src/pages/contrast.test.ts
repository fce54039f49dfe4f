import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

/**
 * Contrast as WCAG 2.2 defines it (relative luminance with the 0.04045 threshold of the corrected
 * definition, https://www.w3.org/TR/WCAG22/#dfn-relative-luminance).
 */
const channel = (value: number): number => {
  const c = value / 255
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4
}

const luminance = (hex: string): number => {
  const full = hex.length === 4 ? hex.replace(/[0-9a-f]/gi, (d) => d + d) : hex
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((i) => Number.parseInt(full.slice(i, i + 2), 16))
  return 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b)
}

const contrast = (a: string, b: string): number => {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (high + 0.05) / (low + 0.05)
}

const css = readFileSync(new URL('./docket.css', import.meta.url), 'utf8')

type Tokens = Readonly<Record<string, string>>
const tokensOf = (block: string): Tokens =>
  Object.fromEntries(
    [...block.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{3,8})/gi)].map((m) => [m[1] ?? '', m[2] ?? '']),
  )

/** Bodies of every rule with exactly this selector, in the order of the file: light first, then dark. */
const rules = (selector: string): readonly Tokens[] =>
  [...css.matchAll(/(?:^|\n)\s*([^{}@/]+?)\s*\{([^{}]*)\}/g)]
    .filter((m) => (m[1] ?? '').trim() === selector)
    .map((m) => tokensOf(m[2] ?? ''))
    .filter((t) => Object.keys(t).length > 0)

const [light, dark] = rules(':root')
const [benchLight, benchDark] = rules('.bench')
const schemes: readonly (readonly [string, Tokens, number])[] = [
  ['light', { ...light }, 4.5],
  ['dark', { ...light, ...dark }, 4.5],
  ['bench, light', { ...light, ...benchLight }, 7],
  ['bench, dark', { ...light, ...dark, ...benchLight, ...benchDark }, 7],
]

describe('the contrast formula', () => {
  // Published check values: WebAIM's contrast checker documentation names #767676 (4.54:1) as the
  // lightest grey that passes on white, and #777777 (4.48:1) as the first that does not.
  it.each([
    ['#767676', '#ffffff', 4.54],
    ['#777777', '#ffffff', 4.48],
    ['#000000', '#ffffff', 21],
  ])('%s on %s is %d', (a, b, ratio) => {
    expect(Math.round(contrast(a, b) * 100) / 100).toBe(ratio)
  })
})

describe('the tokens of the stylesheet', () => {
  it('finds both schemes of the sheet and of the bench', () => {
    expect([light, dark, benchLight, benchDark].every((t) => t !== undefined)).toBe(true)
  })
  for (const [name, t, text] of schemes) {
    const on = (front: string, back: string): number =>
      contrast(t[front] ?? '#808080', t[back] ?? '#808080')
    it.each([
      ['ink', 'paper'],
      ['soft', 'paper'],
      ['press', 'paper'],
      ['on-press', 'press'],
    ])(`${name}: %s on %s can be read`, (front, back) => {
      expect(on(front, back)).toBeGreaterThanOrEqual(text)
    })
    // WCAG 2.2, 1.4.11: what shows where a control is needs 3:1.
    it(`${name}: the edge of a control is seen`, () => {
      expect(on('edge', 'paper')).toBeGreaterThanOrEqual(3)
    })
  }
})
