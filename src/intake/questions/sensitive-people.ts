import { hasMould } from '../conditions'
import { question } from '../question'

export const sensitivePeople = question<boolean>({
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
})
