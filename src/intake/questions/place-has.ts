import { type Question, question } from '../question'
import { whereCar } from './where-car'

export const PLACE_HAS_OPTIONS = ['power', 'water', 'roof', 'level'] as const
export type PlaceHas = (typeof PLACE_HAS_OPTIONS)[number]

export const placeHas: Question<readonly PlaceHas[]> = question({
  id: 'place-has',
  topic: 'send',
  stage: 'narrow',
  kind: 'multi',
  options: PLACE_HAS_OPTIONS,
  asked: (r) => r.value(whereCar) === 'at-home',
  reply: (r) => {
    const there = r.value(placeHas) ?? []
    const lacks = PLACE_HAS_OPTIONS.filter((o) => !there.includes(o))
    if (lacks.length === 0) return { key: 'reply.place-has.all' }
    return lacks.includes('roof')
      ? { key: 'reply.place-has.open' }
      : { key: 'reply.place-has.lacks', params: { lacks: lacks.map((o) => `q.place-has.o.${o}`) } }
  },
})
