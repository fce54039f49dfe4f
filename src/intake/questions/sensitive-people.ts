import { hasMould } from '../conditions'
import { type Question, question } from '../question'
import type { Reader } from '../reader'
import { byYes } from '../reply'
import { cabinMarks } from './cabin-marks'

/** A smell that strong cleaners or ozone would be used on. */
const smells = (r: Reader): boolean =>
  r.value(cabinMarks)?.some((m) => ['smoke', 'milk', 'urine', 'vomit'].includes(m)) === true

export const sensitivePeople: Question<boolean> = question({
  id: 'sensitive-people',
  topic: 'water',
  stage: 'first',
  kind: 'yesNo',
  unsureAllowed: true,
  likely: [
    [true, 0.3],
    [false, 0.7],
  ],
  likelySource: 'own estimate',
  asked: (r) => hasMould(r) || smells(r),
  reply: (r) => {
    const said = byYes(r, sensitivePeople)
    return hasMould(r) ? said : { key: `${said.key}-air` }
  },
})
