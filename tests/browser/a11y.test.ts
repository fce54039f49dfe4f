import { expect, it } from 'vitest'
import { axeFaults, CONTROLS, sideways, small } from './axe'
import { agreed, answered, dated, get, post, quoted, revOf, sent, signIn } from './quick'
import { here } from './set-up'
import { begin, docketOf, goOn, OLD_CAR, press, pressAnswer, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const
const button = (v: Visitor, name: string | RegExp) => v.page.getByRole('button', { name })

type Looked = { readonly page: string; readonly fault: string }
const NARROW = { width: 320, height: 640 } as const

/** Everything folded is opened, so that nothing hides from the checks. */
const unfoldAll = (v: Visitor): Promise<void> =>
  v.page.evaluate(() => {
    const all = document.querySelectorAll('details')
    for (const d of all) d.setAttribute('open', '')
  })
declare const document: {
  readonly querySelectorAll: (
    css: string,
  ) => Iterable<{ setAttribute: (n: string, v: string) => void }>
}

/** A page's faults as short lines, so that a failure names them all. */
const told = (wrong: readonly Looked[]): readonly string[] =>
  wrong.map((w) => `${w.page}: ${w.fault}`)

/** One page in both schemes, at 320 px and with text twice as large; gives what is wrong with it. */
const look = async (v: Visitor, name: string): Promise<readonly Looked[]> => {
  const { page } = v
  const wrong: Looked[] = []
  const note = (how: string, faults: readonly string[]): void => {
    for (const fault of faults) wrong.push({ page: `${name}, ${how}`, fault })
  }
  await unfoldAll(v)
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    note(colorScheme, await axeFaults(page, colorScheme === 'light' ? 'all' : 'colours'))
  }
  note('targets', await small(page, CONTROLS, 24))
  const size = page.viewportSize() ?? NARROW
  await page.setViewportSize(NARROW)
  note('at 320 px', await sideways(page))
  await page.setViewportSize({ width: 640, height: 800 })
  const larger = await page
    .addStyleTag({ content: 'html{font-size:200%!important}' })
    .catch(() => null)
  note('200 % text', larger ? await sideways(page) : ['the text could not be enlarged'])
  await larger?.evaluate((e) => (e as unknown as { remove: () => void }).remove())
  await page.setViewportSize(size)
  return wrong
}

it('every page a customer meets', async () => {
  const v = await visit({ bypassCSP: true })
  const owner = await visit()
  await signIn(owner, studio())
  const { page } = v
  const wrong: Looked[] = []
  const at = async (path: string, name: string): Promise<void> => {
    await page.goto(path)
    wrong.push(...(await look(v, name)))
  }
  await at('/', 'start')
  await begin(v)
  wrong.push(...(await look(v, 'first question')))
  await pressAnswer(v, goOn(page))
  wrong.push(...(await look(v, 'refused question')))
  const id = await answered(v, studio(), { ...CAR, 'best-thing': 'unsure' })
  for (const q of [
    'dangers',
    'year',
    'respray-panels',
    'film-age',
    'deadline',
    'readings-before',
    'contact',
  ])
    await at(`/e/${id}/q/${q}`, q)
  await at(`/e/${id}`, 'all asked')
  await at(`/e/${id}/leave`, 'leave')
  await page.goto(`/e/${id}/leave`)
  await at(await page.getByLabel('Your private link').inputValue(), 'private link')
  await at(`/e/${id}/range`, 'range')
  await press(page, button(v, 'Send it'))
  wrong.push(...(await look(v, 'range refused')))
  await post(v, studio(), `/e/${id}/submission`, [['consent', '1']])
  await at(`/e/${id}/sent`, 'sent')
  await at(`/e/${id}/range`, 'range as sent')
  await at(`/e/${id}/data`, 'my data')
  await quoted(owner, studio(), id)
  await at(`/e/${id}/quote`, 'quote')
  await press(page, page.locator('form:has([value=accept]) button'))
  wrong.push(...(await look(v, 'quote refused')))
  await agreed(v, studio(), id)
  await dated(owner, studio(), id)
  await at(`/e/${id}/quote`, 'agreed')
  await page.goto('/e/nobody/quote')
  wrong.push(...(await look(v, 'refusal')))
  expect(told(wrong)).toEqual([])
  await leave(v, owner)
})

it('every page of the studio and the bench', async () => {
  const customer = await visit()
  const v = await visit({ bypassCSP: true })
  const { page } = v
  const wrong: Looked[] = []
  const at = async (path: string, name: string): Promise<void> => {
    await page.goto(path)
    wrong.push(...(await look(v, name)))
  }
  await at(await studio().signInLink('owner'), 'sign-in link')
  await press(page, button(v, 'Sign in'))
  const id = await sent(customer, studio(), CAR)
  await at('/studio', 'list')
  await at('/studio?turn=closed', 'empty list')
  await at(`/studio/d/${id}`, 'docket')
  await page.locator('[name=discount]').fill('much')
  await press(page, button(v, /^Save as revision/))
  wrong.push(...(await look(v, 'docket refused')))
  await at('/studio/settings', 'settings')
  await at('/studio/devices', 'devices')
  await at('/api', 'for programs')
  await page.goto(`/studio/d/${id}`)
  await press(page, button(v, /^Save as revision/))
  await press(page, button(v, /^Send revision/))
  wrong.push(...(await look(v, 'docket sent')))
  await agreed(customer, studio(), id)
  await dated(v, studio(), id)
  await at(`/studio/d/${id}`, 'docket dated')
  await page.goto(`/bench/${id}`)
  for (const fields of [
    [
      ['kind', 'removed'],
      ['item', 'Mirror cap'],
      ['place', 'left'],
    ],
    [
      ['kind', 'reading'],
      ['panel', 'roof'],
      ['values', '98 99 101'],
      ['of', 'panel'],
      ['probe', 'magnetic'],
    ],
    [
      ['kind', 'noted'],
      ['text', 'Keys hang by the door'],
    ],
  ] as const)
    await post(v, studio(), `/bench/${id}/lines`, fields)
  await at(`/bench/${id}`, 'bench')
  // Gloves on: what is pressed most is at least 48 px high and wide.
  expect(
    await small(
      page,
      'main button, main .button, main summary, main .tick input, main #steps a',
      48,
    ),
  ).toEqual([])
  await press(page, button(v, 'Begin'))
  wrong.push(...(await look(v, 'step begun')))
  await at(`/bench/${id}/handover`, 'hand-over')
  expect(told(wrong)).toEqual([])
  await leave(v, customer)
})

it('by keys alone: a question in its order, the focus seen, then the next question', async () => {
  const v = await visit()
  const { page } = v
  await begin(v)
  const focused = () =>
    page.evaluate(() => {
      const e = (globalThis as unknown as { document: { activeElement: Focused } }).document
        .activeElement
      const style = (
        globalThis as unknown as {
          getComputedStyle: (e: unknown) => { outlineStyle: string; outlineWidth: string }
        }
      ).getComputedStyle(e)
      return {
        tag: e.tagName,
        id: e.id,
        name: e.getAttribute('name'),
        text: e.textContent?.trim() ?? '',
        ring: `${style.outlineStyle} ${style.outlineWidth}`,
      }
    })
  type Focused = {
    tagName: string
    id: string
    textContent: string | null
    getAttribute: (n: string) => string | null
  }
  await page.keyboard.press('Tab')
  expect((await focused()).text).toBe('To the page')
  await page.keyboard.press('Enter')
  const order: string[] = []
  for (let n = 0; n < 4; n += 1) {
    await page.keyboard.press('Tab')
    const f = await focused()
    order.push(f.name ?? f.tag)
    expect([f.tag, f.ring]).toEqual([f.tag, 'solid 3px'])
  }
  expect(order).toEqual(['SUMMARY', 'value', 'BUTTON', 'A'])
  for (const _ of [1, 2]) await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('ArrowDown')
  const once = await page.locator('input[name=once]').first().inputValue()
  await page.keyboard.press('Enter')
  await page.locator(`input[name=once][value="${once}"]`).waitFor({ state: 'detached' })
  expect((await focused()).id).toBe('q')
  expect(await page.locator('[role=log] li').count()).toBe(1)
  // Past lines are read out as a log; the form stands outside it.
  expect(await page.locator('[role=log] form').count()).toBe(0)
  // The keys go on from the heading into the new question.
  await page.keyboard.press('Tab')
  const next = await page
    .locator('form[action*="/answers/"]')
    .evaluate(
      (form, d) =>
        form.contains(
          (d as unknown as { activeElement: never }).activeElement ??
            (form as unknown as { ownerDocument: { activeElement: never } }).ownerDocument
              .activeElement,
        ),
      {},
    )
  expect(next).toBe(true)
  // A refusal takes the focus to the summary, its link to the field.
  await page.goto(`/e/${docketOf(page)}/q/year`)
  await page.goto(`/e/${docketOf(page)}`)
  await leave(v)
})

it('a refusal with scripts moves the focus to the summary and from there to the field', async () => {
  const v = await visit()
  await begin(v)
  await pressAnswer(v, goOn(v.page))
  const focus = () =>
    v.page.evaluate(
      () =>
        (globalThis as unknown as { document: { activeElement: { id: string } } }).document
          .activeElement.id,
    )
  expect(await focus()).toBe('faults')
  await v.page.keyboard.press('Tab')
  await v.page.keyboard.press('Enter')
  expect(await focus()).toBe('f-value')
  await leave(v)
})

it('nothing jumps when an answer is taken, and nothing moves for who wants no motion', async () => {
  const v = await visit({ reducedMotion: 'reduce' })
  const { page } = v
  await begin(v)
  await page.evaluate(() => {
    const scope = globalThis as unknown as {
      shifts: number
      PerformanceObserver: new (
        f: (l: { getEntries: () => { value: number }[] }) => void,
      ) => { observe: (o: unknown) => void }
    }
    scope.shifts = 0
    new scope.PerformanceObserver((list) => {
      for (const e of list.getEntries()) scope.shifts += e.value
    }).observe({ type: 'layout-shift', buffered: true })
  })
  for (const value of ['saloon', null, 'mid']) {
    if (value) await page.locator(`input[value="${value}"]`).check()
    await pressAnswer(v, goOn(page))
    // Two frames: the browser reports a shift with the frame it happened in.
    await page.evaluate(
      () =>
        new Promise((done) => {
          const frame = (
            globalThis as unknown as { requestAnimationFrame: (f: () => void) => void }
          ).requestAnimationFrame
          frame(() => frame(() => done(undefined)))
        }),
    )
  }
  expect(await page.evaluate(() => (globalThis as unknown as { shifts: number }).shifts)).toBe(0)
  const moving = await page.evaluate(() => {
    const scope = globalThis as unknown as {
      document: {
        getAnimations: () => unknown[]
        querySelectorAll: (c: string) => Iterable<unknown>
      }
      getComputedStyle: (e: unknown) => {
        transitionDuration: string
        animationName: string
        scrollBehavior: string
      }
    }
    const all = [...scope.document.querySelectorAll('*')].map((e) => scope.getComputedStyle(e))
    return (
      all.filter(
        (s) =>
          s.transitionDuration !== '0s' ||
          s.animationName !== 'none' ||
          s.scrollBehavior === 'smooth',
      ).length + scope.document.getAnimations().length
    )
  })
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
  for (const [, check] of sheet.matchAll(/name="check" value="([^"]+)"/g))
    await post(owner, studio(), `/bench/${id}/lines`, [
      ['kind', 'checked'],
      ['check', check ?? ''],
    ]).catch(() => null)
  expect(revOf(await get(owner, studio(), `/studio/d/${id}`))).toMatch(/^\d+$/)
  const step = /name="step" value="([^"]+)"/.exec(sheet)?.[1] ?? ''
  await post(owner, studio(), `/bench/${id}/lines`, [
    ['kind', 'began'],
    ['step', step],
  ])
  await post(owner, studio(), `/bench/${id}/handover`, [['name', 'Ines Example']])
  await onPaper(customer, `/e/${id}/record`)
  await leave(customer, owner)
})
