import { danger } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { paintHistory } from './paint-history'

export const RESPRAY_PANELS_OPTIONS = [
  'bonnet',
  'roof',
  'boot',
  'front-left',
  'rear-left',
  'front-right',
  'rear-right',
  'left-doors',
  'right-doors',
  'front-bumper',
  'rear-bumper',
] as const
export type ResprayPanels = (typeof RESPRAY_PANELS_OPTIONS)[number]

export const resprayPanels: Question<readonly ResprayPanels[]> = question({
  id: 'respray-panels',
  topic: 'paint',
  stage: 'first',
  kind: 'multi',
  options: RESPRAY_PANELS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [['front-bumper'], 0.35],
    [['bonnet', 'front-bumper'], 0.2],
    [['front-left', 'front-bumper'], 0.15],
    [['rear-right', 'right-doors'], 0.15],
    [['rear-bumper'], 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    is(r, paintHistory, 'part') || (danger(r, 'fresh-paint') && !is(r, paintHistory, 'all')),
  reply: (r) => byWeight(r, resprayPanels),
})
