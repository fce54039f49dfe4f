import { history, olderThan } from '../conditions'
import { question } from '../question'
import { paintHistory } from './paint-history'

export const ownerSince = question<number>({
  id: 'owner-since',
  topic: 'use',
  stage: 'narrow',
  kind: 'year',
  unsureAllowed: true,
  asked: (r) => history(r) && (olderThan(r, 2005) || r.value(paintHistory) !== 'original'),
  min: 1900,
  max: 2100,
})
