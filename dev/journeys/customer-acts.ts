import {
  answer,
  begin,
  docketOf,
  openQuestion,
  press,
  type Wanted,
} from '../../tests/browser/visit'
import type { Stage } from './stage'

/** From the first page to the last question, with a picture of each question named. */
export const tell = async (
  { customer, studio, shoot }: Stage,
  wanted: Wanted,
  pictures: readonly string[],
): Promise<string> => {
  const { page } = customer
  await page.goto('/')
  await shoot(page, 'start')
  await begin(customer)
  for (let i = 0; i < 80; i += 1) {
    const question = await openQuestion(page)
    if (question === null) break
    if (pictures.includes(question))
      await shoot(page, `asks-${question}`, { at: 'form[action*="/answers/"]', above: 200 })
    // A person takes a moment; answers at once would be taken for a machine's.
    studio.clock.now += 9_000
    await answer(customer, question, wanted)
  }
  return docketOf(page)
}

/** Reads the range, agrees to be answered, sends. */
export const sendIt = async ({ customer, shoot }: Stage, id: string): Promise<void> => {
  const { page } = customer
  await page.goto(`/e/${id}/range`)
  await shoot(page, 'range', { pieces: 3 })
  await page.locator('input[name=consent]').check()
  await press(page, page.getByRole('button', { name: 'Send it' }))
  await shoot(page, 'sent')
}

export const openQuote = async (
  { customer, shoot }: Stage,
  link: string,
  name: string,
  pieces = 2,
): Promise<void> => {
  const { page } = customer
  await page.goto(link)
  await press(page, page.getByRole('button', { name: 'Open' }))
  await shoot(page, name, { pieces })
  await shoot(page, `${name}-decide`, { at: '#decide', pieces: 2 })
}

const speak = async ({ customer }: Stage, decision: 'ask' | 'decline', text: string) => {
  const { page } = customer
  const form = page.locator(`form:has(input[value=${decision}])`)
  const fold = page.locator(`details:has(input[value=${decision}])`)
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click()
  await form.locator('textarea').fill(text)
  await press(page, form.locator('button'))
}

export const askFirst = async (s: Stage, text: string): Promise<void> => {
  await speak(s, 'ask', text)
  await s.shoot(s.customer.page, 'asked')
}

export const sayNo = async (s: Stage, text: string): Promise<void> => {
  await speak(s, 'decline', text)
  await s.shoot(s.customer.page, 'declined')
}

export const sayYes = async ({ customer, shoot }: Stage, name: string): Promise<void> => {
  const { page } = customer
  for (const box of await page.locator('input[name="acknowledged[]"]').all()) await box.check()
  const form = page.locator('form:has(input[value=accept])')
  await form.locator('[name=name]').fill(name)
  await press(page, form.locator('button[type=submit], button').last())
  await shoot(page, 'agreed')
}
