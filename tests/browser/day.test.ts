import { expect, it } from 'vitest'
import { estateDay } from '../../dev/journeys/estate-day'
import { signIn } from './quick'
import { here } from './set-up'

const { studio, browser, visit, leave } = here()

/** A phone on the trolley, without any script. */
const BENCH = { javaScriptEnabled: false, viewport: { width: 360, height: 740 } } as const

it('one whole day and the next morning: an estate from check-in to a hand-over with a part to come', async () => {
  const customer = await visit({ javaScriptEnabled: false })
  const owner = await visit({ javaScriptEnabled: false })
  const bench = await visit(BENCH)
  await signIn(owner, studio())
  await signIn(bench, studio(), 'bench')
  const shoot = async (): Promise<void> => {}
  const stage = { studio: studio(), browser: browser(), customer, owner, bench, shoot }
  const id = await estateDay(stage)

  const record = ((await customer.page.locator('main').textContent()) ?? '').replace(/\s+/g, ' ')
  // Read and polished, what is left for the next person, what stays open, and what was refused.
  for (const text of [
    'orbital, 12 mm',
    'soft foam',
    'B-0417',
    'hand lamp, 4000 K',
    'Tailgate badge, boot lid: not back on yet',
    'Badge pins: still to come',
    'It comes back on',
    'Asked and refused: Have the seam',
    '146,220 when it came, 146,224 when it left',
  ])
    expect([text, record.includes(text)]).toEqual([text, true])
  const state = await bench.page.request.get(`${studio().origin}/api/v1/dockets/${id}/sheet`)
  expect(((await state.json()) as { state: string }).state).toBe('handed-over')
  await leave(bench, owner, customer)
}, 240_000)
