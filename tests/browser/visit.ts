import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
import type { Studio } from './studio'

export const PHONE = { width: 390, height: 844 } as const

export type Visitor = {
  readonly page: Page
  readonly js: boolean
  /** Whatever ran, failed or went elsewhere that must not: each test looks at it at the end. */
  readonly trouble: string[]
}

/** A new browser profile with one page open; dialogs, script errors and foreign requests are written down. */
export const visit = async (
  browser: Browser,
  studio: Studio,
  options: BrowserContextOptions = {},
): Promise<Visitor> => {
  const context = await browser.newContext({ viewport: PHONE, baseURL: studio.origin, ...options })
  const page = await context.newPage()
  page.setDefaultTimeout(15_000)
  const trouble: string[] = []
  page.on('dialog', (d) => {
    trouble.push(`dialog: ${d.message()}`)
    void d.dismiss()
  })
  page.on('pageerror', (e) => trouble.push(`error: ${e.message}`))
  page.on('console', (m) => {
    // The browser reports each refused answer as an error of its own; the tests look at those.
    if (m.type() === 'error' && !m.text().startsWith('Failed to load resource'))
      trouble.push(`console: ${m.text()}`)
  })
  page.on('request', (r) => {
    const url = new URL(r.url())
    if (url.protocol.startsWith('http') && url.origin !== studio.origin)
      trouble.push(`foreign: ${r.url()}`)
  })
  page.on('response', (r) => {
    if (r.status() >= 500) trouble.push(`${r.status()}: ${r.url()}`)
  })
  return { page, js: options.javaScriptEnabled !== false, trouble }
}

/** Presses what loads a new page and waits until it is there. */
export const press = async (page: Page, button: Locator): Promise<void> => {
  const there = page.waitForEvent('domcontentloaded')
  await button.click()
  await there
}

/** Presses a button of the conversation: with scripts the page stays and only its parts change. */
export const pressAnswer = async ({ page, js }: Visitor, button: Locator): Promise<void> => {
  if (!js) return press(page, button)
  const once = await page.locator('input[name=once]').first().inputValue()
  await button.click()
  await page.locator(`input[name=once][value="${once}"]`).first().waitFor({ state: 'detached' })
  await page.waitForLoadState('domcontentloaded')
}

/** The question that stands open on the page; null when none does. */
export const openQuestion = async (page: Page): Promise<string | null> => {
  const form = page.locator('form[action*="/answers/"]')
  if ((await form.count()) === 0) return null
  return (await form.getAttribute('action'))?.split('/').at(-1) ?? null
}

/** The piece of the page that says so, or that it does not: a whole page would bury the fault. */
export const said = async ({ page }: Visitor, pattern: RegExp): Promise<string> =>
  pattern.exec((await page.locator('main').textContent()) ?? '')?.[0] ?? 'not said'

export const button = ({ page }: Visitor, name: string | RegExp): Locator =>
  page.getByRole('button', { name })

export const goOn = (page: Page): Locator =>
  page.locator('form[action*="/answers/"]').getByRole('button', { name: 'Go on' })
export const notSure = (page: Page): Locator => page.locator('button[name=unsure]')
export const leaveOut = (page: Page): Locator => page.locator('button[name=skip]')

/** Values by question: an option, several, what is typed, or `unsure`; the rest is left out or the first. */
export type Wanted = Readonly<Record<string, string | readonly string[]>>

export const CONTACT = { name: 'Ines Example', email: 'ines@example.com' } as const

/** Fills the open question without sending it. */
export const fillIn = async (page: Page, value: string | readonly string[]): Promise<void> => {
  const form = page.locator('form[action*="/answers/"]')
  if (typeof value !== 'string') {
    for (const v of value) await form.locator(`input[value="${v}"]`).check()
    return
  }
  if ((await form.locator('input[type=radio]').count()) > 0)
    await form.locator(`input[type=radio][value="${value}"]`).check()
  else await form.locator('[name=value]').fill(value)
}

/** Answers the open question as wanted. */
export const answer = async (v: Visitor, question: string, wanted: Wanted): Promise<void> => {
  const { page } = v
  const value = wanted[question]
  if (value === 'unsure') return pressAnswer(v, notSure(page))
  if (value !== undefined) await fillIn(page, value)
  else if ((await leaveOut(page).count()) > 0) return pressAnswer(v, leaveOut(page))
  else if ((await page.locator('input[name=name]').count()) > 0) {
    await page.locator('input[name=name]').fill(CONTACT.name)
    await page.locator('input[name=email]').fill(CONTACT.email)
  } else if ((await notSure(page).count()) > 0) return pressAnswer(v, notSure(page))
  else if ((await page.locator('input[type=radio]').count()) > 0)
    await page.locator('input[type=radio]').first().check()
  await pressAnswer(v, goOn(page))
}

/** Answers until the question asked for stands open, or none is; gives the questions answered. */
export const answerUntil = async (
  v: Visitor,
  wanted: Wanted,
  until?: string,
): Promise<readonly string[]> => {
  const done: string[] = []
  for (;;) {
    const question = await openQuestion(v.page)
    if (question === null || question === until) return done
    if (done.includes(question)) throw new Error(`${question} was asked again at once`)
    await answer(v, question, wanted)
    done.push(question)
    if (done.length > 60) throw new Error('the questions do not end')
  }
}

/** Fills a box past the length the browser would stop at: a program does not stop there. */
export const overfill = async (box: Locator, text: string): Promise<void> => {
  await box.evaluate((e) => e.removeAttribute('maxlength'))
  await box.fill(text)
}

export const begin = async (v: Visitor): Promise<void> => {
  await v.page.goto('/')
  await press(v.page, v.page.getByRole('button', { name: 'Begin' }))
}

/** The docket's id from an address of its pages. */
export const docketOf = (page: Page): string => new URL(page.url()).pathname.split('/')[2] ?? ''

/** A car on whose way every kind of question comes up. */
export const EVERY_KIND: Wanted = {
  body: 'saloon',
  dangers: ['film'],
  size: 'mid',
  year: 'unsure',
  services: ['stickers'],
  'paint-history': 'part',
  'respray-panels': ['left-doors', 'front-left'],
  'film-kind': ['lettering'],
  'film-where': ['doors'],
  'film-age': '30',
  'film-state': ['cracked'],
  use: 'weekend',
  deadline: '2027-03-15',
  'best-thing': 'The lettering must leave no shadow',
  budget: '1.250,50',
  'owner-since': '1999',
  'where-car': 'collect',
  'drive-consent': 'true',
  vin: '1M8GDM9AXKP042788',
  'free-dates': 'Any day in March',
}

/** An old saloon, resprayed on one side, with lettering and marks to polish: it gets notes to decide on. */
export const OLD_CAR: Wanted = {
  body: 'saloon',
  dangers: ['film'],
  size: 'mid',
  year: '1974',
  services: ['paint', 'protect'],
  wish: 'improve',
  'paint-history': 'part',
  'respray-panels': ['left-doors', 'front-left', 'rear-left'],
  colour: 'red-orange-yellow',
  'cloth-test': 'colour',
  'film-kind': ['lettering'],
  'film-where': ['doors'],
  'film-age': '30',
  'film-state': ['cracked'],
  defects: ['wash-marks', 'nail-scratch'],
  use: 'weekend',
}

export const openByLink = async (v: Visitor, link: string): Promise<void> => {
  await v.page.goto(link)
  await press(v.page, button(v, 'Open'))
}

export const acknowledgeAll = async (v: Visitor): Promise<void> => {
  for (const box of await v.page.locator('input[name="acknowledged[]"]').all()) await box.check()
}
