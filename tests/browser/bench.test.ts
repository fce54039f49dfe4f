import { expect, it } from 'vitest'
import { picture } from './picture'
import { agreed, answered, post, quoted, sent, signIn, toTheBench } from './quick'
import { here } from './set-up'
import { button, OLD_CAR, press, said, type Visitor } from './visit'

const { studio, visit, leave } = here()

/** Paint to measure and polish, and wheels that come off: both readings and blocking checks. */
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const

const section = (v: Visitor, id: string) => v.page.locator(`section#${id}`)
const row = (v: Visitor, panel: string) =>
  v.page.locator('#panels tbody tr', { has: v.page.locator('th', { hasText: panel }) })

const unfold = async (v: Visitor, text: string): Promise<void> =>
  v.page.locator('summary', { hasText: text }).first().click()

/** Opens a part of the sheet that stands folded away. */
const openPart = async (v: Visitor, id: string): Promise<void> => {
  const part = v.page.locator(`section#${id} > details`)
  if ((await part.getAttribute('open')) === null) await part.locator('> summary').click()
}

const toBench = async (options: { readonly js: boolean }) => {
  const customer = await visit()
  const bench = await visit({ javaScriptEnabled: options.js })
  await signIn(bench, studio())
  const id = await toTheBench(customer, bench, studio(), CAR)
  await bench.page.goto(`/bench/${id}`)
  return { customer, bench, id }
}

it('at 390 px: arrival, steps, readings, findings, what was taken off, an extra, checks, hand-over, record', async () => {
  const { customer, bench, id } = await toBench({ js: false })
  const { page } = bench

  // The car has come.
  await unfold(bench, 'The car has just come')
  await page.locator('#arrival [name=mileage]').fill('many')
  await page.locator('#arrival [name=keys]').fill('2')
  await page.locator('#arrival [name="consents[]"][value=drive]').check()
  await page.locator('#arrival [name=notes]').fill('Dent in the left rear door')
  await page.locator('#arrival [name=name]').fill('Ines Example')
  await press(page, button(bench, 'Write it down'))
  // Refused: named, open again, everything typed and ticked still there.
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-checked-in-mileage')
  expect(await page.locator('#arrival [name=notes]').inputValue()).toContain('Dent')
  expect(await page.locator('#arrival [value=drive]').isChecked()).toBe(true)
  await page.locator('#arrival [name=mileage]').fill('88 120')
  await press(page, button(bench, 'Write it down'))
  expect(await section(bench, 'arrival').count()).toBe(0)
  expect(await section(bench, 'came').textContent()).toContain('Ines Example')

  // The first step: begun, then done with minutes of one's own; the next stands there.
  const first = await page.locator('h1').textContent()
  await press(page, button(bench, 'Begin'))
  expect(await section(bench, 'step').textContent()).toContain('Running')
  await page.locator('#step [name=minutes]').fill('soon')
  await press(page, section(bench, 'step').getByRole('button', { name: 'Done' }))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-minutes')
  await page.locator('#step [name=minutes]').fill('25')
  await press(page, section(bench, 'step').getByRole('button', { name: 'Done' }))
  expect(await page.locator('h1').textContent()).not.toBe(first)
  expect(await page.locator('#steps li').first().textContent()).toContain('Done')
  expect(await section(bench, 'steps').textContent()).toMatch(/25\smin of/)

  // Readings of a panel, a reference beside them; the verdict stands in the table at once.
  const before = await row(bench, 'roof').textContent()
  await openPart(bench, 'reading')
  await page.locator('#f-panel').selectOption('roof')
  await page.locator('#f-values').fill('98 101 x')
  await press(page, button(bench, 'Keep the reading'))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-values')
  expect(await page.locator('#f-values').inputValue()).toBe('98 101 x')
  expect(await page.locator('#f-panel').inputValue()).toBe('roof')
  await page.locator('#f-values').fill('98 101 99,5 100 97')
  await press(page, button(bench, 'Keep the reading'))
  expect(await row(bench, 'roof').textContent()).not.toBe(before)
  expect(await row(bench, 'roof').locator('td').first().textContent()).toMatch(/^99(\.\d)?\s*µm$/)
  expect(await row(bench, 'roof').locator('td').nth(3).textContent()).toMatch(/\w/)

  // A place where the gauge says nothing.
  await openPart(bench, 'reading')
  await unfold(bench, 'Cannot be read')
  await page.locator('#f-unreadable-panel').selectOption('bonnet')
  await page.locator('#f-unreadable-why').fill('Filler under the paint')
  await press(page, page.locator('form:has(#f-unreadable-why) button'))
  expect(await row(bench, 'bonnet').textContent()).toContain('cannot be read')
  expect(await row(bench, 'bonnet').locator('rect').getAttribute('stroke-dasharray')).toBe('2 3')

  // Taken off and put back.
  await unfold(bench, 'Took something off')
  const item = page.locator('#f-removed-item')
  await item.fill('Spacer 5 mm')
  await page.locator('[name=stored]').fill('Box 3')
  await page.locator('#f-removed-before').selectOption('wheel')
  await press(page, page.locator('form:has(#f-removed-item) button'))
  await page.locator('#faults a').click()
  const where = page.locator('#f-removed-place')
  expect(await where.evaluate((e) => e.ownerDocument.activeElement === e)).toBe(true)
  expect(await item.inputValue()).toBe('Spacer 5 mm')
  expect(await page.locator('#f-removed-before').inputValue()).toBe('wheel')
  await where.fill('Front left')
  await press(page, page.locator('form:has(#f-removed-item) button'))
  expect(await section(bench, 'removals').textContent()).toContain('Box 3')

  // Found, with a picture that opens.
  await unfold(bench, 'Found something')
  await page.locator('#f-found-text').fill('Rust under the mat')
  await press(page, button(bench, 'Keep the finding'))
  expect(await page.locator('#f-found-text').inputValue()).toBe('Rust under the mat')
  await page.locator('#f-found-place').fill('Boot floor')
  await page
    .locator('#f-found-file')
    .setInputFiles({ name: 'rust.png', mimeType: 'image/png', buffer: picture() })
  await press(page, button(bench, 'Keep the finding'))
  expect(await section(bench, 'findings').textContent()).toContain('Rust under the mat')
  const src = await page.locator('#findings li a').getAttribute('href')
  const shown = await page.request.get(src ?? '')
  expect([shown.status(), shown.headers()['content-type']]).toEqual([200, 'image/png'])

  // Small extra work lies within what was agreed; a large one waits for the owner's word.
  for (const [text, minutes] of [
    ['Clean the drain', '15'],
    ['Treat the rust', '180'],
  ] as const) {
    await unfold(bench, 'Ask the owner for more work')
    await page.locator('#f-extra').fill(text)
    await page.locator('#f-extra-minutes').fill(minutes)
    await press(page, page.locator('form:has(#f-extra) button'))
  }
  const notes = page.locator('#findings .note')
  expect(await notes.nth(0).textContent()).not.toContain('Do not begin')
  expect(await notes.nth(1).textContent()).toContain('Do not begin')

  // Handing over is blocked by each thing named, and pressing the button changes nothing.
  await page.goto(`/bench/${id}/handover`)
  const blockers = page.locator('.note.stop li')
  const named = (await blockers.allTextContents()).join(' | ')
  expect(named).toContain('Spacer 5 mm')
  expect(named).toContain('has no answer')
  expect(named).toContain('Wheel nuts')
  await press(page, button(bench, 'Hand over'))
  expect((await customer.page.request.get(`/e/${id}/record`)).status()).toBe(409)

  // The customer decides by the link.
  await customer.page.goto(`/e/${id}/quote`)
  const asked = customer.page.locator('.note', { hasText: 'Treat the rust' })
  await press(customer.page, asked.getByRole('button').first())
  expect(await customer.page.locator('.note form').count()).toBe(0)
  await page.goto(`/bench/${id}`)
  expect(await notes.nth(1).textContent()).not.toContain('Do not begin')

  // Back on, and every check done or left out with a reason.
  await press(page, button(bench, 'Back on Spacer 5 mm'))
  const checks = page.locator('#checks li')
  const open = page.locator('#checks li:has(form)')
  const total = await checks.count()
  expect(total).toBeGreaterThan(1)
  await unfold(bench, 'Leave out')
  await press(page, open.first().locator('details button'))
  expect(await page.locator('#faults a').getAttribute('href')).toMatch(/^#f-waive-/)
  await open.first().locator('[name=why]').fill('Not taken off after all')
  await press(page, open.first().locator('details button'))
  for (let n = await open.count(); n > 0; n -= 1) {
    await press(page, open.first().getByRole('button', { name: /^Done/ }))
    expect(await open.count()).toBe(n - 1)
  }
  await page.goto(`/bench/${id}/handover`)
  expect(await blockers.count()).toBe(0)
  await page.locator('[name=paid]').fill('100')
  await page.locator('[name=open]').fill('The seal of the boot\nThe dent')
  await page.locator('[name=name]').fill('Ines Example')
  await press(page, button(bench, 'Hand over'))

  await customer.page.goto(`/e/${id}/record`)
  const record = (await customer.page.locator('main').textContent()) ?? ''
  for (const text of ['Rust under the mat', 'The seal of the boot', 'The dent', '€100.00', '99'])
    expect([text, record.includes(text)]).toEqual([text, true])
  await leave(bench, customer)
})

it('by the digits pad: values apart, the last digit taken back, the box never opens a keyboard', async () => {
  const { customer, bench } = await toBench({ js: true })
  const { page } = bench
  const pad = page.locator('.pad')
  await openPart(bench, 'reading')
  await pad.scrollIntoViewIfNeeded()
  expect(await page.locator('#f-values').getAttribute('inputmode')).toBe('none')
  const key = (name: string) => pad.getByRole('button', { name, exact: true })
  for (const name of ['1', '2', '4', 'Next', '1', '3', '1', '.', '5', '6']) await key(name).click()
  await key('Take the last digit back').click()
  expect(await page.locator('#f-values').inputValue()).toBe('124 131.5')
  await page.locator('#f-panel').selectOption('bonnet')
  await button(bench, 'Keep the reading').click()
  const read = row(bench, 'bonnet').locator('td').first()
  await expect.poll(() => read.textContent(), { timeout: 15_000 }).toContain('µm')
  // A break and going on again, and a step chosen from the list.
  await button(bench, 'Begin').click()
  await button(bench, 'Break off').click()
  await expect
    .poll(() => section(bench, 'step').textContent(), { timeout: 15_000 })
    .toContain('Broken off')
  await button(bench, 'Go on').click()
  await expect
    .poll(() => section(bench, 'step').textContent(), { timeout: 15_000 })
    .toContain('Running')
  const fourth = page.locator('#steps li a').nth(3)
  await fourth.click()
  await expect.poll(() => fourth.getAttribute('aria-current'), { timeout: 15_000 }).toBe('step')
  expect(await page.locator('#steps li a[aria-current]').count()).toBe(1)
  expect(await page.locator('h1').textContent()).toBe(await fourth.textContent())
  await leave(bench, customer)
})

it('at 360×740 the step’s button lies under the thumb, large enough for a glove', async () => {
  const { customer, bench } = await toBench({ js: true })
  const { page } = bench
  await page.setViewportSize({ width: 360, height: 740 })
  for (const name of ['Begin', 'Done']) {
    const main = section(bench, 'step').getByRole('button', { name, exact: true })
    await main.waitFor()
    await page.evaluate('scrollTo(0, 0)')
    const box = await main.boundingBox()
    // The lower 60 % of the screen, and 48 px either way.
    expect(box?.y).toBeGreaterThanOrEqual(740 * 0.4)
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(740)
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(48)
    if (name === 'Begin') await main.click()
  }
  await openPart(bench, 'reading')
  const pad = page.locator('.pad')
  await pad.scrollIntoViewIfNeeded()
  for (const key of await pad.getByRole('button').all()) {
    const box = await key.boundingBox()
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(48)
  }
  await leave(bench, customer)
})

it('a device of the bench opens sheets and nothing of the office', async () => {
  const { customer, bench: owner, id } = await toBench({ js: true })
  const phone = await visit()
  await signIn(phone, studio(), 'bench')
  await phone.page.goto(`/bench/${id}`)
  expect(await phone.page.locator('h1').count()).toBe(1)
  expect((await phone.page.request.get('/studio/settings')).status()).toBe(403)
  await expect(
    post(phone, studio(), `/studio/d/${id}/revisions`, [['act', 'save']]),
  ).rejects.toThrow('403')
  await leave(phone, owner, customer)
})

it('an agreed docket leads to its sheet; an unfinished one has no figures', async () => {
  const customer = await visit()
  const owner = await visit()
  await signIn(owner, studio())
  const open = await answered(customer, studio(), OLD_CAR)
  await owner.page.goto(`/studio/d/${open}`)
  expect(await said(owner, /still answering/)).toBe('still answering')
  const id = await sent(customer, studio(), OLD_CAR)
  await quoted(owner, studio(), id)
  await agreed(customer, studio(), id)
  await owner.page.goto(`/studio/d/${id}`)
  await press(owner.page, owner.page.getByRole('link', { name: 'Job sheet' }))
  expect(new URL(owner.page.url()).pathname).toBe(`/bench/${id}`)
  await leave(customer, owner)
})
