import { hasMould } from '../conditions'
import { type Question, question } from '../question'
import { byYes } from '../reply'

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
  asked: (r) => hasMould(r),
  reply: (r) => byYes(r, sensitivePeople),
})
