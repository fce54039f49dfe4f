import { history } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const WHERE_CAR_OPTIONS = ['bring', 'collect', 'at-home'] as const
export type WhereCar = (typeof WHERE_CAR_OPTIONS)[number]

export const whereCar: Question<WhereCar> = question({
  id: 'where-car',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: WHERE_CAR_OPTIONS,
  asked: (r) => history(r),
  reply: (r) => byOption(r, whereCar),
})
