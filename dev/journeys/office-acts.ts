import { press } from '../../tests/browser/visit'
import type { Stage } from './stage'

export const signIn = async ({ owner, bench, studio }: Stage): Promise<void> => {
  for (const [v, rights] of [
    [owner, 'owner'],
    [bench, 'bench'],
  ] as const) {
    await v.page.goto(await studio.signInLink(rights))
    await press(v.page, v.page.getByRole('button', { name: 'Sign in' }))
  }
}

export type Change = {
  readonly step: string
  readonly minutes?: number
  readonly price?: string
  readonly remove?: true
  readonly why: string
}

/** Looks at the docket, changes lines with their reasons, saves and sends; gives the private link. */
export const review = async (
  { owner, shoot }: Stage,
  id: string,
  changes: readonly Change[],
  message: string,
  round = '',
): Promise<string> => {
  const { page } = owner
  await page.goto('/studio')
  await shoot(page, `list${round}`)
  await page.goto(`/studio/d/${id}`)
  await shoot(page, `docket${round}`, { pieces: 2 })
  for (const c of changes) {
    const field = (what: string) => page.locator(`[name="${what}:${c.step}"]`)
    const fold = page.locator(`details:has(> .pair [name="minutes:${c.step}"])`)
    if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click()
    if (c.minutes !== undefined) await field('minutes').fill(String(c.minutes))
    if (c.price !== undefined) await field('price').fill(c.price)
    if (c.remove) await field('remove').check()
    await field('why').fill(c.why)
  }
  await page.locator('[name=message]').fill(message)
  const first = changes[0]?.step
  if (first) await shoot(page, `adjust${round}`, { at: `tr:has([name="minutes:${first}"])` })
  await press(page, page.locator('#lines button[value=save]'))
  await shoot(page, `revision${round}`, { at: '#revisions' })
  await press(page, page.locator('#revisions button').last())
  await shoot(page, `message${round}`, { at: '#revisions' })
  const text = await page.locator('[name=paste]').inputValue()
  const link = /http\S+\/l\/\S+/.exec(text)?.[0]
  if (link === undefined) throw new Error('no private link in the message')
  return link
}

export const replyTo = async ({ owner, shoot }: Stage, id: string, text: string): Promise<void> => {
  const { page } = owner
  await page.goto(`/studio/d/${id}`)
  await shoot(page, 'question', { at: '#reply' })
  await page.locator('#f-reply').fill(text)
  await press(page, page.locator('#reply button'))
}

/** Dates the job and goes to that day; both sign in anew, as after two weeks without a request. */
export const setDay = async (s: Stage, id: string, day: string): Promise<void> => {
  const { owner, shoot, studio } = s
  const { page } = owner
  await page.goto(`/studio/d/${id}`)
  await page.locator('input[name=start]').fill(day)
  await press(page, page.locator('form[action$="/date"] button'))
  await shoot(page, 'dated')
  studio.clock.now = Date.parse(`${day}T08:00:00Z`)
  await signIn(s)
}
