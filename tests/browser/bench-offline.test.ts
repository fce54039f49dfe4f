import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { get, signIn, toTheBench } from './quick'
import { here } from './set-up'
import { OLD_CAR, press, type Visitor } from './visit'

const { studio, visit, leave } = here()
/** Waits for what the page comes to; a busy machine takes its time. */
const until = <T>(see: () => T) => expect.poll(see, { timeout: 15_000 })
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
  await until(() =>
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
  ).toEqual([true, true])
  await until(() => page.evaluate(SHEETS)).toBe(true)
}
const SHEETS = `new Promise((done) => {
  const open = indexedDB.open('bench')
  open.onsuccess = () => {
    const all = open.result.transaction('sheets').objectStore('sheets').getAllKeys()
    all.onsuccess = () => { open.result.close(); done(all.result.length > 0) }
  }
})`

/** Lines this device holds, as they are sent. */
const QUEUED = `new Promise((done) => {
  const open = indexedDB.open('bench')
  open.onsuccess = () => {
    const all = open.result.transaction('lines').objectStore('lines').getAll()
    all.onsuccess = () => {
      open.result.close()
      done(all.result.map(({ id, kind, body, device, n, at }) => ({ id, kind, body, device, n, at })))
    }
  }
})`

const addReading = async (page: Page, panel: string, values: string): Promise<void> => {
  const part = page.locator('section#reading > details')
  if ((await part.getAttribute('open')) === null) await part.locator('> summary').click()
  await page.locator('#f-panel').selectOption(panel)
  await page.locator('#f-values').fill(values)
  await page.getByRole('button', { name: 'Keep the reading' }).click()
  await until(() => page.locator('#f-values').inputValue()).toBe('')
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
  await until(() => page.locator('#unsent').textContent()).toContain('1 not sent')
  await page.getByRole('button', { name: 'Begin' }).click()
  await until(() => page.locator('#step').textContent()).toContain('Running')
  await until(() => page.locator('#unsent').textContent()).toContain('2 not sent')

  // The page opened anew without a signal stands where it was.
  await page.reload()
  await until(() => page.locator('#unsent').textContent()).toContain('2 not sent')
  expect(await page.locator('#step').textContent()).toContain('Running')
  expect(await row(page, 'roof').locator('td').first().textContent()).toMatch(/^99/)
  expect(await linesOf(customer, id, 'reading').catch(() => 'no rights')).toBe('no rights')

  await online(page)
  await until(() => page.locator('#unsent').textContent()).toBe('')
  const readings = await linesOf(bench, id, 'reading')
  expect(readings.map((l) => l.body.values)).toEqual([[98, 101, 99.5, 100, 97]])
  expect(await linesOf(bench, id, 'began')).toHaveLength(1)
  await leave(bench, customer)
})

it('the server stopped in the middle, the tab killed, the clock put back: all of it arrives once', async () => {
  const { customer, bench, id } = await toBench()
  const context = bench.page.context()
  await studio().stop()
  await addReading(bench.page, 'roof', '98 101 100')
  await bench.page.close()

  // Another tab of the same phone, opened while nothing answers; its clock two hours back.
  const page = await context.newPage()
  await page.addInitScript('const real = Date.now; Date.now = () => real.call(Date) - 7200000')
  await page.goto(`/bench/${id}`)
  await until(() => page.locator('#unsent').textContent()).toContain('1 not sent')
  expect(await row(page, 'roof').locator('td').first().textContent()).toMatch(/^99/)
  await addReading(page, 'bonnet', '120 121')
  await page.getByRole('button', { name: 'Begin' }).click()
  await until(() => page.locator('#unsent').textContent()).toContain('3 not sent')

  await studio().start()
  // Sent beside the page, which does not know: as if its own answer had got lost.
  const lines = await page.evaluate(QUEUED)
  const sent = await page.request.post(`/api/v1/dockets/${id}/lines`, {
    data: { lines },
    headers: { origin: studio().origin },
  })
  const { added, already } = (await sent.json()) as Record<'added' | 'already', readonly string[]>
  expect([sent.status(), added.length + already.length]).toEqual([200, 3])
  await online(page)
  await until(() => page.locator('#unsent').textContent()).toBe('')
  // The clock was put back between the two, so it is the device's own count that orders them.
  const readings = [...(await linesOf({ ...bench, page }, id, 'reading'))].sort(
    (a, b) => (a.n ?? 0) - (b.n ?? 0),
  )
  expect(readings.map((l) => [l.body.panel, l.n])).toEqual([
    ['roof', 1],
    ['bonnet', 2],
  ])
  expect(await linesOf({ ...bench, page }, id, 'began')).toHaveLength(1)
  await until(() => page.evaluate(QUEUED)).toEqual([])
  await page.context().close()
  await leave(customer)
})

it('two devices, each without a signal for a while, come to the same sheet', async () => {
  const { customer, bench, id } = await toBench()
  const second = await visit()
  await signIn(second, studio(), 'bench')
  await second.page.goto(`/bench/${id}`)
  await kept(second.page)
  for (const v of [bench, second]) await v.page.context().setOffline(true)
  await addReading(bench.page, 'roof', '98 101 100')
  await addReading(second.page, 'bonnet', '120 121')
  await addReading(second.page, 'roof', '97 98')
  await bench.page.getByRole('button', { name: 'Begin' }).click()
  await until(() => bench.page.locator('#unsent').textContent()).toContain('2 not sent')
  for (const v of [bench, second, bench]) {
    await online(v.page)
    await until(() => v.page.locator('#unsent').textContent()).toBe('')
  }
  const panels = (v: Visitor) =>
    v.page.locator('#panels tbody tr td:first-of-type').allTextContents()
  await until(async () => (await panels(bench)).filter((t) => /^\d/.test(t)).length).toBe(2)
  await online(second.page)
  await until(() => second.page.locator('#step').textContent()).toContain('Running')
  expect(await panels(second)).toEqual(await panels(bench))
  const readings = await linesOf(bench, id, 'reading')
  expect(readings.map((l) => l.body.values).sort()).toEqual(
    [
      [98, 101, 100],
      [120, 121],
      [97, 98],
    ].sort(),
  )
  await leave(bench, second, customer)
})

it('a link that hears nothing shows the kept sheet after three seconds', async () => {
  const { customer, bench } = await toBench()
  const { page } = bench
  const release = studio().hang()
  const began = performance.now()
  await page.reload()
  const took = performance.now() - began
  expect(await page.locator('h1').count()).toBe(1)
  // Not before the limit, and not as long as a browser waits by itself.
  expect(took).toBeGreaterThan(2_900)
  expect(took).toBeLessThan(12_000)
  release()
  await leave(bench, customer)
})

it('signing out waits for what was not sent, or for a word with the very number', async () => {
  const { customer, bench, id } = await toBench()
  const { page } = bench
  await page.context().setOffline(true)
  await addReading(page, 'roof', '98 101 100')
  await addReading(page, 'bonnet', '120')
  const out = page.locator('form[data-sign-out]')
  await out.getByRole('button', { name: 'Sign out' }).click()
  const note = out.locator('.note')
  await until(() => note.textContent()).toContain('not sent from this device: 2')
  await out.getByRole('button', { name: 'Sign out' }).click()
  await until(() => page.evaluate('document.activeElement.name')).toBe('lose')
  // Even with the word: without a signal the session would not end, and the lines would be gone.
  await note.locator('input').check()
  await out.getByRole('button', { name: 'Sign out' }).click()
  await until(() => out.locator('[data-needs-signal]').isVisible()).toBe(true)
  expect(new URL(page.url()).pathname).toBe(`/bench/${id}`)
  expect(await page.evaluate(QUEUED)).toHaveLength(2)

  await page.context().setOffline(false)
  await out.getByRole('button', { name: 'Sign out' }).click()
  await until(() => new URL(page.url()).pathname).toBe('/studio/sign-in')
  await signIn(bench, studio())
  expect(await linesOf(bench, id, 'reading')).toHaveLength(2)
  // Nothing of the sheet is left on the device.
  expect(await page.evaluate(QUEUED)).toEqual([])
  expect(await page.evaluate(SHEETS)).toBe(false)
  expect(await page.evaluate("caches.has('bench')")).toBe(false)
  await leave(bench, customer)
})

it('without https says once that a sheet needs a signal, and works with one', async () => {
  const { customer, bench, id } = await toBench()
  const v = await visit()
  // What a page from a plain address of the network has not got.
  await v.page.addInitScript(
    "Object.defineProperty(globalThis, 'isSecureContext', { value: false })",
  )
  await signIn(v, studio())
  const notice = v.page.locator('[data-notice="not-kept"]')
  await v.page.goto(`/bench/${id}`)
  expect(await notice.textContent()).toContain('needs a signal')
  expect(await notice.isVisible()).toBe(true)
  await press(v.page, v.page.getByRole('button', { name: 'Begin' }))
  expect(await notice.isVisible()).toBe(false)
  expect(await v.page.locator('#step').textContent()).toContain('Running')
  await leave(v, bench, customer)
})
