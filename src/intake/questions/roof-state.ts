import { history, service, wantsPaint } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { body } from './body'
import { roofKind } from './roof-kind'

export const ROOF_STATE_OPTIONS = [
  'dirty-green',
  'seams',
  'plastic-cloudy',
  'folded-wet',
  'stiff',
] as const
export type RoofState = (typeof ROOF_STATE_OPTIONS)[number]

export const roofState: Question<readonly RoofState[]> = question({
  id: 'roof-state',
  topic: 'car',
  stage: 'narrow',
  kind: 'multi',
  options: ROOF_STATE_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.35],
    [['dirty-green'], 0.35],
    [['plastic-cloudy'], 0.15],
    [['seams', 'dirty-green'], 0.15],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    is(r, roofKind, 'cloth', 'vinyl') &&
    (history(r) || (service(r, 'roof') && (!wantsPaint(r) || r.value(body) === 'convertible'))),
  reply: (r) =>
    byWeight(r, roofState, ['folded-wet', 'plastic-cloudy', 'seams', 'stiff', 'dirty-green']),
})
