import { expect, it } from 'vitest'
import { grey } from '../support/picture'
import { quoted, sent, signIn } from './quick'
import { here } from './set-up'
import { button, OLD_CAR, press, type Visitor } from './visit'

const { studio, visit, leave } = here()

const DESK = { viewport: { width: 1280, height: 900 } } as const
const PLAIN = { ...DESK, javaScriptEnabled: false } as const

/** Opens everything that is folded away, without a script of the page's own. */
const unfold = async ({ page }: Visitor): Promise<void> => {
  for (const fold of (await page.locator('details:not([open]) > summary').all()).reverse())
    await fold.click()
}

it('settings are tried on the latest estimates, and change nothing that was sent', async () => {
  const customer = await visit()
  const owner = await visit(PLAIN)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  await quoted(owner, studio(), id)
  await customer.page.goto(`/e/${id}/quote`)
  const before = await customer.page.locator('main').textContent()
  const { page } = owner
  await page.goto('/studio/settings')
  await page.locator('[name=terms]').fill('No water on Sundays.')
  await page.locator('[name=ratePerHour]').fill('120')
  await page.locator('[name=travelPerKm]').fill('0.80')
  await press(page, button(owner, 'Try on the latest 20'))
  const cells = await page.locator('#preview tbody tr').first().locator('td').allTextContents()
  expect(cells[0]).toMatch(/^€[\d,]+\.\d\d$/)
  expect(cells[1]).not.toBe(cells[0])
  expect(await page.locator('[name=ratePerHour]').inputValue()).toBe('120')
  // Only tried: somebody else still reads the old rate.
  await page.goto('/studio/settings')
  expect(await page.locator('[name=ratePerHour]').inputValue()).toBe('60.00')
  await page.locator('[name=terms]').fill('No water on Sundays.')
  await page.locator('[name=ratePerHour]').fill('120')
  await page.locator('[name=taxMillionths]').fill('7')
  await page.locator('[name=currency]').fill('USD')
  await press(page, button(owner, 'Save the settings'))
  await customer.page.reload()
  expect(await customer.page.locator('main').textContent()).toBe(before)
  await page.goto('/studio/settings')
  await page.locator('[name=currency]').fill('EUR')
  await press(page, button(owner, 'Save the settings'))
  await leave(customer, owner)
})

it('speed, thresholds, sentences, own work, questions and a picture are the studio’s', async () => {
  const customer = await visit()
  const owner = await visit(PLAIN)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  const { page } = owner
  await page.goto(`/studio/d/${id}`)
  const offer = await page.locator('h1').textContent()
  await page.goto('/studio/settings/work')
  await unfold(owner)
  await page.locator('[name="limit:floorClear"]').fill('20')
  await press(page, button(owner, 'Save the settings'))
  expect(await page.locator('#faults').textContent()).toContain('nobody goes past that')
  await unfold(owner)
  await page.locator('[name="limit:floorClear"]').fill('40')
  await page.locator('[name="pace:wash"]').fill('200')
  await page.locator('[name="off:clay"]').check()
  await page.locator('[name="word:message.quote"]').fill('Have a look: {link}')
  await page.locator('[name=ownSteps]').fill('Scent tree; 5; 4.50')
  await page.locator('[name=ownQuestions]').fill('Where may we park it?')
  await page.locator('[name=team]').fill('Robin; bench')
  await press(page, button(owner, 'Try on the latest 20'))
  expect(await page.locator('#preview tbody tr').count()).toBeGreaterThan(0)
  await press(page, button(owner, 'Save the settings'))
  expect(await page.locator('#faults').count()).toBe(0)
  await page.locator('[name=file]').setInputFiles({
    name: 'mark.png',
    mimeType: 'image/png',
    buffer: Buffer.from(grey(16)),
  })
  await press(page, button(owner, 'Use this picture'))
  expect(await page.locator('header img').getAttribute('src')).toMatch(/^data:image\/png/)

  await page.goto(`/studio/d/${id}`)
  expect(await page.locator('[name="minutes:clay"]').count()).toBe(0)
  const now = await page.locator('h1').textContent()
  expect(now).not.toBe(offer)
  // An own question stands on the docket; its answer changes no figure.
  await page.getByLabel('Where may we park it?').fill('In the yard')
  await press(page, button(owner, 'Keep the answers'))
  expect(await page.getByLabel('Where may we park it?').inputValue()).toBe('In the yard')
  expect(await page.locator('h1').textContent()).toBe(now)
  // Own work is added by its name; the message is said the studio's way.
  await page.getByText('Add a line').click()
  await page.locator('[name=own-work]').selectOption('Scent tree')
  await page.locator('[name=add-why]').fill('Asked for')
  await press(page, button(owner, 'Save and send revision 1'))
  expect(await page.locator('#lines').textContent()).toContain('Scent tree')
  expect(await page.locator('[name=paste]').inputValue()).toMatch(/^Have a look: http\S+$/)
  // A device for somebody who works here gets their name and rights.
  await page.goto('/studio/devices')
  await page.locator('[name=person]').selectOption('Robin')
  await press(page, button(owner, 'Make the link'))
  const other = await visit(DESK)
  await other.page.goto(await page.locator('[name=link]').inputValue())
  await press(other.page, button(other, 'Sign in'))
  expect((await other.page.request.get('/studio/settings')).status()).toBe(403)
  await page.goto('/studio/devices')
  expect(await page.locator('.lines li', { hasText: 'Robin' }).count()).toBe(1)
  await leave(customer, owner, other)
})
