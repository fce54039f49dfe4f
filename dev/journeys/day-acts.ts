import type { Page } from 'playwright-core'
import { press } from '../../tests/browser/visit'

export type Typed = Readonly<Record<string, string | readonly string[]>>

export const said = async (page: Page, at: string): Promise<string> =>
  ((await page.locator(at).first().textContent()) ?? '').replace(/\s+/g, ' ')

/** The page must say this there. */
export const must = Object.assign(
  async (page: Page, at: string, what: RegExp): Promise<void> => {
    const text = await said(page, at)
    if (!what.test(text)) throw new Error(`${at} does not say ${what}: ${text.slice(0, 1500)}`)
  },
  {
    not: (text: string, what: RegExp): void => {
      if (what.test(text)) throw new Error(`it still says ${what}: ${text.slice(0, 1500)}`)
    },
  },
)

/** Opens what is folded under these words, if it is. */
export const unfold = async (page: Page, text: string): Promise<void> => {
  const fold = page.locator('details', { has: page.locator('> summary', { hasText: text }) }).last()
  if ((await fold.getAttribute('open')) === null) await fold.locator('> summary').click()
}

/** Opens a part of the sheet that stands folded away. */
export const part = async (page: Page, id: string): Promise<void> => {
  const fold = page.locator(`section#${id} > details`)
  if ((await fold.getAttribute('open')) === null) await fold.locator('> summary').click()
}

/** Fills a form of the sheet, as a thumb would, and keeps it. */
export const keep = async (page: Page, of: string, typed: Typed): Promise<void> => {
  let last = ''
  for (const [name, value] of Object.entries(typed)) {
    const field = page.locator(`[id="f-${of}-${name}"]`)
    if ((await field.count()) === 0) {
      for (const each of [value].flat())
        await page.locator(`form:has([id^="f-${of}-"]) [name="${name}"][value="${each}"]`).check()
      continue
    }
    last = `[id="f-${of}-${name}"]`
    if (await field.evaluate((e) => e.tagName === 'SELECT'))
      await field.selectOption([value].flat()[0] ?? '')
    else await field.fill([value].flat()[0] ?? '')
  }
  await press(page, page.locator(`form:has(${last}) button[type=submit]`).last())
}
