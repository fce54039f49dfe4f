import { type Contact, question } from '../question'

export const contact = question<Contact>({
  id: 'contact',
  topic: 'send',
  stage: 'send',
  kind: 'contact',
})
