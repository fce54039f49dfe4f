import { expect, it } from 'vitest'
import { type Looked, look, told } from './look'
import { agreed, answered, dated, post, quoted, signIn } from './quick'
import { here } from './set-up'
import { answerUntil, begin, button, goOn, OLD_CAR, press, pressAnswer } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const

/** Long: axe looks at every page there is. */
const PATIENCE = 240_000

it(
  'every page a customer meets',
  async () => {
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
    await answerUntil(v, CAR, 'body')
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
      'where-car',
      'earlier-protection',
    ])
      await at(`/e/${id}/q/${q}`, q)
    await at(`/e/${id}`, 'all asked')
    await at(`/e/${id}/leave`, 'leave')
    await page.goto(`/e/${id}/leave`)
    await press(page, button(v, 'Make me a private link'))
    wrong.push(...(await look(v, 'link made')))
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
  },
  PATIENCE,
)
