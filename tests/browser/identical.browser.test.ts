import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bundleEstimate } from '../engine/bundle-estimate'
import { estimatesOf, mathBits } from '../engine/estimate-module'
import { identicalInputs } from '../engine/identical-inputs'
import { MATH_NAMES } from '../engine/math-arguments'
import { launchChromium } from '../support/chromium'

let browser: Browser
let page: Page
let close: () => Promise<void>

beforeAll(async () => {
  const script = await bundleEstimate()
  const server = createServer((request, response) => {
    const isScript = request.url === '/estimate.js'
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html')
    response.end(isScript ? script : '<!doctype html><title>Estimate</title>')
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  close = () => new Promise((done) => server.close(() => done()))
  browser = await launchChromium()
  page = await browser.newPage()
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`)
})
afterAll(async () => {
  await browser.close()
  await close()
})

/** As text: the test runner would rewrite an import inside a function. */
const inBrowser = (name: 'estimatesOf' | 'mathBits', given: unknown): Promise<unknown> =>
  page.evaluate(`import('/estimate.js').then((m) => m.${name}(${JSON.stringify(given)}))`)

describe('the same bytes in Node and in Chromium', () => {
  it('of thirty estimates over the corpus, with and without readings and adjustments', async () => {
    const inputs = JSON.parse(JSON.stringify(identicalInputs())) as ReturnType<
      typeof identicalInputs
    >
    const here = estimatesOf(inputs)
    expect(here).toHaveLength(30)
    expect(new Set(here).size).toBeGreaterThan(25)
    expect(await inBrowser('estimatesOf', inputs)).toEqual(here)
  })

  it.each(MATH_NAMES)('of Math.%s over 8000 arguments', async (name) => {
    const there = await inBrowser('mathBits', name)
    expect(there).toHaveLength(8000 * 16)
    expect(there === mathBits(name)).toBe(true)
  })
})
