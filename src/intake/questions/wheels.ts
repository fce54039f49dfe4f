import { service, spare } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const WHEELS_OPTIONS = ['painted', 'polished-bare', 'powder', 'chrome', 'cracked'] as const
export type Wheels = (typeof WHEELS_OPTIONS)[number]

export const wheels: Question<Wheels> = question({
  id: 'wheels',
  topic: 'wheels',
  stage: 'narrow',
  kind: 'choice',
  options: WHEELS_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['painted', 0.7],
    ['powder', 0.1],
    ['polished-bare', 0.12],
    ['chrome', 0.03],
    ['cracked', 0.05],
  ],
  likelySource: 'own estimate',
  asked: (r) => service(r, 'wheels-off') && spare(r),
  reply: (r) => byOption(r, wheels),
})
