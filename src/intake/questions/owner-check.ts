import { type Question, question } from '../question'
import type { Reader } from '../reader'
import { byOption } from '../reply'
import { oneOwner } from './one-owner'
import { ownerSince } from './owner-since'
import { year } from './year'

export const OWNER_CHECK_OPTIONS = ['since-wrong', 'car-year-wrong', 'more-owners'] as const
export type OwnerCheck = (typeof OWNER_CHECK_OPTIONS)[number]

/** A car is sold up to a year ahead of its model year, and may stand unsold for two (own estimate). */
const odd = (r: Reader): boolean => {
  const built = r.value(year)
  const since = r.value(ownerSince)
  if (built === undefined || since === undefined) return false
  return since < built - 1 || (r.value(oneOwner) === 'one' && since > built + 2)
}

export const ownerCheck: Question<OwnerCheck> = question({
  id: 'owner-check',
  topic: 'use',
  stage: 'narrow',
  kind: 'choice',
  options: OWNER_CHECK_OPTIONS,
  unsureAllowed: true,
  check: true,
  asked: odd,
  reply: (r) => byOption(r, ownerCheck),
})
