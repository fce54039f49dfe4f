import { history } from '../conditions'
import { type Question, question } from '../question'
import { byOption } from '../reply'

export const AUTHORITY_OPTIONS = ['mine', 'lease-finance', 'family-or-company', 'not-mine'] as const
export type Authority = (typeof AUTHORITY_OPTIONS)[number]

export const authority: Question<Authority> = question({
  id: 'authority',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: AUTHORITY_OPTIONS,
  asked: (r) => history(r),
  reply: (r) => byOption(r, authority),
})
