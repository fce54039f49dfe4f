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
import { openQuote, sayYes, sendIt, tell } from './customer-acts'
import { review, setDay, signIn } from './office-acts'
import type { Stage } from './stage'

const ANSWERS: Wanted = {
  body: 'hatchback',
  dangers: [],
  size: 'mid',
  year: '2026',
  services: ['paint', 'protect'],
  wish: 'improve',
  'paint-history': 'original',
  colour: 'black',
  defects: ['haze', 'wash-marks'],
  use: 'daily-garaged',
  deadline: '2026-10-30',
  'polished-before': 'often-or-dealer',
  budget: '900',
}

/** A nearly new dark car with delivery swirls and a coating wish; the bench works in the dark scheme. */
export const darkCar = async (s: Stage): Promise<void> => {
  const id = await tell(s, ANSWERS, ['body', 'defects', 'deadline'])
  await sendIt(s, id)
  await signIn(s)
  const link = await review(
    s,
    id,
    [{ step: 'coating', price: '290', why: 'The coating of the house at its usual price' }],
    'After the coating the car stays dry for a day and unwashed for about a week.',
  )
  await openQuote(s, link, 'quote', 2)
  await sayYes(s, 'Ines Example')
  await setDay(s, id, '2026-10-12')
  await checkIn(s, id, '640')
  await workUntil(s, id, 'readings')
  await measure(
    s,
    id,
    [
      ['front-left', 'reference', '108 110 109 109'],
      ['bonnet', 'panel', '118 119 117 118 118'],
      ['roof', 'panel', '115 114 116 115 115'],
      ['left-front-door', 'panel', '121 122 120 121 121'],
      ['right-front-door', 'panel', '104 103 104 103 104'],
      ['boot', 'panel', '117 118 117 116 118'],
    ],
    'readings',
  )
  await polished(s, id, 'bonnet', 'light-finish')
  await polished(s, id, 'left-front-door', 'light-finish')
  await findAndAsk(
    s,
    id,
    { place: 'right front door', text: 'Polished at the dealer: a thin place, no edge to spare.' },
    { text: 'Remove transit glue along the sills', minutes: 45 },
  )
  await answerExtra(s, id, 'agree')
  await measure(s, id, [['bonnet', 'panel', '116 117 116 116 117']], 'after')
  await handOver(s, id, { mileage: '641', name: 'Ines Example' })
}
