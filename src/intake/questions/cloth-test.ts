import { matte, olderThan, wantsPaint } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { body } from './body'
import { paintHistory } from './paint-history'

export const CLOTH_TEST_OPTIONS = ['colour', 'clean', 'part'] as const
export type ClothTest = (typeof CLOTH_TEST_OPTIONS)[number]

export const clothTest: Question<ClothTest> = question({
  id: 'cloth-test',
  topic: 'paint',
  stage: 'first',
  kind: 'choice',
  options: CLOTH_TEST_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['clean', 0.6],
    ['colour', 0.3],
    ['part', 0.1],
  ],
  likelySource: 'own estimate',
  carSd: 0.04,
  asked: (r) =>
    wantsPaint(r) &&
    !matte(r) &&
    r.value(body) !== 'boat' &&
    (olderThan(r, 2000) || is(r, paintHistory, 'part', 'all')),
  reply: (r) => byOption(r, clothTest),
})
