import { describe, expect, it } from 'vitest'
import { KINDS } from '../../src/intake/question'
import { script } from '../../src/intake/script'
import { picture } from './picture'
import { here } from './set-up'
import {
  answer,
  answerUntil,
  begin,
  docketOf,
  EVERY_KIND,
  fillIn,
  goOn,
  leaveOut,
  openQuestion,
  press,
  pressAnswer,
  type Visitor,
} from './visit'

const { visit, leave } = here()

const lines = (v: Visitor) => v.page.locator('[data-part=log] li')
const lineOf = (v: Visitor, question: string) =>
  v.page.locator(`[data-part=log] li:has(a[href$="/q/${question}"])`)

/** Opens an earlier answer by its plain link. */
const change = async (v: Visitor, question: string): Promise<void> => {
  await press(v.page, lineOf(v, question).getByRole('link', { name: 'change' }))
  expect(await openQuestion(v.page)).toBe(question)
}

/** Two photos, one taken back, one kept. */
const sendPhotos = async (v: Visitor): Promise<void> => {
  const { page } = v
  for (const name of ['one.png', 'two.png']) {
    await page
      .locator(name === 'one.png' ? 'input[name=camera]' : 'input[name=file]')
      .setInputFiles({ name, mimeType: 'image/png', buffer: picture() })
    await pressAnswer(v, page.getByRole('button', { name: 'Add this photo' }))
  }
  expect(await page.locator('.photos img').count()).toBe(2)
  // The guide names what is there, and the next that is missing stands chosen.
  expect(await page.locator('.photo-step li:has-text("one here")').count()).toBe(2)
  expect(await page.locator('select[name=subject]').inputValue()).toBe('left')
  const alts = await page
    .locator('.photos img')
    .evaluateAll((e) => e.map((i) => i.getAttribute('alt')))
  expect(alts.sort()).toEqual(['back', 'front'])
  // What is no picture is refused in words; nothing that stands is lost.
  const heic = Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1')
  await page
    .locator('input[name=file]')
    .setInputFiles({ name: 'three.heic', mimeType: 'image/heic', buffer: heic })
  await pressAnswer(v, page.getByRole('button', { name: 'Add this photo' }))
  expect(await page.locator('#faults').textContent()).toContain('HEIC')
  expect(await page.locator('.photos img').count()).toBe(2)
  await press(page, page.getByRole('button', { name: 'Remove' }).first())
  const kept = page.locator('.photos img')
  expect(await kept.count()).toBe(1)
  await kept.scrollIntoViewIfNeeded()
  await kept.evaluate((e) => (e as unknown as { decode: () => Promise<void> }).decode())
  await pressAnswer(v, goOn(page))
}

describe.each([
  { scripts: 'with scripts', js: true },
  { scripts: 'without scripts', js: false },
])('a customer at 390 px $scripts', ({ js }) => {
  it('answers every kind of question, changes, leaves, comes back, narrows and sends', async () => {
    const v = await visit({ javaScriptEnabled: js })
    const { page } = v
    await begin(v)
    const id = docketOf(page)

    await answerUntil(v, EVERY_KIND, 'body')
    // Nothing chosen: refused in words, the question stays.
    await pressAnswer(v, goOn(page))
    expect(await page.locator('#faults').textContent()).toContain('One thing stops this')
    expect(await page.title()).toMatch(/^Not taken yet/)
    const done = ['dangers', ...(await answerUntil(v, EVERY_KIND, 'film-kind'))]

    // An earlier answer changed away and back: what hung on it is set aside, then stands again.
    const panels = await lineOf(v, 'respray-panels').locator('.said').textContent()
    expect(panels).toContain('Doors')
    await change(v, 'paint-history')
    expect(await page.locator('input[value=part]').isChecked()).toBe(true)
    await fillIn(page, 'original')
    await pressAnswer(v, goOn(page))
    expect(await lineOf(v, 'respray-panels').count()).toBe(0)
    expect(await page.locator('.set-aside').textContent()).toContain('kept in case')
    await change(v, 'paint-history')
    await fillIn(page, 'part')
    await pressAnswer(v, goOn(page))
    expect(await lineOf(v, 'respray-panels').locator('.said').textContent()).toBe(panels)
    expect(await openQuestion(page)).toBe('film-kind')

    // Leaving gives a link; looking at it changes nothing, pressing its button opens the same docket.
    await press(page, page.getByRole('link', { name: 'Leave now and come back later' }))
    expect(await page.getByLabel('Your private link').count()).toBe(0)
    await press(page, page.getByRole('button', { name: 'Make me a private link' }))
    const link = await page.getByLabel('Your private link').inputValue()
    const other = await visit({ javaScriptEnabled: js })
    for (const _ of [1, 2]) {
      await other.page.goto(link)
      expect(await other.page.locator('h1').textContent()).toBe('Your answers about the car')
    }
    expect((await other.page.request.get(`/e/${id}`)).status()).toBe(404)
    await press(other.page, other.page.getByRole('button', { name: 'Open' }))
    expect(docketOf(other.page)).toBe(id)
    expect(await lines(other).count()).toBe(done.length)
    done.push(...(await answerUntil(other, EVERY_KIND, 'film-state')))
    await leave(other)

    // Back on the first device everything said on the second stands there.
    await page.goto(`/e/${id}`)
    expect(await lines(v).count()).toBe(done.length)
    done.push(...(await answerUntil(v, EVERY_KIND, 'best-thing')))

    // A first range before all is told, and the way back to a question that narrows it.
    await press(page, page.getByRole('link', { name: 'See the range' }))
    expect(await page.locator('.lead-figure').textContent()).toMatch(/^Between €[\d,]+ and €[\d,]+/)
    expect(await page.getByText('Answer what is missing').count()).toBe(1)
    const narrow = page.locator('section:has(h2:text("narrow the range")) a').first()
    const asked = (await narrow.getAttribute('href'))?.split('/').at(-1) ?? ''
    await press(page, narrow)
    expect(await openQuestion(page)).toBe(asked)
    await page.goto(`/e/${id}`)

    done.push(...(await answerUntil(v, EVERY_KIND, 'photos')))
    await sendPhotos(v)
    done.push('photos', ...(await answerUntil(v, EVERY_KIND)))
    expect(await page.locator('h1').textContent()).toBe('That is all we need to ask')
    const all = await lines(v)
      .locator('a')
      .evaluateAll((e) => e.map((a) => a.getAttribute('href')))
    const ids = new Set(all.map((href) => href?.split('/').at(-1)))
    const kinds = new Set(script.questions.filter((q) => ids.has(q.id)).map((q) => q.kind))
    expect([...kinds].sort()).toEqual([...KINDS].sort())
    // Typed in the customer's own way, shown in the studio's.
    expect(await lineOf(v, 'film-age').locator('.said').textContent()).toContain('30')
    expect(await lineOf(v, 'budget').locator('.said').textContent()).toContain('1,250.50')

    await press(page, page.getByRole('link', { name: 'See the range' }))
    // Without the consent: refused, nothing sent.
    await press(page, page.getByRole('button', { name: 'Send it' }))
    expect(await page.locator('#faults a').getAttribute('href')).toBe('#f-consent')
    await page.locator('input[name=consent]').check()
    await press(page, page.getByRole('button', { name: 'Send it' }))
    expect(await page.locator('h1').textContent()).toBe('It has arrived')
    const reference = await page.locator('.lead-figure').textContent()
    await press(page, page.getByRole('link', { name: 'See what you sent' }))
    expect(await page.getByRole('status').textContent()).toContain(reference ?? 'none')
    // Once sent, the conversation leads to what was sent.
    await page.goto(`/e/${id}/q/year`)
    expect(new URL(page.url()).pathname).toBe(`/e/${id}/range`)
    await leave(v)
  })
})

it('an optional question is left out, an unknown one stays not sure, and both say so', async () => {
  const v = await visit()
  await begin(v)
  await answerUntil(v, EVERY_KIND, 'year')
  await answer(v, 'year', { year: 'unsure' })
  expect(await lineOf(v, 'year').locator('.said').textContent()).toMatch(/not sure/i)
  await answerUntil(v, EVERY_KIND, 'deadline')
  await pressAnswer(v, leaveOut(v.page))
  expect(await lineOf(v, 'deadline').locator('.said').textContent()).toMatch(/left out/i)
  await leave(v)
})
