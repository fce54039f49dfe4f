import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { get, signIn, toTheBench } from './quick'
import { here } from './set-up'
import { OLD_CAR, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const

const row = (page: Page, panel: string) =>
  page.locator('#panels tbody tr', { has: page.locator('th', { hasText: panel }) })

/** Lines of the docket as the studio has them, by kind. */
const linesOf = async (v: Visitor, id: string, kind: string) => {
  const { lines } = JSON.parse(await get(v, studio(), `/api/v1/dockets/${id}/lines?after=0`)) as {
    lines: {
      id: string
      kind: string
      body: Record<string, unknown>
      device?: string
      n?: number
    }[]
  }
  return lines.filter((l) => l.kind === kind)
}

/** The sheet is kept: the worker runs, and the page's own code has brought what it needs. */
const kept = async (page: Page): Promise<void> => {
  await page.evaluate(async () => {
    type Nav = { serviceWorker: { ready: Promise<unknown> } }
    await (globalThis as unknown as { navigator: Nav }).navigator.serviceWorker.ready
  })
  const path = new URL(page.url()).pathname
  await expect
    .poll(() =>
      page.evaluate(async (own) => {
        const g = globalThis as unknown as {
          caches: {
            open: (
              n: string,
            ) => Promise<{ match: (u: string) => Promise<unknown>; keys: () => Promise<unknown[]> }>
          }
          indexedDB: { databases: () => Promise<unknown[]> }
        }
        const cache = await g.caches.open('bench')
        return [(await cache.match(own)) !== undefined, (await cache.keys()).length >= 3]
      }, path),
    )
    .toEqual([true, true])
  await expect.poll(() => page.evaluate(SHEETS)).toBe(true)
}
const SHEETS = `new Promise((done) => {
  const open = indexedDB.open('bench')
  open.onsuccess = () => {
    const all = open.result.transaction('sheets').objectStore('sheets').getAllKeys()
    all.onsuccess = () => { open.result.close(); done(all.result.length > 0) }
  }
})`

const addReading = async (page: Page, panel: string, values: string): Promise<void> => {
  const part = page.locator('section#reading > details')
  if ((await part.getAttribute('open')) === null) await part.locator('> summary').click()
  await page.locator('#f-panel').selectOption(panel)
  await page.locator('#f-values').fill(values)
  await page.getByRole('button', { name: 'Keep the reading' }).click()
  await expect.poll(() => page.locator('#f-values').inputValue()).toBe('')
}

/** The browser under test does not tell a page that was opened without a signal when there is one again. */
const online = async (page: Page): Promise<void> => {
  await page.context().setOffline(false)
  await page.evaluate("dispatchEvent(new Event('online'))")
}

const toBench = async (): Promise<{ customer: Visitor; bench: Visitor; id: string }> => {
  const customer = await visit()
  const bench = await visit()
  await signIn(bench, studio())
  const id = await toTheBench(customer, bench, studio(), CAR)
  await bench.page.goto(`/bench/${id}`)
  await kept(bench.page)
  return { customer, bench, id }
}

it('a sheet once opened works without a signal, and what was written then arrives once', async () => {
  const { customer, bench, id } = await toBench()
  const { page } = bench
  const context = page.context()
  await context.setOffline(true)

  // A reading's verdict needs no network.
  const before = await row(page, 'roof').textContent()
  await addReading(page, 'roof', '98 101 99,5 100 97')
  expect(await row(page, 'roof').textContent()).not.toBe(before)
  expect(await row(page, 'roof').locator('td').first().textContent()).toMatch(/^99(\.\d)?\s*µm$/)
  await expect.poll(() => page.locator('#unsent').textContent()).toContain('1 not sent')
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect.poll(() => page.locator('#step').textContent()).toContain('Running')
  await expect.poll(() => page.locator('#unsent').textContent()).toContain('2 not sent')

  // The page opened anew without a signal stands where it was.
  await page.reload()
  await expect.poll(() => page.locator('#unsent').textContent()).toContain('2 not sent')
  expect(await page.locator('#step').textContent()).toContain('Running')
  expect(await row(page, 'roof').locator('td').first().textContent()).toMatch(/^99/)
  expect(await linesOf(customer, id, 'reading').catch(() => 'no rights')).toBe('no rights')

  await online(page)
  await expect.poll(() => page.locator('#unsent').textContent()).toBe('')
  const readings = await linesOf(bench, id, 'reading')
  expect(readings.map((l) => l.body.values)).toEqual([[98, 101, 99.5, 100, 97]])
  expect(await linesOf(bench, id, 'began')).toHaveLength(1)
  await leave(bench, customer)
})
