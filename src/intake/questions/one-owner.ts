import { history, olderThan } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { paintHistory } from './paint-history'

export const ONE_OWNER_OPTIONS = ['one', 'few', 'many'] as const
export type OneOwner = (typeof ONE_OWNER_OPTIONS)[number]

export const oneOwner: Question<OneOwner> = question({
  id: 'one-owner',
  topic: 'use',
  stage: 'narrow',
  kind: 'choice',
  options: ONE_OWNER_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['one', 0.3],
    ['few', 0.5],
    ['many', 0.2],
  ],
  likelySource: 'own estimate',
  asked: (r) => history(r) && (olderThan(r, 2005) || !is(r, paintHistory, 'original')),
  reply: (r) => byOption(r, oneOwner),
})
