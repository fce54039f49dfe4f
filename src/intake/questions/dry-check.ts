import { type Question, question } from '../question'
import { byYes } from '../reply'
import { wetDepth } from './wet-depth'
import { wetSource } from './wet-source'

export const dryCheck: Question<boolean> = question({
  id: 'dry-check',
  topic: 'water',
  stage: 'first',
  kind: 'yesNo',
  unsureAllowed: true,
  likely: [
    [false, 0.5],
    [true, 0.5],
  ],
  likelySource: 'own estimate',
  check: true,
  asked: (r) =>
    r.value(wetSource) === 'repaired' &&
    (r.value(wetDepth) === 'soaked' || r.value(wetDepth) === 'standing'),
  reply: (r) => byYes(r, dryCheck),
})
