import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byYes } from '../reply'
import { payer } from './payer'
import { wetSource } from './wet-source'

export const claim: Question<boolean> = question({
  id: 'claim',
  topic: 'send',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) => r.value(payer) === 'insurer' || is(r, wetSource, 'flood', 'sewage'),
  reply: (r) => byYes(r, claim),
})
