import { danger } from '../conditions'
import { has } from '../facts/has'
import { type Question, question } from '../question'
import { byWeight } from '../reply'
import { growth } from './growth'

export const WARNING_LIGHTS_OPTIONS = ['engine', 'airbag', 'belt', 'brakes', 'other'] as const
export type WarningLights = (typeof WARNING_LIGHTS_OPTIONS)[number]

export const warningLights: Question<readonly WarningLights[]> = question({
  id: 'warning-lights',
  topic: 'water',
  stage: 'narrow',
  kind: 'multi',
  options: WARNING_LIGHTS_OPTIONS,
  unsureAllowed: true,
  likely: [
    [[], 0.6],
    [['airbag'], 0.12],
    [['engine'], 0.18],
    [['brakes'], 0.1],
  ],
  likelySource: 'own estimate',
  asked: (r) => danger(r, 'wet') || danger(r, 'not-driving') || has(r, growth, 'nest'),
  reply: (r) =>
    byWeight(r, warningLights, ['airbag', 'belt', 'brakes', 'engine', 'other'], {
      airbag: 'restraints',
      belt: 'restraints',
      engine: 'other',
    }),
})
