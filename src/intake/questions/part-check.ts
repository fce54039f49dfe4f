import { service } from '../conditions'
import { type Question, question } from '../question'
import type { Reader } from '../reader'
import { byOption } from '../reply'
import { body } from './body'

export const PART_CHECK_OPTIONS = ['service-wrong', 'body-wrong', 'both-right'] as const
export type PartCheck = (typeof PART_CHECK_OPTIONS)[number]

/** Work on a part this vehicle normally has not: a motorcycle's cabin, a boat's wheels. */
const noSuchPart = (r: Reader): boolean => {
  const kind = r.value(body)
  if (kind === 'motorcycle') return service(r, 'cabin') || service(r, 'roof')
  return kind === 'boat' && (service(r, 'wheels-off') || service(r, 'underside'))
}

export const partCheck: Question<PartCheck> = question({
  id: 'part-check',
  topic: 'wish',
  stage: 'first',
  kind: 'choice',
  options: PART_CHECK_OPTIONS,
  check: true,
  asked: noSuchPart,
  reply: (r) => byOption(r, partCheck),
})
