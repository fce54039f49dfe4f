import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byYes } from '../reply'

export const wetElectrics: Question<boolean> = question({
  id: 'wet-electrics',
  topic: 'water',
  stage: 'first',
  kind: 'yesNo',
  unsureAllowed: true,
  likely: [
    [true, 0.25],
    [false, 0.75],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'wet'),
  reply: (r) => byYes(r, wetElectrics),
})
