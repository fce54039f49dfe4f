import { expect, it } from 'vitest'
import { quoted, sent, signIn } from './quick'
import { here } from './set-up'
import {
  acknowledgeAll,
  button,
  CONTACT,
  OLD_CAR,
  openByLink,
  press,
  said,
  type Visitor,
} from './visit'

const { studio, visit, leave } = here()

const DESK = { viewport: { width: 1280, height: 900 } } as const

/** Opens the fields of one line and gives its step. */
const openLine = async (v: Visitor, n: number): Promise<string> => {
  const row = v.page.locator('#lines tbody tr').nth(n)
  await row.getByText('Change this line').click()
  const name = await row.locator('input[name^="minutes:"]').getAttribute('name')
  return name?.split(':')[1] ?? ''
}

it('a sign-in link lets one device in, once', async () => {
  const link = await studio().signInLink('owner')
  const owner = await visit(DESK)
  await owner.page.goto(link)
  await owner.page.goto(link)
  await press(owner.page, button(owner, 'Sign in'))
  expect(new URL(owner.page.url()).pathname).toBe('/studio')
  const second = await visit(DESK)
  await second.page.goto(link)
  await press(second.page, button(second, 'Sign in'))
  expect(await second.page.locator('#faults').textContent()).toContain('One thing stops this')
  expect((await second.page.request.get('/studio')).status()).toBe(401)
  await leave(owner, second)
})

it('adjusts with a reason, tries, saves, sends; the customer must read before the yes', async () => {
  const customer = await visit()
  const id = await sent(customer, studio(), OLD_CAR)
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const { page } = owner
  await page.goto('/studio')
  const listed = page.locator(`.dockets li:has(a[href="/studio/d/${id}"])`)
  expect(await listed.textContent()).toContain(CONTACT.name)
  await press(page, listed.getByRole('link').first())
  const before = await page.locator('h1').textContent()
  expect(before).toMatch(/^Offer €[\d,]+\.\d\d/)
  // Every line says on which answers it rests.
  await page
    .locator('#lines tbody tr')
    .first()
    .getByText(/\d+ answers?/)
    .click()
  expect(await page.locator('#lines details[open] li').count()).toBeGreaterThan(0)

  // Without a reason nothing changes; the field is named and what was typed stays.
  const step = await openLine(owner, 1)
  const field = (what: string) => page.locator(`[name="${what}:${step}"]`)
  await field('minutes').fill('125')
  await page.locator('[name=message]').fill('The roof first, then we talk.')
  await press(page, button(owner, 'Try without saving'))
  const fault = page.locator('#faults a')
  expect(await fault.count()).toBe(1)
  await fault.click()
  expect(await field('why').evaluate((e) => e.ownerDocument.activeElement === e)).toBe(true)
  expect(await field('why').getAttribute('aria-invalid')).toBe('true')
  expect(await field('minutes').inputValue()).toBe('125')
  expect(await page.locator('[name=message]').inputValue()).toBe('The roof first, then we talk.')

  // A trial shows other figures and keeps nothing.
  await field('why').fill('More edges than told')
  await press(page, button(owner, 'Try without saving'))
  expect(await page.locator('h1').textContent()).toMatch(/^On trial/)
  expect(await page.locator('#revisions').count()).toBe(0)
  expect(await page.locator('#trial').textContent()).toContain('Offer with tax')
  expect(await field('minutes').inputValue()).toBe('125')
  const trial = (await page.locator('h1').textContent())?.replace('On trial: ', '')
  expect(trial).not.toBe(before?.replace('Offer ', ''))
  await press(page, button(owner, 'Save as revision 1'))
  expect(await page.locator('h1').textContent()).toBe(`Offer ${trial}`)
  expect(await page.locator('#revisions').textContent()).toContain(`Revision 1: ${trial}`)

  // Sending gives the message with the link.
  await press(page, button(owner, 'Send revision 1'))
  const message = await page.locator('[name=paste]').inputValue()
  const link = /http\S+\/l\/\S+/.exec(message)?.[0] ?? ''
  expect(await page.getByRole('link', { name: /Write a mail/ }).getAttribute('href')).toContain(
    encodeURIComponent(link),
  )

  // The customer reads it elsewhere; a yes without having read is refused and loses nothing.
  const reader = await visit()
  await openByLink(reader, link)
  expect(await said(reader, /The roof first/)).toBe('The roof first')
  const offer = await reader.page.locator('h1').textContent()
  expect(offer).toContain(trial ?? 'none')
  await reader.page.locator('form:has([value=accept]) [name=name]').fill('Ines Example')
  const notes = reader.page.locator('input[name="acknowledged[]"]')
  expect(await notes.count()).toBeGreaterThan(0)
  await press(reader.page, button(reader, /^Yes|accept|agree/i).first())
  expect(await reader.page.locator('#faults').textContent()).toMatch(/\w/)
  expect(await reader.page.locator('form:has([value=accept]) [name=name]').inputValue()).toBe(
    'Ines Example',
  )
  // One ticked, one not: the ticked one stays ticked.
  await notes.first().check()
  if ((await notes.count()) > 1) {
    await press(reader.page, button(reader, /^Yes|accept|agree/i).first())
    expect(await notes.first().isChecked()).toBe(true)
    expect(await reader.page.locator('#faults').count()).toBe(1)
  }

  // A question, a reply, and then the yes.
  await reader.page.locator('summary', { hasText: 'ask' }).click()
  await press(reader.page, reader.page.locator('form:has(#f-ask) button'))
  expect(await reader.page.locator('#faults a').getAttribute('href')).toBe('#f-ask')
  await reader.page.locator('#f-ask').fill('Is the roof in it?')
  await press(reader.page, reader.page.locator('form:has(#f-ask) button'))
  await page.goto(`/studio/d/${id}`)
  expect(await page.locator('#reply .said').textContent()).toBe('Is the roof in it?')
  await press(page, button(owner, 'Send the reply'))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-reply')
  await page.locator('#f-reply').fill('It is.')
  await press(page, button(owner, 'Send the reply'))
  expect(await page.locator('#reply').count()).toBe(0)
  await reader.page.goto(`/e/${id}/quote`)
  expect(await said(reader, /It is\./)).toBe('It is.')
  await acknowledgeAll(reader)
  await reader.page.locator('form:has([value=accept]) [name=name]').fill('Ines Example')
  await press(reader.page, reader.page.locator('form:has([value=accept]) button'))
  expect(await reader.page.locator('h1').textContent()).toMatch(/agreed/i)
  expect(await said(reader, /Ines Example/)).toBe('Ines Example')

  // The day: a wrong one is refused, a right one stands on the customer's page.
  await page.goto(`/studio/d/${id}`)
  await press(page, button(owner, 'Fix the day'))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-start')
  await page.locator('[name=start]').fill('2026-10-05')
  await page.locator('[name=startTime]').fill('08:30')
  await press(page, button(owner, 'Fix the day'))
  await reader.page.reload()
  expect(await said(reader, /Mon, 5 October at 08:30/)).toBe('Mon, 5 October at 08:30')
  await leave(customer, owner, reader)
})

it('an old revision cannot be accepted once a new one was sent, and a no is kept', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  await quoted(owner, studio(), id)
  const { page } = customer
  await page.goto(`/e/${id}/quote`)
  await acknowledgeAll(customer)
  await page.locator('form:has([value=accept]) [name=name]').fill('Ines Example')
  // Meanwhile the studio sends another one.
  await owner.page.goto(`/studio/d/${id}`)
  await owner.page.locator('[name=discount]').fill('20')
  await owner.page.locator('[name=whole-why]').fill('Comes back every year')
  await press(owner.page, button(owner, 'Save as revision 2'))
  await press(owner.page, button(owner, 'Send revision 2'))
  await press(page, page.locator('form:has([value=accept]) button'))
  expect(await page.locator('h1').textContent()).toBeTruthy()
  await page.goto(`/e/${id}/quote`)
  expect(await page.locator('form:has([value=accept]) [name=revision]').getAttribute('value')).toBe(
    '2',
  )
  await page.locator('summary', { hasText: /no/i }).last().click()
  await page.locator('#f-decline').fill('Too dear for us')
  await press(page, page.locator('form:has(#f-decline) button'))
  expect(await said(customer, /declined/)).toBe('declined')
  await owner.page.goto(`/studio/d/${id}`)
  expect(await said(owner, /Too dear for us/)).toBe('Too dear for us')
  await leave(customer, owner)
})

it('two at one docket: the later form is told, not taken', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  await owner.page.goto(`/studio/d/${id}`)
  await quoted(owner, studio(), id)
  await owner.page.locator('[name=discount]').fill('20')
  await owner.page.locator('[name=whole-why]').fill('A friend')
  await press(owner.page, button(owner, 'Save as revision 1'))
  expect(await said(owner, /since|meanwhile|changed/i)).toMatch(/since|meanwhile|changed/i)
  await owner.page.goto(`/studio/d/${id}`)
  expect(await owner.page.locator('#revisions li').count()).toBe(1)
  await leave(customer, owner)
})

it('settings are refused with the field named, saved as a revision, and old quotes keep theirs', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  await quoted(owner, studio(), id)
  await customer.page.goto(`/e/${id}/quote`)
  const offer = await customer.page.locator('h1').textContent()
  const { page } = owner
  await page.goto('/studio/settings')
  await page.locator('[name=name]').fill('Hollow Lane Detailing')
  await page.locator('[name=ratePerHour]').fill('seventy')
  await press(page, button(owner, 'Save the settings'))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-ratePerHour')
  expect(await page.locator('[name=ratePerHour]').inputValue()).toBe('seventy')
  expect(await page.locator('[name=name]').inputValue()).toBe('Hollow Lane Detailing')
  await page.locator('[name=ratePerHour]').fill('97.50')
  await press(page, button(owner, 'Save the settings'))
  expect(await page.locator('[name=ratePerHour]').inputValue()).toBe('97.50')
  expect(await page.locator('header').textContent()).toContain('Hollow Lane Detailing')
  await customer.page.reload()
  expect(await customer.page.locator('h1').textContent()).toBe(offer)
  // And a further device, shut out again, is out.
  await page.goto('/studio/devices')
  await page.locator('[name=label]').fill('Bay phone')
  await press(page, button(owner, 'Make the link'))
  const bench = await visit()
  await bench.page.goto(await page.locator('[name=link]').inputValue())
  await press(bench.page, button(bench, 'Sign in'))
  expect((await bench.page.request.get('/studio/settings')).status()).toBe(403)
  await page.goto('/studio/devices')
  await press(page, page.locator('li', { hasText: 'Bay phone' }).getByRole('button'))
  expect((await bench.page.request.get('/studio')).status()).toBe(401)
  await leave(customer, owner, bench)
})

it('a docket opened on the phone is answered by the studio', async () => {
  const owner = await visit(DESK)
  await signIn(owner, studio())
  await owner.page.goto('/studio')
  await press(owner.page, owner.page.getByRole('link', { name: 'Open a docket' }))
  await press(owner.page, button(owner, 'Ask everything, one by one'))
  expect(await owner.page.locator('h1').textContent()).toBe('Is any of this true of your car?')
  await leave(owner)
})
