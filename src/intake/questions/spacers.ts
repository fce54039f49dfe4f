import { history, service } from '../conditions'
import { question } from '../question'

export const spacers = question<boolean>({
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
})
