import { danger, history, service } from '../conditions'
import { question } from '../question'
import { whereCar } from './where-car'

export const driveConsent = question<boolean>({
  id: 'drive-consent',
  topic: 'send',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) =>
    !danger(r, 'not-driving') &&
    (r.value(whereCar) === 'collect' || (history(r) && service(r, 'wheels-off'))),
})
