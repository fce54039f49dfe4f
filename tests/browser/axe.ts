import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** WCAG 2.0 to 2.2, levels A and AA, as axe-core tags its rules, and its own good practice. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

type Axe = {
  readonly run: (options: unknown) => Promise<{
    readonly violations: readonly {
      readonly id: string
      readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[]
    }[]
    readonly passes: readonly unknown[]
  }>
}

/** All rules, or those that depend on the colours alone. */
const SCOPES = {
  all: { runOnly: { type: 'tag', values: TAGS }, resultTypes: ['violations'] },
  colours: { runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block'] } },
} as const

/** What axe-core finds wrong on the page as it stands: rule and element. Throws if it checked nothing. */
export const axeFaults = async (
  page: Page,
  rules: keyof typeof SCOPES = 'all',
): Promise<readonly string[]> => {
  // As text, the browser takes it from its debugger, whatever the page's policy says.
  if (!(await page.evaluate<boolean>('Boolean(self.axe)'))) await page.evaluate(source)
  const found = await page.evaluate(async (options) => {
    const ran = await (globalThis as unknown as { axe: Axe }).axe.run(options)
    return {
      passed: ran.passes.length,
      faults: ran.violations.flatMap((v) =>
        v.nodes.map((n) => `${v.id}: ${n.html.slice(0, 160)} ${n.failureSummary ?? ''}`),
      ),
    }
  }, SCOPES[rules])
  if (found.passed < (rules === 'all' ? 10 : 1))
    throw new Error(`axe checked only ${found.passed} rules`)
  return found.faults
}

/** Elements wider than the page, when it would have to be scrolled sideways. */
export const sideways = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const d = document as unknown as Dom
    const width = d.documentElement.clientWidth
    if (d.documentElement.scrollWidth <= width) return []
    return [...d.querySelectorAll('body *')]
      .filter((e) => e.getBoundingClientRect().right > width + 0.5)
      .map((e) => e.outerHTML.slice(0, 120))
      .slice(0, 5)
  })

type Box = {
  readonly right: number
  readonly width: number
  readonly height: number
}
type El = {
  readonly outerHTML: string
  readonly tagName: string
  readonly textContent: string | null
  readonly getBoundingClientRect: () => Box
  readonly closest: (css: string) => El | null
  readonly matches: (css: string) => boolean
  readonly checkVisibility: () => boolean
}
type Dom = {
  readonly documentElement: { readonly clientWidth: number; readonly scrollWidth: number }
  readonly querySelectorAll: (css: string) => Iterable<El>
}
declare const document: unknown

/**
 * Controls smaller than `least` CSS px either way. A link inside a sentence is excepted (WCAG 2.2,
 * 2.5.8 "inline"), and what is not on the screen.
 */
export const small = (page: Page, css: string, least: number): Promise<readonly string[]> =>
  page.evaluate(
    ([selector, px]) => {
      const d = document as unknown as Dom
      const area = (e: El): Box => (e.closest('label.tick') ?? e).getBoundingClientRect()
      const inline = (e: El): boolean =>
        e.tagName === 'A' &&
        (e.closest('p, li')?.textContent ?? '').trim() !== e.textContent?.trim()
      return [...d.querySelectorAll(selector as string)]
        .filter((e) => e.checkVisibility() && !e.closest('.aside, .skip, .unseen'))
        .filter((e) => !e.matches('.skip') && !inline(e))
        .filter((e) => area(e).width > 0 && (area(e).width < px || area(e).height < px))
        .map(
          (e) =>
            `${Math.round(area(e).width)}×${Math.round(area(e).height)} ${e.outerHTML.slice(0, 100)}`,
        )
    },
    [css, least] as const,
  )

export const CONTROLS = 'a[href], button, input:not([type=hidden]), select, textarea, summary'
