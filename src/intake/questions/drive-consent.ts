import { danger, history, service } from '../conditions'
import { type Question, question } from '../question'
import { byYes } from '../reply'
import { whereCar } from './where-car'

export const driveConsent: Question<boolean> = question({
  id: 'drive-consent',
  topic: 'send',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) =>
    !danger(r, 'not-driving') &&
    (r.value(whereCar) === 'collect' || (history(r) && service(r, 'wheels-off'))),
  reply: (r) => byYes(r, driveConsent),
})
