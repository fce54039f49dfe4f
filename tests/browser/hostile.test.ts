import { expect, it } from 'vitest'
import { LONG, MARKUP, TURNED } from './hostile-words'
import { agreed, answered, dated, get, post, revOf, signIn } from './quick'
import { here } from './set-up'
import {
  fillIn,
  goOn,
  OLD_CAR,
  openQuestion,
  overfill,
  press,
  pressAnswer,
  type Visitor,
} from './visit'

const { studio, visit, leave } = here()

const CAR = { ...OLD_CAR, services: ['paint'], 'best-thing': MARKUP } as const

/** The question's page with its box, whatever was answered before. */
const openAt = async (v: Visitor, id: string, question: string): Promise<void> => {
  await v.page.goto(`/e/${id}/q/${question}`)
  expect(await openQuestion(v.page)).toBe(question)
}

const main = async (v: Visitor) => (await v.page.locator('main').textContent()) ?? ''

/** Nothing of it became an element. */
const harmless = async (v: Visitor): Promise<void> =>
  expect(await v.page.locator('main script, main img[src=x], main svg[onload]').count()).toBe(0)

it.each([{ js: true }, { js: false }])(
  'text of a customer: stored as typed or refused in words, and kept in the box (scripts: $js)',
  async ({ js }) => {
    const v = await visit({ javaScriptEnabled: js })
    const { page } = v
    const id = await answered(v, studio(), CAR)
    for (const text of [MARKUP, TURNED]) {
      await openAt(v, id, 'best-thing')
      await fillIn(page, text)
      await pressAnswer(v, goOn(page))
      expect([text, (await main(v)).includes(text)]).toEqual([text, true])
      await harmless(v)
    }
    // Too long: the limit is named and all of it is still in the box.
    await openAt(v, id, 'best-thing')
    const box = page.locator('[name=value]')
    await overfill(box, LONG)
    await pressAnswer(v, goOn(page))
    expect(await page.locator('#faults').textContent()).toContain('longer than we can keep')
    expect((await box.inputValue()).length).toBe(10_000)
    await page.goto(`/e/${id}`)
    expect(await main(v)).toContain(TURNED)
    // A hidden character is told, not swallowed; so is a mark that turns what stands after it.
    for (const text of ['before\u0007after', 'before\u202Eafter\u202C']) {
      await openAt(v, id, 'best-thing')
      await fillIn(page, text)
      await pressAnswer(v, goOn(page))
      expect(await page.locator('#faults').textContent()).toContain('hidden character')
      expect(await box.inputValue()).toBe(text)
    }
    await leave(v)
  },
)

it('numbers, dates, numbers of vehicles and contacts refuse markup in words and keep it', async () => {
  const v = await visit()
  const { page } = v
  const id = await answered(v, studio(), { ...CAR, year: 'unsure', vin: '1M8GDM9AXKP042788' })
  for (const question of ['year', 'film-age', 'budget', 'mileage', 'owner-since', 'vin']) {
    await page.goto(`/e/${id}/q/${question}`)
    if ((await openQuestion(page)) !== question) continue
    for (const text of ['<b>1</b>', '١٩٧٤', '1e5', '-3', 'NaN']) {
      const box = page.locator('[name=value]')
      await overfill(box, text)
      await pressAnswer(v, goOn(page))
      expect([question, text, await page.locator('#faults a').count()]).toEqual([question, text, 1])
      expect(await box.inputValue()).toBe(text)
    }
  }
  await openAt(v, id, 'contact')
  await page.locator('[name=name]').fill(MARKUP.slice(0, 150))
  await page.locator('[name=email]').fill('"><script>@example')
  await page.locator('[name=phone]').fill('javascript:alert(1)')
  await pressAnswer(v, goOn(page))
  expect(await page.locator('#faults a').count()).toBeGreaterThanOrEqual(1)
  expect(await page.locator('[name=name]').inputValue()).toBe(MARKUP.slice(0, 150))
  expect(await page.locator('[name=email]').inputValue()).toBe('"><script>@example')
  await page.locator('[name=email]').fill('ines@example.com')
  await page.locator('[name=phone]').fill('')
  await pressAnswer(v, goOn(page))
  expect(await page.locator('#faults').count()).toBe(0)
  await harmless(v)
  await leave(v)
})

it('answers nobody asked for are refused without a fault of ours', async () => {
  const v = await visit()
  const id = await answered(v, studio(), CAR)
  const tried: readonly (readonly [string, readonly (readonly [string, string])[], number])[] = [
    ['no-such-question', [['value', 'x']], 404],
    ['body', [['value', 'spaceship']], 422],
    ['body', [['value[]', 'saloon']], 422],
    [
      'dangers',
      [
        ['value[]', 'film'],
        ['value[]', '<x>'],
      ],
      422,
    ],
    [
      'year',
      [
        ['value', '1974'],
        ['unit', '__proto__'],
      ],
      303,
    ],
    ['__proto__', [['value', 'x']], 404],
  ]
  for (const [question, fields, status] of tried) {
    const answer = await v.page.request.post(`/e/${id}/answers/${question}`, {
      data: new URLSearchParams(fields.map(([k, x]) => [k, x])).toString(),
      headers: { 'content-type': 'application/x-www-form-urlencoded', origin: studio().origin },
      maxRedirects: 0,
    })
    expect([question, fields, answer.status()]).toEqual([question, fields, status])
  }
  await leave(v)
})

it('whatever was typed is only text on every page that shows it later', async () => {
  const v = await visit()
  const owner = await visit()
  await signIn(owner, studio())
  const id = await answered(v, studio(), CAR)
  await post(v, studio(), `/e/${id}/answers/contact`, [
    ['name', `Ines ${MARKUP.slice(0, 120)}`],
    ['email', 'ines@example.com'],
  ])
  await post(v, studio(), `/e/${id}/submission`, [['consent', '1']])
  // The studio's own fields.
  const { page } = owner
  await page.goto(`/studio/d/${id}`)
  await page.locator('summary', { hasText: 'Add a line' }).click()
  await page.locator('[name=add-name]').fill(MARKUP)
  await page.locator('[name=add-minutes]').fill('10')
  await page.locator('[name=add-why]').fill(TURNED)
  await page.locator('[name=message]').fill(MARKUP)
  await press(page, page.getByRole('button', { name: 'Save as revision 1' }))
  await harmless(owner)
  expect(await main(owner)).toContain(MARKUP)
  await press(page, page.getByRole('button', { name: 'Send revision 1' }))
  await harmless(owner)
  for (const path of ['/studio', `/studio?q=${encodeURIComponent('<script>alert(1)</script>')}`]) {
    await page.goto(path)
    await harmless(owner)
  }
  expect(await main(owner)).toContain('<script>alert(1)</script>')
  await v.page.goto(`/e/${id}/quote`)
  expect(await main(v)).toContain(MARKUP)
  await harmless(v)
  await post(v, studio(), `/e/${id}/quote/decision`, [
    ['decision', 'ask'],
    ['revision', '1'],
    ['text', `${MARKUP}\n${TURNED}`],
  ])
  await page.goto(`/studio/d/${id}`)
  expect(await main(owner)).toContain(TURNED)
  await post(owner, studio(), `/studio/d/${id}/reply`, [
    ['rev', revOf(await get(owner, studio(), `/studio/d/${id}`))],
    ['text', MARKUP],
  ])
  await agreed(v, studio(), id)
  await dated(owner, studio(), id)
  for (const fields of [
    [
      ['kind', 'checked-in'],
      ['notes', MARKUP],
      ['name', MARKUP.slice(0, 100)],
      ['fuel', '<b>half</b>'],
    ],
    [
      ['kind', 'removed'],
      ['item', '<i>cap</i>'],
      ['place', '<i>left</i>'],
      ['stored', TURNED.slice(0, 40)],
    ],
    [
      ['kind', 'noted'],
      ['text', MARKUP],
    ],
    [
      ['kind', 'unreadable'],
      ['panel', 'roof'],
      ['why', MARKUP],
    ],
  ] as const)
    await post(owner, studio(), `/bench/${id}/lines`, fields)
  await page.goto(`/bench/${id}`)
  await page.locator('summary', { hasText: 'Found something' }).click()
  await page.locator('#findings [name=place]').fill('<b>boot</b>')
  await page.locator('#f-found-text').fill(MARKUP)
  await pressAnswer(owner, page.getByRole('button', { name: 'Keep the finding' }))
  await post(owner, studio(), `/bench/${id}/extras`, [
    ['text', MARKUP],
    ['minutes', '5'],
  ])
  const shown: readonly (readonly [Visitor, string])[] = [
    [owner, `/bench/${id}`],
    [owner, `/bench/${id}/handover`],
    [owner, `/studio/d/${id}`],
    [v, `/e/${id}/quote`],
    [v, `/e/${id}/data`],
  ]
  for (const [who, path] of shown) {
    await who.page.goto(path)
    await harmless(who)
    expect([path, (await who.page.locator('body').textContent())?.includes('<')]).toEqual([
      path,
      true,
    ])
  }
  await leave(v, owner)
})

it('too much at once is refused and says so', async () => {
  const v = await visit()
  const id = await answered(v, studio(), CAR)
  const answer = await v.page.request.post(`/e/${id}/answers/best-thing`, {
    data: `value=${'x'.repeat(400_000)}`,
    headers: { 'content-type': 'application/x-www-form-urlencoded', origin: studio().origin },
  })
  expect(answer.status()).toBe(413)
  expect(await answer.text()).toMatch(/<h1/)
  const photo = await v.page.request.post(`/e/${id}/photos`, {
    multipart: {
      subject: 'photos',
      file: {
        name: '<img src=x onerror=alert(1)>.png',
        mimeType: 'image/png',
        buffer: Buffer.from(MARKUP),
      },
    },
    headers: { origin: studio().origin },
  })
  expect(photo.status()).toBe(422)
  expect(await photo.text()).not.toContain('<img src=x')
  await leave(v)
})
