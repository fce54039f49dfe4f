import type { Browser, BrowserContextOptions } from 'playwright-core'
import { afterAll, beforeAll, expect } from 'vitest'
import { launchChromium } from '../support/chromium'
import { openStudio, type Studio } from './studio'
import { type Visitor, visit } from './visit'

export type Here = {
  readonly studio: () => Studio
  readonly browser: () => Browser
  readonly visit: (options?: BrowserContextOptions) => Promise<Visitor>
  /** Ends a visit; it must have met no script error, dialog, server fault or foreign request. */
  readonly leave: (...visitors: readonly Visitor[]) => Promise<void>
}

/** One browser and one studio for all tests of a file. */
export const here = (): Here => {
  let studio: Studio | undefined
  let browser: Browser | undefined
  beforeAll(async () => {
    studio = await openStudio()
    browser = await launchChromium()
  })
  afterAll(async () => {
    await browser?.close()
    await studio?.close()
  })
  const need = <T>(thing: T | undefined): T => {
    if (thing === undefined) throw new Error('not set up')
    return thing
  }
  return {
    studio: () => need(studio),
    browser: () => need(browser),
    visit: (options) => visit(need(browser), need(studio), options),
    leave: async (...visitors) => {
      for (const v of visitors) {
        expect(v.trouble).toEqual([])
        await v.page.context().close()
      }
      expect(need(studio).faults).toEqual([])
    },
  }
}
