import { history } from '../conditions'
import { question } from '../question'

export const WHERE_CAR_OPTIONS = ['bring', 'collect', 'at-home'] as const
export type WhereCar = (typeof WHERE_CAR_OPTIONS)[number]

export const whereCar = question<WhereCar>({
  id: 'where-car',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: WHERE_CAR_OPTIONS,
  asked: (r) => history(r),
})
