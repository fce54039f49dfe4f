import { hasMould } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const MOULD_AREA_OPTIONS = ['coin', 'hand', 'tray', 'larger'] as const
export type MouldArea = (typeof MOULD_AREA_OPTIONS)[number]

export const mouldArea: Question<MouldArea> = question({
  id: 'mould-area',
  topic: 'water',
  stage: 'first',
  kind: 'choice',
  options: MOULD_AREA_OPTIONS,
  unsureAllowed: true,
  likely: [
    ['coin', 0.25],
    ['hand', 0.4],
    ['tray', 0.2],
    ['larger', 0.15],
  ],
  likelySource: 'own estimate',
  carSd: 0.08,
  asked: (r) => hasMould(r),
  reply: (r) => byOption(r, mouldArea),
})
