import { history } from '../conditions'
import { type Question, question } from '../question'

export const photos: Question<readonly string[]> = question({
  id: 'photos',
  topic: 'send',
  stage: 'narrow',
  kind: 'photos',
  optional: true,
  asked: (r) => history(r),
  reply: (r) => {
    const n = r.value(photos)?.length ?? 0
    return n === 0 ? { key: 'reply.photos.none' } : { key: 'reply.photos.given', params: { n } }
  },
})
