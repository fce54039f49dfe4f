import { expect, it } from 'vitest'
import { small } from './axe'
import { type Looked, look, told } from './look'
import { agreed, dated, get, post, sent } from './quick'
import { here } from './set-up'
import { button, OLD_CAR, press } from './visit'

const { studio, visit, leave } = here()
const CAR = { ...OLD_CAR, services: ['paint', 'wheels-off'] } as const

/** Long: axe looks at every page there is. */
const PATIENCE = 240_000

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
    await page.locator('[name=discount]').fill('20')
    await page.locator('[name=whole-why]').fill('A friend')
    await press(page, button(v, 'Try without saving'))
    wrong.push(...(await look(v, 'docket on trial')))
    await at(`/studio/d/${id}/answers/year`, 'changing an answer')
    await at('/studio/new', 'opening a docket')
    await press(page, button(v, 'Open it'))
    wrong.push(...(await look(v, 'opening refused')))
    await at('/studio/settings/work', 'work and words')
    await page.goto('/studio/settings')
    await press(page, button(v, 'Try on the latest 20'))
    wrong.push(...(await look(v, 'settings tried')))
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
    await button(v, 'Begin').click()
    await expect
      .poll(() => page.locator('#step').textContent(), { timeout: 15_000 })
      .toContain('Running')
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
