import { history, service } from '../conditions'
import { type Question, question } from '../question'
import { byYes } from '../reply'

export const spacers: Question<boolean> = question({
  id: 'spacers',
  topic: 'wheels',
  stage: 'narrow',
  kind: 'yesNo',
  unsureAllowed: true,
  likely: [
    [true, 0.08],
    [false, 0.92],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'wheels-off') && history(r),
  reply: (r) => byYes(r, spacers),
})
