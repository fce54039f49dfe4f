import { expect, it } from 'vitest'
import { answered, get, signIn } from './quick'
import { here } from './set-up'
import {
  answerUntil,
  begin,
  docketOf,
  EVERY_KIND,
  fillIn,
  goOn,
  OLD_CAR,
  openQuestion,
  press,
  pressAnswer,
  type Visitor,
} from './visit'

const { studio, visit, leave } = here()

const said = (v: Visitor, question: string) =>
  v.page.locator(`[data-part=log] li:has(a[href$="/q/${question}"]) .said`).textContent()

it('a line that breaks while an answer is sent: the browser sends it the plain way, nothing is lost', async () => {
  const v = await visit()
  const { page } = v
  await begin(v)
  // The enhanced request is cut off; the plain one that follows gets through.
  let cut = 0
  await page.route('**/answers/**', (route) => {
    if (route.request().isNavigationRequest()) return route.continue()
    cut += 1
    return route.abort('connectionreset')
  })
  await fillIn(page, ['film'])
  await press(page, goOn(page))
  expect(cut).toBe(1)
  expect(await said(v, 'dangers')).toContain('Film')
  expect(await openQuestion(page)).toBe('body')
  // The answer got through but its page did not: the plain second sending counts once.
  await page.unroute('**/answers/**')
  await page.route('**/answers/**', async (route) => {
    if (route.request().isNavigationRequest()) return route.continue()
    await route.fetch({ maxRedirects: 0 })
    return route.abort('connectionreset')
  })
  await fillIn(page, 'saloon')
  await press(page, goOn(page))
  expect(await said(v, 'body')).toBe('Saloon')
  expect(await page.locator('[data-part=log] li').count()).toBe(2)
  await leave(v)
})

it('no line at all: the answer stays where it was given and goes through afterwards', async () => {
  const v = await visit()
  const { page } = v
  await begin(v)
  await answerUntil(v, EVERY_KIND, 'body')
  const id = docketOf(page)
  await fillIn(page, 'van')
  await page.context().setOffline(true)
  // Both the enhanced sending and the plain one after it fail.
  const plain = page.waitForEvent('requestfailed', (r) => r.isNavigationRequest())
  await goOn(page).click()
  expect((await plain).url()).toContain(`/e/${id}/answers/body`)
  await page.context().setOffline(false)
  // A page of its own: the browser may still be showing its error page in the first.
  const later: Visitor = { ...v, page: await page.context().newPage() }
  await later.page.goto(`/e/${id}`)
  expect(await openQuestion(later.page)).toBe('body')
  await fillIn(later.page, 'van')
  await pressAnswer(later, goOn(later.page))
  expect(await said(later, 'body')).toBe('Van')
  await leave(v)
})

it.each([{ js: true }, { js: false }])(
  'back, refresh and a second tab show what is stored (scripts: $js)',
  async ({ js }) => {
    const v = await visit({ javaScriptEnabled: js })
    const { page } = v
    await begin(v)
    const id = docketOf(page)
    await answerUntil(v, EVERY_KIND, 'year')
    await page.reload()
    expect(await openQuestion(page)).toBe('year')
    const second = await page.context().newPage()
    const tab: Visitor = { ...v, page: second }
    await second.goto(`/e/${id}`)
    await fillIn(second, '1999')
    await pressAnswer(tab, goOn(second))
    // The first tab still shows the question; answering it there again is a change, not a fault.
    await fillIn(page, '1998')
    await pressAnswer(v, goOn(page))
    expect(await said(v, 'year')).toBe('1998')
    expect(await page.locator('[data-part=log] li').count()).toBe(4)
    // Going back never brings an older state over a newer one.
    await page.goto(`/e/${id}/q/size`)
    await fillIn(page, 'large')
    await pressAnswer(v, goOn(page))
    const there = page.waitForEvent('domcontentloaded')
    await page.goBack({ waitUntil: 'commit' })
    await there
    expect(await page.locator('input[value=large]').isChecked()).toBe(true)
    await page.goto(`/e/${id}`)
    expect(await said(v, 'size')).toBe('Large')
    await second.reload()
    expect(await said(tab, 'size')).toBe('Large')
    await leave(v)
  },
)

it('pressing back after enhanced answers shows the stored state', async () => {
  const v = await visit()
  const { page } = v
  await page.goto('/')
  await begin(v)
  const id = docketOf(page)
  await answerUntil(v, EVERY_KIND, 'year')
  await press(page, page.locator('a[href$="/q/size"]'))
  await fillIn(page, 'large')
  await pressAnswer(v, goOn(page))
  await page.goBack({ waitUntil: 'commit' })
  expect(new URL(page.url()).pathname).toBe(`/e/${id}/q/size`)
  await page.locator('input[value=large]:checked').waitFor()
  await leave(v)
})

it.each([{ js: true }, { js: false }])(
  'a double click sends once (scripts: $js)',
  async ({ js }) => {
    const v = await visit({ javaScriptEnabled: js })
    const owner = await visit()
    await signIn(owner, studio())
    const id = await answered(v, studio(), OLD_CAR)
    const { page } = v
    await page.goto(`/e/${id}/q/size`)
    await fillIn(page, 'small')
    const once = await page.locator('input[name=once]').first().inputValue()
    await goOn(page).dblclick()
    await page.locator(`input[name=once][value="${once}"]`).first().waitFor({ state: 'detached' })
    await page.waitForLoadState('networkidle')
    await page.goto(`/e/${id}/range`)
    await page.locator('input[name=consent]').check()
    await page.getByRole('button', { name: 'Send it' }).dblclick()
    // The second press may supersede the first's navigation: only where it ends counts.
    await expect.poll(() => page.url(), { timeout: 15_000 }).toMatch(/\/sent$/)
    const docket = await get(owner, studio(), `/studio/d/${id}`)
    expect(docket.match(/Sent to the studio as/g)).toHaveLength(1)
    expect(docket.match(/Answered: Is it a small/g)).toHaveLength(2)
    await leave(v, owner)
  },
)
