import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { type Looked, look, told } from './look'
import { agreed, answered, dated, post, quoted, signIn } from './quick'
import { here } from './set-up'
import { docketOf, press, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = { body: 'saloon', dangers: [], services: ['paint', 'cabin'], year: '2016' }
describe.each([
  { scripts: 'with scripts', js: true },
  { scripts: 'without scripts', js: false },
])('a customer later on $scripts', ({ js }) => {
  it('begins by a link with answers, keeps two side by side, and follows the day by a new link', async () => {
    // axe is a script; the browser lets it in only where scripts run and the page does not forbid it.
    const options = js ? { bypassCSP: true } : { javaScriptEnabled: false }
    const v = await visit(options)
    const { page } = v
    const wrong: Looked[] = []
    const looked = async (who: Visitor, name: string): Promise<void> => {
      if (js) wrong.push(...(await look(who, name)))
    }
    await page.goto('/?body=estate&year=1998&size=round')
    expect(await page.locator('dd').allTextContents()).toEqual(['Estate', '1998'])
    expect(await page.getByText('left out: size').count()).toBe(1)
    await press(page, page.getByRole('button', { name: 'Begin' }))
    const first = docketOf(page)
    const said = page.locator('[data-part=log] .said')
    expect(await said.allTextContents()).toContain('1998')
    const id = await answered(v, studio(), CAR)
    await page.goto('/')
    for (const each of [first, id])
      expect(await page.locator(`a[href="/e/${each}"]`).count()).toBe(1)
    await page.goto(`/e/${id}/q/photos`)
    await looked(v, 'photos')

    await post(v, studio(), `/e/${id}/submission`, [['consent', '1']])
    const owner = await visit(js ? options : {})
    await signIn(owner, studio())
    await quoted(owner, studio(), id)
    await agreed(v, studio(), id)
    await dated(owner, studio(), id)

    // The studio makes a new link; the customer opens it on another device.
    await owner.page.goto(`/studio/d/${id}`)
    await press(owner.page, owner.page.getByRole('button', { name: 'Make a new private link' }))
    const link = await owner.page.getByLabel('For the customer alone').inputValue()
    await owner.page.goto('/studio/site')
    await looked(owner, 'own site')
    const other = await visit(options)
    const key = link.split('/').at(-1) ?? 'none'
    const seen: string[] = []
    await other.page.goto(link)
    other.page.on('request', (r) => seen.push(`${r.url()} ${r.headers().referer ?? ''}`))
    await press(other.page, other.page.getByRole('button', { name: 'Open' }))
    seen.length = 0
    await press(other.page, other.page.getByRole('link', { name: 'How it stands' }))
    expect(await other.page.locator('h1').textContent()).toBe('Booked')
    expect(other.page.url()).toBe(`${studio().origin}/e/${id}/day`)
    expect(seen.length).toBeGreaterThan(0)
    expect(seen.filter((s) => s.includes(key))).toEqual([])
    expect(await other.page.content()).not.toContain(key)
    await looked(other, 'booked')
    const file = await other.page.request.get(`/e/${id}/day.ics`)
    const events = new ICAL.Component(ICAL.parse(await file.text())).getAllSubcomponents('vevent')
    // 08:30 in Dublin on 5 October is 07:30 UTC.
    const start = new ICAL.Event(events[0] as never).startDate.toJSDate().toISOString()
    expect(start).toBe('2026-10-05T07:30:00.000Z')

    const old = await visit(options)
    studio().clock.now += 181 * 86_400_000
    await old.page.goto(link)
    await press(old.page, old.page.getByRole('button', { name: 'Open' }))
    expect(await old.page.textContent('main')).toContain('Ask the studio for a new one')
    studio().clock.now -= 181 * 86_400_000
    expect(told(wrong)).toEqual([])
    await leave(v, owner, other, old)
  }, 60_000)
})
