import { history, wantsPaint } from '../conditions'
import { is } from '../facts/is'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { body } from './body'

export const PANEL_MATERIAL_OPTIONS = ['steel', 'aluminium', 'plastic-composite'] as const
export type PanelMaterial = (typeof PANEL_MATERIAL_OPTIONS)[number]

export const panelMaterial: Question<PanelMaterial> = question({
  id: 'panel-material',
  topic: 'paint',
  stage: 'narrow',
  kind: 'choice',
  options: PANEL_MATERIAL_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['steel', 0.8],
    ['aluminium', 0.12],
    ['plastic-composite', 0.08],
  ],
  likelySource: 'own estimate',
  // Aluminium and composite are found on sports cars of any age.
  asked: (r) =>
    wantsPaint(r) &&
    !is(r, body, 'motorcycle', 'boat') &&
    (history(r) || is(r, body, 'sports-car')),
  reply: (r) => byOption(r, panelMaterial),
})
