import { question } from '../question'
import { payer } from './payer'
import { wetSource } from './wet-source'

export const claim = question<boolean>({
  id: 'claim',
  topic: 'send',
  stage: 'narrow',
  kind: 'yesNo',
  asked: (r) =>
    r.value(payer) === 'insurer' ||
    r.value(wetSource) === 'flood' ||
    r.value(wetSource) === 'sewage',
})
