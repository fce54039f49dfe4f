import { expect, it } from 'vitest'
import { axeFaults, CONTROLS, sideways, small } from './axe'
import { agreed, answered, dated, get, post, quoted, sent, signIn } from './quick'
import { here } from './set-up'
import { begin, button, goOn, OLD_CAR, press, pressAnswer, type Visitor } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const

type Looked = { readonly page: string; readonly fault: string }
const NARROW = { width: 320, height: 640 } as const

/** Everything folded is opened, so that nothing hides from the checks. */
const unfoldAll = (v: Visitor): Promise<unknown> =>
  v.page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")

/** Long: axe looks at every page there is. */
const PATIENCE = 240_000

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
  },
  PATIENCE,
)

it(
  'every page of the studio and the bench',
  async () => {
    const customer = await visit({ bypassCSP: true })
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
    await at(`/bench/${id}/handover`, 'hand-over, blocked')
    await post(v, studio(), `/bench/${id}/lines`, [
      ['kind', 'refitted'],
      [
        'removal',
        /name="removal" value="([^"]+)"/.exec(await get(v, studio(), `/bench/${id}`))?.[1] ?? '',
      ],
    ])
    const checks = await get(v, studio(), `/bench/${id}`)
    for (const check of new Set(
      [...checks.matchAll(/name="check" value="([^"]+)"/g)].map((m) => m[1] ?? ''),
    ))
      await post(v, studio(), `/bench/${id}/lines`, [
        ['kind', 'checked'],
        ['check', check],
      ])
    await at(`/bench/${id}/handover`, 'hand-over')
    await press(page, button(v, 'Hand over'))
    await customer.page.goto(`/e/${id}/record`)
    wrong.push(...(await look(customer, 'record')))
    expect(told(wrong)).toEqual([])
    await leave(v, customer)
  },
  PATIENCE,
)
