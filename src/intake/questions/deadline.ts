import { danger, service } from '../conditions'
import { type Question, question } from '../question'

export const deadline: Question<string> = question({
  id: 'deadline',
  topic: 'wish',
  stage: 'first',
  kind: 'date',
  optional: true,
  reply: (r) => {
    const day = r.value(deadline)
    if (day === undefined) return { key: 'reply.deadline.none' }
    const waits = danger(r, 'wet') ? 'wet' : service(r, 'protect') ? 'cure' : 'given'
    return { key: `reply.deadline.${waits}`, params: { day } }
  },
})
