import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import type { Studio } from '../../tests/browser/studio'
import { type Visitor, visit } from '../../tests/browser/visit'
import { leanPng } from './lean-png'

export const DESK = { width: 1280, height: 900 } as const

/** One journey on stage: who acts, and where its pictures go. */
export type Stage = {
  readonly studio: Studio
  readonly browser: Browser
  readonly customer: Visitor
  readonly owner: Visitor
  readonly bench: Visitor
  /** Screen-high pieces of the page, from the part named by `at` or the top. */
  readonly shoot: (page: Page, name: string, how?: Shot) => Promise<void>
  /** The page as it is printed, on A4; absent where no pictures are kept. */
  readonly paper?: (page: Page, name: string) => Promise<void>
}

export type Shot = {
  /** Selector of the part the picture begins with. */
  readonly at?: string
  /** Pixels kept of what stands above that part. */
  readonly above?: number
  /** Pictures at most, one below the other. */
  readonly pieces?: number
}

export type Scheme = { readonly script?: boolean; readonly dark?: boolean }

export const setStage = async (
  studio: Studio,
  browser: Browser,
  folder: string,
  looks: { readonly customer?: Scheme; readonly owner?: Scheme; readonly bench?: Scheme },
): Promise<Stage> => {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const as = (s: Scheme = {}) => ({
    javaScriptEnabled: s.script !== false,
    colorScheme: s.dark ? ('dark' as const) : ('light' as const),
    reducedMotion: 'reduce' as const,
    locale: 'en-IE',
    timezoneId: 'Europe/Dublin',
  })
  let n = 0
  const shoot: Stage['shoot'] = async (page, name, { at, above = 0, pieces = 1 } = {}) => {
    const size = page.viewportSize()
    if (size === null) throw new Error('a page without a size')
    const begin = at
      ? await page
          .locator(at)
          .first()
          .evaluate((e) => e.getBoundingClientRect().top + window.scrollY)
      : 0
    const top = Math.max(0, begin - above)
    const whole = await page.evaluate(() => document.documentElement.scrollHeight)
    n += 1
    for (let piece = 0; piece < pieces; piece += 1) {
      const y = top + piece * size.height
      if (piece > 0 && y >= whole - 200) break
      const number = String(n).padStart(2, '0')
      const png = await page.screenshot({
        fullPage: true,
        animations: 'disabled',
        caret: 'hide',
        clip: { x: 0, y, width: size.width, height: Math.min(size.height, whole - y) },
      })
      const file = `${number}-${name}${piece === 0 ? '' : `-${piece + 1}`}.png`
      writeFileSync(join(folder, file), leanPng(png))
    }
  }
  return {
    studio,
    browser,
    shoot,
    paper: async (page, name) => {
      writeFileSync(join(folder, `${name}.pdf`), await page.pdf({ format: 'A4' }))
    },
    customer: await visit(browser, studio, as(looks.customer)),
    owner: await visit(browser, studio, { ...as(looks.owner), viewport: DESK }),
    bench: await visit(browser, studio, as(looks.bench)),
  }
}

/** Ends a journey; it must have met no script error, dialog, server fault or foreign request. */
export const clearStage = async (stage: Stage): Promise<void> => {
  const all = [stage.customer, stage.owner, stage.bench]
  const trouble = all.flatMap((v) => v.trouble)
  for (const v of all) await v.page.context().close()
  if (trouble.length > 0 || stage.studio.faults.length > 0)
    throw new Error([...trouble, ...stage.studio.faults.map(String)].join('\n'))
}
