import { type Question, question } from '../question'
import { byYes } from '../reply'
import { authority } from './authority'

export const ownerConsent: Question<boolean> = question({
  id: 'owner-consent',
  topic: 'send',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) => r.value(authority) !== undefined && r.value(authority) !== 'mine',
  reply: (r) => byYes(r, ownerConsent),
})
