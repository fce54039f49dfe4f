import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { here } from './set-up'
import { answer, begin, OLD_CAR, openQuestion, type Visitor } from './visit'

const { browser, studio, visit, leave } = here()

/** Bytes as they come over the line, heads and bodies, counted by the browser itself. */
const counting = async (page: Page) => {
  const cdp = await page.context().newCDPSession(page)
  const sum = { bytes: 0, answers: 0 }
  await cdp.send('Network.enable')
  cdp.on('Network.loadingFinished', (e) => {
    sum.bytes += e.encodedDataLength
    sum.answers += 1
  })
  return { sum, cdp }
}

/** Reported bytes arrive a moment after the page: waits until every request that began has ended. */
const settled = async (v: Visitor): Promise<void> => v.page.waitForLoadState('networkidle')

it('the first page with all it loads stays within 30 kB, and each later question is small', async () => {
  const v = await visit()
  const { sum } = await counting(v.page)
  await v.page.goto('/')
  await settled(v)
  expect(sum.answers).toBeGreaterThanOrEqual(2)
  expect(sum.bytes).toBeGreaterThan(1_000)
  expect(sum.bytes).toBeLessThanOrEqual(30_000)
  await begin(v)
  await settled(v)
  expect(sum.bytes).toBeLessThanOrEqual(40_000)
  // What the browser takes is what the server packed.
  const packed = await v.page.request.get('/')
  expect(packed.headers()['content-encoding']).toBe('gzip')
  await leave(v)
})

it('twenty-five answers with scripts stay within 150 kB in all', async () => {
  const v = await visit()
  const { sum } = await counting(v.page)
  await v.page.goto('/')
  await begin(v)
  let answers = 0
  for (; answers < 25; answers += 1) {
    const question = await openQuestion(v.page)
    if (question === null) break
    await answer(v, question, OLD_CAR)
  }
  await settled(v)
  expect(answers).toBe(25)
  expect(sum.answers).toBeGreaterThan(25)
  console.log(`${answers} answers: ${sum.bytes} bytes in ${sum.answers} answers of the server`)
  expect(sum.bytes).toBeLessThanOrEqual(150_000)
  await leave(v)
})

it('says how long the first page and a question take at 1.6 Mbit/s and 150 ms', async () => {
  const v = await visit()
  const { cdp } = await counting(v.page)
  await cdp.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: 150,
    downloadThroughput: 1_600_000 / 8,
    uploadThroughput: 750_000 / 8,
  })
  await v.page.goto('/')
  const times = await v.page.evaluate(() => {
    const [nav] = (
      globalThis as unknown as {
        performance: { getEntriesByType: (t: string) => { domContentLoadedEventEnd: number }[] }
      }
    ).performance.getEntriesByType('navigation')
    return nav?.domContentLoadedEventEnd ?? 0
  })
  // A time is told, not judged: it depends on the machine.
  console.log(`first page usable after ${Math.round(times)} ms`)
  expect(times).toBeGreaterThan(0)
  expect(browser().isConnected() && studio().faults.length === 0).toBe(true)
  await leave(v)
})
