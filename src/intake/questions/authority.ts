import { history } from '../conditions'
import { question } from '../question'

export const AUTHORITY_OPTIONS = ['mine', 'lease-finance', 'family-or-company', 'not-mine'] as const
export type Authority = (typeof AUTHORITY_OPTIONS)[number]

export const authority = question<Authority>({
  id: 'authority',
  topic: 'send',
  stage: 'narrow',
  kind: 'choice',
  options: AUTHORITY_OPTIONS,
  asked: (r) => history(r),
})
