import { history, olderThan } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byLimit } from '../reply'
import { paintHistory } from './paint-history'

export const ownerSince: Question<number> = question({
  id: 'owner-since',
  topic: 'use',
  stage: 'narrow',
  kind: 'year',
  unsureAllowed: true,
  asked: (r) => history(r) && (olderThan(r, 2005) || !is(r, paintHistory, 'original')),
  min: 1900,
  max: 2100,
  reply: (r) => byLimit(r, ownerSince, [], 'given'),
})
