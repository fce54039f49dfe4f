import type { Wanted } from '../../tests/browser/visit'
import { answerExtra, checkIn, findAndAsk, handOver } from './bench-acts'
import { openQuote, sayNo, sayYes, sendIt, tell } from './customer-acts'
import { review, setDay, signIn } from './office-acts'
import type { Stage } from './stage'

const ANSWERS: Wanted = {
  body: 'mpv',
  dangers: ['wet', 'growth'],
  size: 'large',
  year: '2014',
  services: ['cabin'],
  'cabin-state': 'family',
  'cabin-marks': ['milk', 'stains', 'sand'],
  'wet-where': ['boot'],
  'wet-source': 'unknown',
  'wet-depth': 'soaked',
  'wet-electrics': 'false',
  growth: ['mould-textile'],
  'mould-area': 'hand',
  'sensitive-people': 'false',
  use: 'daily-outdoors',
}

/** A family car with a wet boot and a smell: the first quote is declined, the second agreed to. */
export const familyCar = async (s: Stage): Promise<void> => {
  const id = await tell(s, ANSWERS, ['dangers', 'wet-source', 'mould-area'])
  await sendIt(s, id)
  await signIn(s)
  const first = await review(
    s,
    id,
    [{ step: 'check-in', minutes: 45, why: 'Photographs of the boot before anything is lifted' }],
    'We clean nothing before the leak is found and proven dry.',
  )
  await openQuote(s, first, 'quote', 2)
  await sayNo(s, 'Too much at once. Could we do it without the seats?')
  const second = await review(
    s,
    id,
    [{ step: 'seats-textile', remove: true, why: 'Asked for by the owner; the seats are dry' }],
    'Without the seats, as you asked.',
    '-again',
  )
  await openQuote(s, second, 'quote-again', 1)
  await sayYes(s, 'Ines Example')
  await setDay(s, id, '2026-10-19')
  await checkIn(s, id, '151 300')
  await findAndAsk(
    s,
    id,
    { place: 'boot, left', text: 'The seal of the rear lamp has shrunk; water runs in behind it.' },
    { text: 'Fit a new lamp seal and test with water', minutes: 120 },
  )
  await answerExtra(s, id, 'agree')
  await handOver(s, id, { mileage: '151 304', name: 'Ines Example' })
}
