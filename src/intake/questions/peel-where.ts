import { danger } from '../conditions'
import { type Question, question } from '../question'
import { byWeight } from '../reply'

export const PEEL_WHERE_OPTIONS = ['bonnet', 'roof', 'boot', 'wings', 'doors', 'edges'] as const
export type PeelWhere = (typeof PEEL_WHERE_OPTIONS)[number]

export const peelWhere: Question<readonly PeelWhere[]> = question({
  id: 'peel-where',
  topic: 'paint',
  stage: 'first',
  kind: 'multi',
  options: PEEL_WHERE_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['roof'], 0.3],
    [['bonnet'], 0.2],
    [['bonnet', 'roof'], 0.25],
    [['edges'], 0.15],
    [['bonnet', 'roof', 'boot', 'wings'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'peeling'),
  reply: (r) => byWeight(r, peelWhere, ['edges']),
})
