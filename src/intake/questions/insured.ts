import { type Question, question } from '../question'
import { byYes } from '../reply'
import { driveConsent } from './drive-consent'

export const insured: Question<boolean> = question({
  id: 'insured',
  topic: 'send',
  stage: 'narrow',
  kind: 'yesNo',
  unsureAllowed: true,
  likely: [
    [true, 0.85],
    [false, 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) => r.value(driveConsent) === true,
  reply: (r) => byYes(r, insured),
})
