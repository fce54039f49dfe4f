import type { Wanted } from '../../tests/browser/visit'
import {
  answerExtra,
  checkIn,
  findAndAsk,
  handOver,
  measure,
  polished,
  workUntil,
} from './bench-acts'
import { askFirst, openQuote, sayYes, sendIt, tell } from './customer-acts'
import { replyTo, review, setDay, signIn } from './office-acts'
import type { Stage } from './stage'

const ANSWERS: Wanted = {
  body: 'saloon',
  dangers: ['film'],
  size: 'mid',
  year: '1974',
  services: ['paint', 'protect', 'stickers'],
  wish: 'improve',
  'paint-history': 'part',
  'respray-panels': ['left-doors', 'front-left', 'rear-left'],
  colour: 'red-orange-yellow',
  'cloth-test': 'part',
  'film-kind': ['lettering'],
  'film-where': ['doors'],
  'film-age': '30',
  'film-state': ['cracked'],
  defects: ['wash-marks', 'dull', 'nail-scratch'],
  use: 'weekend',
  'polished-before': 'several',
  'best-thing': 'The old lettering gone without a shadow.',
}

/** A 1970s saloon resprayed on one side, with old lettering on the doors; the customer has no script. */
export const saloon = async (s: Stage): Promise<void> => {
  const id = await tell(s, ANSWERS, ['dangers', 'cloth-test', 'film-state', 'contact'])
  await sendIt(s, id)
  await signIn(s)
  const link = await review(
    s,
    id,
    [{ step: 'check-in', minutes: 75, why: 'Two ages of paint: a photograph of every panel' }],
    'We begin with a corner of the lettering on the right door, the older paint.',
  )
  await openQuote(s, link, 'quote', 2)
  await askFirst(s, 'Will the shade of the letters show once they are gone?')
  await replyTo(
    s,
    id,
    'Most likely, yes: the paint around them has faded for thirty years. Polishing evens it a little, we cannot promise more.',
  )
  await s.customer.page.goto(`/e/${id}/quote`)
  await s.shoot(s.customer.page, 'replied')
  await sayYes(s, 'Ines Example')
  await setDay(s, id, '2026-10-05')
  await checkIn(s, id, '88 120')
  await workUntil(s, id, 'readings')
  await measure(
    s,
    id,
    [
      ['front-right', 'reference', '92 94 93 93'],
      ['bonnet', 'panel', '98 101 99 100 97'],
      ['right-front-door', 'panel', '104 103 105 104 104'],
      ['left-front-door', 'panel', '310 328 335 322 318'],
      ['rear-left', 'panel', '640 712 1180 905 588'],
      ['roof', 'panel', '95 96 94 95 95'],
    ],
    'readings',
  )
  await findAndAsk(
    s,
    id,
    { place: 'left rear wing', text: 'Filler under the colour, thick as a thumbnail; left alone.' },
    { text: 'Feather the step at the old masking edge on the left', minutes: 120 },
  )
  await answerExtra(s, id, 'refuse')
  await polished(s, id, 'bonnet', 'hand-finish')
  await handOver(s, id, {
    mileage: '88 121',
    name: 'Ines Example',
    open: 'The shade of the lettering stays visible on both doors.',
  })
}
