import { danger, history, service } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'
import { year } from './year'

export const ENGINE_KIND_OPTIONS = ['combustion', 'hybrid', 'electric'] as const
export type EngineKind = (typeof ENGINE_KIND_OPTIONS)[number]

export const engineKind: Question<EngineKind> = question({
  id: 'engine-kind',
  topic: 'car',
  stage: 'narrow',
  kind: 'choice',
  options: ENGINE_KIND_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['combustion', 0.85],
    ['hybrid', 0.1],
    ['electric', 0.05],
  ],
  likelySource: 'own estimate',
  asked: (r) =>
    (r.as(year, (built) => built >= 2000) ?? true) &&
    (service(r, 'engine-bay') ||
      (history(r) &&
        (service(r, 'underside') ||
          danger(r, 'film') ||
          danger(r, 'wet') ||
          danger(r, 'not-driving')))),
  reply: (r) => byOption(r, engineKind, { hybrid: 'high-voltage', electric: 'high-voltage' }),
})
