import type { Page } from 'playwright-core'
import { press, type Visitor } from '../../tests/browser/visit'

export type Noted = {
  readonly name: string
  /** What the page led with. */
  readonly first: readonly string[]
  readonly decision: string
  readonly clicks: number
  readonly typed: number
  readonly result: string
}

/** A detailer's hand: counts what is pressed and what is typed, and notes the decision. */
export const handOf = (owner: Visitor, name: string) => {
  const { page } = owner
  let clicks = 0
  let typed = 0
  return {
    page,
    press: async (text: string | RegExp, within: string = 'main'): Promise<void> => {
      clicks += 1
      await press(page, page.locator(within).getByRole('button', { name: text }).first())
    },
    open: async (text: string): Promise<void> => {
      clicks += 1
      await page.locator('summary', { hasText: text }).first().click()
    },
    follow: async (href: string): Promise<void> => {
      clicks += 1
      await press(page, page.locator(`a[href="${href}"]`).first())
    },
    tick: async (field: string): Promise<void> => {
      clicks += 1
      await page.locator(field).check()
    },
    choose: async (field: string, value: string): Promise<void> => {
      clicks += 1
      await page.locator(field).selectOption(value)
    },
    type: async (field: string, text: string): Promise<void> => {
      typed += text.length
      await page.locator(field).fill(text)
    },
    note: async (first: readonly string[], decision: string): Promise<Noted> => ({
      name,
      first,
      decision,
      clicks,
      typed,
      result: await resultOf(page),
    }),
  }
}
export type Hand = ReturnType<typeof handOf>

/** What a docket leads with, before anything is pressed: the lines above the notes. */
export const leadOf = async (page: Page): Promise<readonly string[]> => {
  const text = String(await page.evaluate("document.querySelector('main').innerText"))
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean)
    .slice(1, 7)
    .filter((line) => !/^(Enough|Range|Send it|Change it|Not known)/.test(line))
}

/** Where it stands afterwards, in the page's own words. */
const resultOf = async (page: Page): Promise<string> => {
  const state = ((await page.locator('main section p').first().textContent()) ?? '').split(' · ')
  const lead = (await page.locator('h1').textContent()) ?? ''
  return `${state.at(-1)}; ${lead}`
}
