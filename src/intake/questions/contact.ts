import { type Contact, type Question, question } from '../question'

export const contact: Question<Contact> = question({
  id: 'contact',
  topic: 'send',
  stage: 'send',
  kind: 'contact',
  reply: (r) => ({
    key: r.value(contact)?.phone === undefined ? 'reply.contact.email' : 'reply.contact.phone',
  }),
})
