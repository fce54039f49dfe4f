import { history } from '../conditions'
import { question } from '../question'

export const photos = question<readonly string[]>({
  id: 'photos',
  topic: 'send',
  stage: 'narrow',
  kind: 'photos',
  optional: true,
  asked: (r) => history(r),
})
