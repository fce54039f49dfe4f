import { expect, it } from 'vitest'
import { get, post, quoted, revOf, sent, signIn } from './quick'
import { here } from './set-up'
import { button, OLD_CAR, press, said, type Visitor } from './visit'

const { studio, visit, leave } = here()

const DESK = { viewport: { width: 1280, height: 900 } } as const
const PHONE = { viewport: { width: 390, height: 844 }, javaScriptEnabled: false } as const

/** Counts what a person presses or taps from now on. */
const counted = (v: Visitor) => {
  let clicks = 0
  return {
    press: async (what: Parameters<typeof press>[1]) => {
      clicks += 1
      await press(v.page, what)
    },
    clicks: () => clicks,
  }
}

it('a first quote is sent in at most six clicks from the list', async () => {
  const customer = await visit()
  const id = await sent(customer, studio(), OLD_CAR)
  const owner = await visit(DESK)
  await signIn(owner, studio())
  await owner.page.goto('/studio')
  const hand = counted(owner)
  await hand.press(owner.page.locator(`.dockets a[href="/studio/d/${id}"]`))
  await hand.press(button(owner, 'Send it as it is'))
  expect(await owner.page.locator('[name=paste]').inputValue()).toMatch(/\/l\/\S+/)
  expect(await owner.page.locator('#revisions').textContent()).toContain('sent')
  expect(hand.clicks()).toBeLessThanOrEqual(6)
  await leave(customer, owner)
})

it('opens a docket on the phone without JavaScript, and again from the last visit', async () => {
  const owner = await visit(PHONE)
  await signIn(owner, studio())
  const { page } = owner
  await page.goto('/studio')
  const hand = counted(owner)
  await hand.press(page.getByRole('link', { name: 'Open a docket' }))
  await press(page, button(owner, 'Open it'))
  expect(await page.locator('#faults li').count()).toBe(4)
  await page.locator('[name="contact.name"]').fill('Orla Example')
  await page.locator('[name="contact.phone"]').fill('+353 1 555 0177')
  await page.locator('[name=plate]').fill('21-D 9876')
  await page.locator('[name="body.value"]').selectOption('hatchback')
  await page.locator('[name="year.value"]').fill('2019')
  await page.locator('[name="colour.value"]').selectOption('mid')
  await page.locator('[name="services.value[]"][value=cabin]').check()
  await page.locator('[name="dangers.none"]').check()
  await page.locator('[name=consent]').check()
  await hand.press(button(owner, 'Open it'))
  expect(new URL(page.url()).pathname).toMatch(/^\/studio\/d\//)
  expect(await page.locator('h1').textContent()).toMatch(/^Offer €/)
  expect(await said(owner, /received/)).toBe('received')
  // A cabin job has no use for the panels.
  expect(await page.getByText('Walking round from the left front.').count()).toBe(0)
  const first = new URL(page.url()).pathname

  // The same car a year on: found by plate, phone and name, and the form starts from then.
  for (const q of ['21d98', '555 0177', 'orla']) {
    await page.goto(`/studio/new?q=${encodeURIComponent(q)}`)
    expect(await page.locator('.known a').textContent(), q).toContain('Orla Example')
    await page.goto(`/studio?q=${encodeURIComponent(q)}`)
    expect(await page.locator('.dockets > li').count(), q).toBe(1)
  }
  await page.goto('/studio/new?q=21D9876')
  await press(page, page.locator('.known a'))
  expect(await page.locator('[name="year.value"]').inputValue()).toBe('2019')
  expect(await page.locator('[name="contact.name"]').inputValue()).toBe('Orla Example')
  await page.locator('[name="year.value"]').fill('2018')
  await page.locator('[name=consent]').check()
  await press(page, button(owner, 'Open it'))
  expect(new URL(page.url()).pathname).not.toBe(first)
  const facts = page.locator('#facts dd')
  expect(await facts.filter({ hasText: 'Hatchback' }).textContent()).toContain('from last time')
  expect(await facts.filter({ hasText: '2018' }).textContent()).not.toContain('from last time')
  expect(await page.locator('#last a').getAttribute('href')).toBe(first)
  await leave(owner)
})

it('tries levels, money, people and a start side by side, and keeps nothing', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  const { page } = owner
  await page.goto(`/studio/d/${id}`)
  const lines = await page.locator('#lines tbody tr').count()
  await page.getByText('How deep each panel is polished').click()
  await page.locator('[name="level:bonnet"]').selectOption('none')
  await page.locator('[name=surcharge]').fill('50')
  await page.locator('[name=people]').fill('2')
  await page.locator('[name=begins]').fill('2026-10-12')
  await page.getByText('Leave out a note').click()
  const note = page.locator('input[name^="waive:"]').first()
  const noteText = (await note.locator('xpath=..').textContent())?.trim() ?? ''
  await note.check()
  await press(page, button(owner, 'Try without saving'))
  // Three kinds of change, three reasons asked for.
  expect(await page.locator('#faults li').count()).toBe(3)
  await page.locator('[name=level-why]').fill('Resprayed, leave it')
  await page.locator('[name=whole-why]').fill('A friend helps')
  await page.locator('[name=note-why]').fill('Talked about')
  await press(page, button(owner, 'Try without saving'))
  const row = async (what: string) => {
    const cells = page.locator('#trial tbody tr', {
      has: page.getByRole('rowheader', { name: what, exact: true }),
    })
    return cells.locator('td').allTextContents()
  }
  for (const what of ['Range', 'Offer with tax', 'Ready, likely', 'What to watch']) {
    const [before, after] = await row(what)
    expect(before, what).toBeTruthy()
    expect(after, what).not.toBe(before)
  }
  expect(await row('People')).toEqual(['1', '2'])
  expect((await row('Begins'))[1]).toContain('12 October')
  expect(await page.locator('#trial').textContent()).toContain(`No longer a note: ${noteText}`)
  expect(await page.locator('#revisions').count()).toBe(0)
  await press(page, button(owner, 'Save as revision 1'))
  await page.goto(`/studio/d/${id}`)
  expect(await page.locator('[name="level:bonnet"]').inputValue()).toBe('none')
  expect(await page.locator('[name=begins]').inputValue()).toBe('2026-10-12')
  expect(await page.locator('#lines tbody tr').count()).toBeGreaterThanOrEqual(lines)

  // A line left out stays left out while something else is changed.
  const out = page.locator('#lines tbody tr').nth(2)
  await out.getByText('Change this line').click()
  const name = (await out.locator('[name^="remove:"]').getAttribute('name')) ?? ''
  await out.locator('[name^="remove:"]').check()
  await out.locator('[name^="why:"]').fill('Not wanted')
  await press(page, button(owner, 'Save as revision 2'))
  await page.locator('[name=valid-days]').fill('7')
  await page.locator('[name=deposit]').fill('10')
  await press(page, button(owner, 'Save as revision 3'))
  expect(await page.locator(`[name="${name}"]`).isChecked()).toBe(true)
  const third = page.locator('#revisions > ol > li').nth(2)
  expect(await third.textContent()).toContain('28 September')
  expect(await third.textContent()).toContain('Deposit €10.00')
  const second = page.locator('#revisions > ol > li').nth(1)
  expect(await second.locator('details').textContent()).toContain('No longer:')
  await leave(customer, owner)
})

it('two people at one docket lose nothing of either', async () => {
  const customer = await visit()
  const [one, two] = [await visit(DESK), await visit(PHONE)]
  await signIn(one, studio())
  await signIn(two, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  await one.page.goto(`/studio/d/${id}`)
  await two.page.goto(`/studio/d/${id}`)
  await one.page.locator('[name=discount]').fill('20')
  await one.page.locator('[name=whole-why]').fill('A friend')
  await press(one.page, button(one, 'Save as revision 1'))
  const { page } = two
  const line = page.locator('#lines tbody tr').nth(1)
  await line.getByText('Change this line').click()
  await line.locator('[name^="minutes:"]').fill('125')
  await line.locator('[name^="why:"]').fill('More edges')
  await page.locator('[name=message]').fill('See you soon')
  await page.locator('summary', { hasText: 'outside trade' }).click()
  const outside = { name: 'Two dents out', price: '80.00', why: 'Asked for on the phone' }
  for (const [field, typed] of Object.entries(outside))
    await page.locator(`[name=sublet-${field}]`).fill(typed)
  const saving = page.waitForResponse((r) => r.request().method() === 'POST')
  await press(page, button(two, 'Save as revision 1'))
  expect((await saving).status()).toBe(412)
  expect(await page.locator('#stale').textContent()).toContain('Revision 1:')
  // Both changes stand in the form, and the second save keeps both.
  expect(await page.locator('[name=discount]').inputValue()).toBe('20.00')
  expect(await page.locator('[name=message]').inputValue()).toBe('See you soon')
  for (const [field, typed] of Object.entries(outside))
    expect(await page.locator(`[name=sublet-${field}]`).inputValue()).toBe(typed)
  await press(page, button(two, 'Save as revision 2'))
  await one.page.goto(`/studio/d/${id}`)
  expect(await one.page.locator('[name=discount]').inputValue()).toBe('20.00')
  const again = one.page.locator('#lines tbody tr').nth(1)
  expect(await again.locator('[name^="minutes:"]').inputValue()).toBe('125')

  // Sending what somebody else has changed since says what changed.
  await two.page.goto(`/studio/d/${id}`)
  await one.page.locator('[name=discount]').fill('30')
  await press(one.page, button(one, 'Save as revision 3'))
  await press(two.page, button(two, 'Send revision 2'))
  expect(await two.page.locator('#stale').textContent()).toContain('Revision 3:')
  expect(await two.page.locator('[name=paste]').count()).toBe(0)
  await leave(customer, one, two)
})

it('asks again, changes for the customer, offers a look-over, turns down: the customer sees each', async () => {
  const customer = await visit(PHONE)
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  const { page } = owner
  await page.goto(`/studio/d/${id}`)
  await page.getByText('Ask the customer again').click()
  await page.locator('[name=question]').selectOption('size')
  await page.locator('#f-ask-again').fill('Two of our cars could be meant.')
  await press(page, button(owner, 'Ask again'))
  expect(await page.locator('[name=paste]').inputValue()).toContain('/l/')
  expect(await page.locator('#asking').textContent()).toContain('Two of our cars could be meant.')
  await page.goto('/studio?turn=theirs')
  expect(await page.locator(`a[href="/studio/d/${id}"]`).count()).toBe(1)
  await customer.page.goto(`/e/${id}`)
  expect(await customer.page.locator('#asked-again').textContent()).toContain('Two of our cars')
  await customer.page.locator('[name=value][value=large]').check()
  await press(customer.page, button(customer, /^Go on|Continue|Next/i).first())
  expect(new URL(customer.page.url()).pathname).toBe(`/e/${id}/range`)
  await page.goto('/studio?turn=ours')
  expect(await page.locator(`a[href="/studio/d/${id}"]`).count()).toBe(1)

  // A plate noted on a docket finds it again.
  await page.goto(`/studio/d/${id}`)
  await page.getByLabel('Number plate').fill('08 g 555')
  await press(page, button(owner, 'Keep the answers'))
  await page.goto('/studio?q=08-G-555')
  expect(await page.locator(`a[href="/studio/d/${id}"]`).count()).toBe(1)

  // Changed on the customer's behalf: a reason is needed, and the customer reads it.
  await page.goto(`/studio/d/${id}`)
  await press(page, page.locator(`a[href="/studio/d/${id}/answers/year"]`))
  await page.locator('[name=value]').fill('1972')
  await press(page, button(owner, 'Change it'))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-why')
  await page.locator('[name=why]').fill('As the papers say')
  await press(page, button(owner, 'Change it'))
  const fact = page.locator('#facts dd', { hasText: '1972' })
  expect(await fact.textContent()).toContain('changed by the studio: As the papers say')
  await customer.page.reload()
  expect(await customer.page.locator('#from-studio').textContent()).toContain('As the papers say')
  await customer.page.goto(`/e/${id}/data`)
  expect(await said(customer, /As the papers say/)).toBe('As the papers say')

  await page.getByText('Offer a look-over before a price').click()
  await page.locator('[name=look-amount]').fill('60')
  await press(page, button(owner, 'Offer it'))
  expect(await page.locator('[name=paste]').inputValue()).toContain('€60.00')
  await customer.page.goto(`/e/${id}/range`)
  expect(await customer.page.locator('#from-studio').textContent()).toContain('€60.00')
  await page.goto(`/studio/d/${id}`)
  await page.getByText('Turn it down', { exact: true }).first().click()
  const turn = page.locator('form:has([name=turn])')
  await press(page, turn.getByRole('button'))
  expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-why')
  await turn.locator('[name=why]').fill('The paint lifts everywhere')
  await turn.locator('[name=turn]').fill('A painter')
  await press(page, turn.getByRole('button'))
  await customer.page.reload()
  const told = await customer.page.locator('#from-studio').textContent()
  expect(told).toContain('The paint lifts everywhere')
  expect(told).toContain('A painter')
  await leave(customer, owner)
})

it('leads with the day once there is one', async () => {
  const customer = await visit()
  const owner = await visit(DESK)
  await signIn(owner, studio())
  const id = await sent(customer, studio(), OLD_CAR)
  await quoted(owner, studio(), id)
  const html = await get(customer, studio(), `/e/${id}/quote`)
  const notes = [...html.matchAll(/name="acknowledged\[\]" value="([^"]+)"/g)].map(
    (m) => m[1] ?? '',
  )
  await post(customer, studio(), `/e/${id}/quote/decision`, [
    ['decision', 'accept'],
    ['revision', '1'],
    ['name', 'Ines Example'],
    ...notes.map((n) => ['acknowledged[]', n] as const),
  ])
  const rev = revOf(await get(owner, studio(), `/studio/d/${id}`))
  await post(owner, studio(), `/studio/d/${id}/date`, [
    ['rev', rev],
    ['start', '2026-10-05'],
    ['startTime', '08:30'],
  ])
  await owner.page.goto(`/studio/d/${id}`)
  expect(await owner.page.locator('h1').textContent()).toBe('Comes Mon, 5 October at 08:30')
  expect(await owner.page.locator('main').textContent()).toMatch(/Agreed: €[\d,]+\.\d\d with tax/)
  await leave(customer, owner)
})

it('signing out ends the device too', async () => {
  const [owner, other] = [await visit(DESK), await visit(DESK)]
  await signIn(owner, studio())
  await signIn(other, studio())
  await owner.page.goto('/studio/devices')
  const before = await owner.page.locator('.lines > li').count()
  await other.page.goto('/studio/devices')
  await press(other.page, button(other, /^Sign out (?!everywhere)/))
  expect(new URL(other.page.url()).pathname).toBe('/studio/sign-in')
  await owner.page.reload()
  expect(await owner.page.locator('.lines > li').count()).toBe(before - 1)
  await leave(owner, other)
})
