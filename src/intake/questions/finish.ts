import { crowded, matte, olderThan, wantsPaint } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { clothTest } from './cloth-test'

export const FINISH_OPTIONS = ['solid', 'metallic'] as const
export type Finish = (typeof FINISH_OPTIONS)[number]

export const finish: Question<Finish> = question({
  id: 'finish',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: FINISH_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['metallic', 0.65],
    ['solid', 0.35],
  ],
  likelySource: 'own estimate',
  carSd: 0.02,
  asked: (r) =>
    wantsPaint(r) && !matte(r) && !crowded(r) && (olderThan(r, 2005) || is(r, clothTest, 'colour')),
  reply: (r) => byOption(r, finish),
})
