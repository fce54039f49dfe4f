import { expect, it } from 'vitest'
import { look, told } from './look'
import { agreed, quoted, sent, signIn } from './quick'
import { here } from './set-up'
import { button, OLD_CAR, press, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const
const DESK = { viewport: { width: 1280, height: 900 } } as const
/** Long: every page is looked at in many ways. */
const PATIENCE = 240_000

const agreedCar = async (customer: Visitor, owner: Visitor): Promise<string> => {
  const id = await sent(customer, studio(), CAR)
  await quoted(owner, studio(), id)
  await agreed(customer, studio(), id)
  return id
}

const dateIt = async (owner: Visitor, id: string, day: string): Promise<void> => {
  await owner.page.goto(`/studio/d/${id}`)
  await owner.page.locator('#moves [name=start]').fill(day)
  await press(owner.page, button(owner, 'Fix the day'))
}

it.each([
  ['with JavaScript', true],
  ['without JavaScript', false],
])('dates two cars beside each other, %s', async (_how, javaScriptEnabled) => {
  const customer = await visit()
  const owner = await visit({ ...DESK, javaScriptEnabled })
  const { page } = owner
  await signIn(owner, studio())
  // Each round has a month of its own in the one studio of this file.
  const day = javaScriptEnabled ? '2026-10-05' : '2026-11-02'
  const first = await agreedCar(customer, owner)
  const second = await agreedCar(customer, owner)
  await dateIt(owner, first, day)
  expect(await page.locator('#against').count()).toBe(0)

  await dateIt(owner, second, day)
  const against = page.locator('#against')
  expect(await against.textContent()).toMatch(
    /Other cars stand against .*The job was not dated yet/,
  )
  expect(await against.locator('li').count()).toBeGreaterThan(0)
  // What was asked for stays in the form, and the free day is one press away.
  expect(await page.locator('#moves [name=start]').inputValue()).toBe(day)
  await press(page, against.getByRole('button').first())
  expect(await page.locator('#against').count()).toBe(0)

  await page.goto('/studio/days')
  const text = (await page.locator('main').textContent()) ?? ''
  expect(text).toContain('comes')
  expect(await page.locator(`a[href="/studio/d/${first}"]`).count()).toBeGreaterThan(0)
  expect(await page.locator(`a[href="/studio/d/${second}"]`).count()).toBeGreaterThan(0)
  expect(await page.locator('#late').count()).toBe(0)
  await leave(owner, customer)
})

it('moves the car behind a late one with one press, and has its owner still to be told', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  const { page } = owner
  await signIn(owner, studio())
  const first = await agreedCar(customer, owner)
  const second = await agreedCar(customer, owner)
  await dateIt(owner, first, '2027-01-11')
  await dateIt(owner, second, '2027-01-11')
  await press(page, page.locator('#against').getByRole('button').first())
  const was = studio().clock.now
  try {
    studio().clock.now = Date.UTC(2027, 0, 12, 12)
    await signIn(owner, studio())
    await page.goto('/studio/days')
    const late = page.locator('#late')
    expect(await late.textContent()).toMatch(/is not checked in/)
    expect(await late.textContent()).toMatch(/moves from .* as its .* taken by/)
    await press(page, late.getByRole('button', { name: /^Move/ }))
    expect(await page.locator('#late form').count()).toBe(0)
    await page.goto('/studio/to-send')
    const row = page.locator(`#to-send li:has(a[href="/studio/d/${second}"])`)
    expect(await row.textContent()).toContain('The day their car comes.')
  } finally {
    studio().clock.now = was
  }
  await leave(owner, customer)
})

it('has the message ready, says that nothing has left, and takes it off the list once marked', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  const { page } = owner
  await signIn(owner, studio())
  const id = await sent(customer, studio(), CAR)
  await quoted(owner, studio(), id)
  await page.goto('/studio/to-send')
  const row = page.locator(`#to-send li:has(a[href="/studio/d/${id}"])`)
  expect(await row.textContent()).toContain('The quote is open to them.')
  await press(page, row.getByRole('button', { name: 'Show the message' }))
  const text = await page.locator('[name=paste]').inputValue()
  expect(text).toMatch(/https?:\/\/\S+\/l\/\S+/)
  expect(await page.locator('#message').textContent()).toContain('Nothing has left yet')
  expect(await page.locator('#message a[href^="mailto:"]').count()).toBe(1)
  await press(page, page.locator('#message').getByRole('button', { name: 'I have sent it' }))
  await page.goto('/studio/to-send')
  expect(await page.locator(`#to-send li:has(a[href="/studio/d/${id}"])`).count()).toBe(0)
  await leave(owner, customer)
})

it('writes down what is in hand and what came in, and refuses what is no money', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  const { page } = owner
  await signIn(owner, studio())
  const id = await agreedCar(customer, owner)
  await page.goto(`/studio/d/${id}`)
  const box = page.locator('#in-hand')
  expect(await box.textContent()).toContain('the key of the locking wheel nuts')
  await box.getByText('Something else is wanted').click()
  await box.locator('[name=thing]').fill('Badge pins')
  await box.locator('select').first().selectOption('in-hand')
  await press(page, box.getByRole('button', { name: 'Keep what is in hand' }))
  expect(await page.locator('#in-hand').textContent()).toContain('Badge pins')
  expect(await page.locator('#in-hand').textContent()).toContain('In hand.')

  await press(page, page.getByRole('link', { name: 'Account' }))
  const total = page.locator('table.account tr.total td').first()
  expect(await total.textContent()).toMatch(/€[\d,]+\.\d\d/)
  await page.locator('[name=amount]').fill('plenty')
  await press(page, button(owner, 'Write it down'))
  expect(await page.locator('#faults a').count()).toBe(1)
  expect(await page.locator('[name=amount]').inputValue()).toBe('plenty')
  await page.locator('[name=amount]').fill('50')
  await press(page, button(owner, 'Write it down'))
  expect(await page.locator('main').textContent()).toMatch(/received on .*€50\.00/i)
  await leave(owner, customer)
})

it(
  'every new page in both schemes, small and large',
  async () => {
    const customer = await visit()
    const v = await visit({ bypassCSP: true })
    const { page } = v
    await signIn(v, studio())
    const id = await agreedCar(customer, v)
    await dateIt(v, id, '2026-12-07')
    const wrong = []
    for (const path of ['/studio/days', '/studio/to-send', `/studio/d/${id}/account`]) {
      await page.goto(path)
      wrong.push(...(await look(v, path)))
    }
    await page.goto(`/studio/d/${id}`)
    wrong.push(...(await look(v, 'docket with what is in hand')))
    const other = await agreedCar(customer, v)
    await dateIt(v, other, '2026-12-07')
    wrong.push(...(await look(v, 'against')))
    await page.goto('/studio/days')
    await press(page, page.locator('#feed').getByRole('button'))
    wrong.push(...(await look(v, 'feed')))
    await page.goto('/studio/to-send')
    await page.locator('[name=url]').fill('https://10.0.0.1/')
    await press(page, button(v, 'Set the address'))
    wrong.push(...(await look(v, 'hook refused')))
    await page.locator('[name=url]').fill('https://studio.example/hook')
    await press(page, button(v, 'Set the address'))
    expect(await page.locator('#f-secret').inputValue()).toMatch(/^whsec_/)
    wrong.push(...(await look(v, 'hook set')))
    expect(told(wrong)).toEqual([])
    await leave(v, customer)
  },
  PATIENCE,
)
