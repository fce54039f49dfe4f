import { describe, expect, it } from 'vitest'
import { type Looked, look, told } from './look'
import { agreed, dated, get, post, quoted, revOf, sent, signIn } from './quick'
import { here } from './set-up'
import { acknowledgeAll, button, press, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = {
  body: 'hatchback',
  dangers: [],
  services: ['paint'],
  year: '2019',
  colour: 'mid',
  wish: 'improve',
  'paint-history': 'original',
} as const
const PATIENCE = 120_000

/** Opens what is folded; a look at the page has opened it already. */
const unfold = async ({ page }: Visitor, title: string): Promise<void> => {
  const fold = page.locator('details', { has: page.getByText(title, { exact: true }) })
  if ((await fold.getAttribute('open')) === null)
    await page.getByText(title, { exact: true }).click()
}

describe.each([
  { scripts: 'with scripts', js: true },
  { scripts: 'without scripts', js: false },
])('a customer who chooses, $scripts', ({ js }) => {
  const options = js ? { bypassCSP: true } : { javaScriptEnabled: false }
  const wrong: Looked[] = []
  const looked = async (v: Visitor, name: string): Promise<void> => {
    if (js) wrong.push(...(await look(v, name)))
  }

  it(
    'is offered ways that differ, names one with a limit for extras, and the sheet follows it',
    async () => {
      const v = await visit(options)
      const owner = await visit(options)
      await signIn(owner, studio())
      const id = await sent(v, studio(), CAR)

      // One option is no choice: the form comes back with what was chosen.
      await owner.page.goto(`/studio/d/${id}`)
      await owner.page.getByText('Give the customer a choice').click()
      await owner.page.locator('select[name=option-a]').selectOption('light')
      await press(owner.page, button(owner, /^Save as revision/))
      expect(await owner.page.textContent('main')).toContain('A choice needs two options')
      expect(await owner.page.locator('select[name=option-a]').inputValue()).toBe('light')
      await looked(owner, 'one option refused')
      await owner.page.locator('select[name=option-b]').selectOption('leave')
      await owner.page.locator('[name=option-b-text]').fill('You may come again for it.')
      await press(owner.page, button(owner, /^Save as revision/))
      const ways = await owner.page.locator('#revisions ul').first().textContent()
      expect(ways).toContain('A. One light pass')
      expect(ways).toContain('B. Leave the marks as they are')
      await press(owner.page, owner.page.locator('form[action$="/sending"] button'))

      const { page } = v
      await page.goto(`/e/${id}/quote`)
      expect(await page.locator('#options h3').allTextContents()).toEqual([
        'A. One light pass',
        'B. Leave the marks as they are',
      ])
      expect(await page.locator('#options').textContent()).toContain('You may come again for it.')
      expect(await page.locator('input[name=option]:checked').count()).toBe(0)
      await looked(v, 'quote with options')
      await acknowledgeAll(v)
      await page.getByLabel('Your full name').fill('Ines Example')
      await page.getByLabel('Extra work without asking').fill('a lot')
      await press(page, button(v, 'Yes, do what I chose'))
      expect(await page.getByLabel('Extra work without asking').inputValue()).toBe('a lot')
      await page.getByLabel('Extra work without asking').fill('80')
      await press(page, button(v, 'Yes, do what I chose'))
      expect(await page.textContent('main')).toContain('Choose one of the options.')
      await looked(v, 'no option chosen')
      await page.locator('input[name=option][value=b]').check()
      await page.locator('input[name=unanswered][value=named]').check()
      await page.getByLabel('Who decides then').fill('Rob Example, +353 1 555 0111')
      await press(page, button(v, 'Yes, do what I chose'))
      const main = (await page.textContent('main')) ?? ''
      expect(main).toContain('You chose B. Leave the marks as they are.')
      expect(main).toContain('up to €80.00 without asking')
      await looked(v, 'agreed with a choice')

      const sheet = await get(owner, studio(), `/bench/${id}`)
      expect(sheet).toContain('Rob Example, +353 1 555 0111')
      expect(sheet).not.toContain('step=polish-')
      expect(told(wrong)).toEqual([])
      await leave(v, owner)
    },
    PATIENCE,
  )

  it(
    'is asked about a smaller result before polishing, asks back, and says no with what to do',
    async () => {
      const v = await visit(options)
      const owner = await visit(options)
      await signIn(owner, studio())
      const id = await sent(v, studio(), CAR)
      await quoted(owner, studio(), id)
      await agreed(v, studio(), id)
      await dated(owner, studio(), id)
      for (const panel of ['bonnet', 'roof'])
        await post(owner, studio(), `/bench/${id}/lines`, [
          ['kind', 'reading'],
          ['panel', panel],
          ['of', 'panel'],
          ['values', '71 72 71'],
          ['probe', 'magnetic'],
        ])
      await owner.page.goto(`/bench/${id}`)
      await owner.page.getByText('Ask the owner about a smaller result').click()
      // Refused in words, with what was typed, also once the device drew its own sheet.
      await owner.page.getByLabel('What else to say').fill('The bonnet is thin.')
      await owner.page.getByLabel('New price of all the work').fill('a lot')
      const brought = owner.js ? owner.page.waitForResponse(/\/carried$/) : null
      await press(owner.page, button(owner, 'Ask, and wait with polishing'))
      if (brought) {
        await (await brought).finished()
        await owner.page.evaluate(
          () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
        )
      }
      expect(await owner.page.locator('#faults').count()).toBe(1)
      expect(await owner.page.getByLabel('New price of all the work').inputValue()).toBe('a lot')
      expect(await owner.page.getByLabel('What else to say').inputValue()).toBe(
        'The bonnet is thin.',
      )
      await owner.page.getByLabel('New price of all the work').fill('')
      await owner.page.getByLabel('What else to say').fill('The bonnet was sanded once.')
      await press(owner.page, button(owner, 'Ask, and wait with polishing'))
      await owner.page.locator('#smaller-result .note.stop').waitFor()
      expect(await owner.page.locator('#smaller-result').textContent()).toContain('bonnet')
      await looked(owner, 'bench waits for the yes')

      const { page } = v
      await page.goto(`/e/${id}/quote`)
      const card = page.locator('#re-issue')
      expect(await card.textContent()).toContain('The bonnet was sanded once.')
      expect(await card.textContent()).toContain('The price stays as agreed.')
      await looked(v, 'smaller result')
      await unfold(v, 'Ask something first')
      await page.getByLabel('Your question').fill('Would a repaint help?')
      await press(page, button(v, 'Send the question'))
      expect(await page.textContent('main')).toContain('Would a repaint help?')
      await owner.page.goto(`/studio/d/${id}`)
      expect(await owner.page.locator('#reply').textContent()).toContain('Would a repaint help?')

      await unfold(v, 'No, not like that')
      await press(page, button(v, 'Say no'))
      expect(await page.locator('.summary, [role=alert]').first().count()).toBe(1)
      await looked(v, 'no without what instead')
      await page.locator('input[name=instead][value=finish-only]').check()
      await press(page, button(v, 'Say no'))
      expect(await page.textContent('main')).toContain(
        'You said no: nothing is polished, the rest is finished.',
      )
      const sheet = await get(owner, studio(), `/bench/${id}`)
      expect(sheet).toContain('Do not polish; finish the rest.')
      expect(sheet).not.toContain('step=polish-')
      expect(revOf(await get(owner, studio(), `/studio/d/${id}`))).toMatch(/^\d+$/)
      expect(told(wrong)).toEqual([])
      await leave(v, owner)
    },
    PATIENCE,
  )
})
