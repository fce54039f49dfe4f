import { history, service, wantsPaint } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const CHANGES_OPTIONS = ['air-ride', 'added-wiring', 'body-kit'] as const
export type Changes = (typeof CHANGES_OPTIONS)[number]

export const changes: Question<readonly Changes[]> = question({
  id: 'changes',
  topic: 'car',
  stage: 'narrow',
  kind: 'multi',
  options: CHANGES_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.8],
    [['body-kit'], 0.08],
    [['added-wiring'], 0.1],
    [['air-ride'], 0.02],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    history(r) &&
    (wantsPaint(r) ||
      service(r, 'wheels-off') ||
      service(r, 'underside') ||
      service(r, 'engine-bay')),
  reply: (r) => byWeight(r, changes, CHANGES_OPTIONS),
})
