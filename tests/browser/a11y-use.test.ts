import { expect, it } from 'vitest'
import { agreed, dated, get, post, quoted, sent, signIn } from './quick'
import { here } from './set-up'
import { answerUntil, begin, docketOf, goOn, OLD_CAR, pressAnswer, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const

type Focused = {
  readonly tag: string
  readonly id: string
  readonly name: string
  readonly text: string
  readonly ring: string
}

/** What the keys would act on now, and the ring that shows it. */
const focused = (v: Visitor): Promise<Focused> =>
  v.page.evaluate(`(() => {
    const e = document.activeElement
    const { outlineStyle, outlineWidth } = getComputedStyle(e)
    return { tag: e.tagName, id: e.id, name: e.getAttribute('name') ?? '', text: e.textContent.trim(),
      ring: outlineStyle + ' ' + outlineWidth }
  })()`)

it('by keys alone: a question in its order, the focus seen, then the next question', async () => {
  const v = await visit()
  const { page } = v
  await begin(v)
  await answerUntil(v, CAR, 'body')
  await page.goto(`/e/${docketOf(page)}`)
  await page.keyboard.press('Tab')
  expect((await focused(v)).text).toBe('To the page')
  await page.keyboard.press('Enter')
  const order: string[] = []
  for (let n = 0; n < 5; n += 1) {
    await page.keyboard.press('Tab')
    const f = await focused(v)
    order.push(f.name || f.tag)
    expect([f.tag, f.ring]).toEqual([f.tag, 'solid 3px'])
  }
  // The link of the line above, then the question.
  expect(order).toEqual(['A', 'SUMMARY', 'value', 'BUTTON', 'A'])
  for (const _ of [1, 2]) await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('ArrowDown')
  const once = await page.locator('input[name=once]').first().inputValue()
  await page.keyboard.press('Enter')
  await page.locator(`input[name=once][value="${once}"]`).waitFor({ state: 'detached' })
  expect((await focused(v)).id).toBe('q')
  expect(await page.locator('[role=log] li').count()).toBe(2)
  // Past lines are read out as a log; the form stands outside it.
  expect(await page.locator('[role=log] form').count()).toBe(0)
  // The keys go on from the heading into the new question.
  await page.keyboard.press('Tab')
  expect(await page.locator('form[action*="/answers/"] :focus').count()).toBe(1)
  await leave(v)
})

it('a refusal with scripts moves the focus to the summary and from there to the field', async () => {
  const v = await visit()
  await begin(v)
  await answerUntil(v, CAR, 'body')
  await pressAnswer(v, goOn(v.page))
  expect((await focused(v)).id).toBe('faults')
  await v.page.keyboard.press('Tab')
  await v.page.keyboard.press('Enter')
  expect((await focused(v)).id).toBe('f-value')
  await leave(v)
})

const SHIFTS = `
  self.shifts = 0
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) self.shifts += entry.value
  }).observe({ type: 'layout-shift', buffered: true })`

/** Two frames on: the browser reports a shift after the frame it happened in. */
const FRAMES = 'new Promise((on) => requestAnimationFrame(() => requestAnimationFrame(() => on())))'

it('nothing jumps when an answer is taken', async () => {
  const v = await visit()
  const { page } = v
  await begin(v)
  await page.evaluate(SHIFTS)
  for (const value of [null, 'saloon', 'mid']) {
    if (value) await page.locator(`input[value="${value}"]`).check()
    await pressAnswer(v, goOn(page))
    await page.evaluate(FRAMES)
  }
  expect(await page.evaluate('self.shifts')).toBe(0)
  // And a jump would have been seen.
  await page.evaluate("document.querySelector('h1').style.paddingTop = '9rem'")
  // The page's policy forbids a text to be run inside it again and again: it is asked from outside.
  await expect.poll(() => page.evaluate('self.shifts')).toBeGreaterThan(0)
  await leave(v)
})

it('nothing moves for who wants no motion', async () => {
  const v = await visit({ reducedMotion: 'reduce' })
  await begin(v)
  await pressAnswer(v, goOn(v.page))
  const moving = await v.page.evaluate(`document.getAnimations().length +
    [...document.querySelectorAll('*')].map((e) => getComputedStyle(e)).filter((s) =>
      s.transitionDuration !== '0s' || s.animationName !== 'none' || s.scrollBehavior === 'smooth'
    ).length`)
  expect(moving).toBe(0)
  await leave(v)
})

it('on paper: the reference on the sheet, no forms, and what is folded away stands there', async () => {
  const customer = await visit()
  const owner = await visit()
  await signIn(owner, studio())
  const id = await sent(customer, studio(), CAR)
  await quoted(owner, studio(), id)
  const onPaper = async (v: Visitor, path: string) => {
    await v.page.goto(path)
    await v.page.emulateMedia({ media: 'print' })
    const reference = await v.page.locator('.print-head span').nth(1).textContent()
    expect(reference).toMatch(/^[0-9A-Z]{3}-[0-9A-Z]{3}/)
    expect(await v.page.locator('.print-head').isVisible()).toBe(true)
    for (const css of ['form button', 'nav', 'textarea', 'input[type=text]'])
      expect([path, css, await v.page.locator(`${css} >> visible=true`).count()]).toEqual([
        path,
        css,
        0,
      ])
    const bytes = await v.page.pdf({ format: 'A4' })
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-')
    return v
  }
  await onPaper(customer, `/e/${id}/quote`)
  expect(await customer.page.locator('tfoot').isVisible()).toBe(true)
  await agreed(customer, studio(), id)
  await dated(owner, studio(), id)
  await onPaper(owner, `/bench/${id}`)
  expect(await owner.page.locator('#steps .box').first().isVisible()).toBe(true)
  expect(await owner.page.locator('#panels table').isVisible()).toBe(true)
  expect(await owner.page.locator('#notes .note').first().isVisible()).toBe(true)
  expect(await owner.page.locator('table.blank').first().isVisible()).toBe(true)
  const sheet = await get(owner, studio(), `/bench/${id}`)
  const checks = [...sheet.matchAll(/name="check" value="([^"]+)"/g)].map((m) => m[1] ?? '')
  for (const check of new Set(checks))
    await post(owner, studio(), `/bench/${id}/lines`, [
      ['kind', 'checked'],
      ['check', check],
    ])
  const step = /name="step" value="([^"]+)"/.exec(sheet)?.[1] ?? ''
  await post(owner, studio(), `/bench/${id}/lines`, [
    ['kind', 'began'],
    ['step', step],
  ])
  await post(owner, studio(), `/bench/${id}/handover`, [['name', 'Ines Example']])
  await onPaper(customer, `/e/${id}/record`)
  await leave(customer, owner)
})
