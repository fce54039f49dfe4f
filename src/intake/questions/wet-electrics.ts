import { danger } from '../conditions'
import { question } from '../question'

export const wetElectrics = question<boolean>({
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
})
