import type { Catalogue } from '../render'

/** Messages the studio sends on its own way: plain text, the link last. */
export const messageWords: Catalogue = {
  'message.amount': '{amount:money}',
  'message.quote':
    'Hello,\n\nyour quote {reference} from {studio} is ready: {total} with tax, open until {until:date}.\nPlease read what we would like you to decide before you say yes:\n{link}\n\nThis link is for you only.',
  'message.extra':
    'Hello,\n\nwe found something on your car ({reference}) and stopped to ask. It would add {total}. Please look and tell us yes or no:\n{link}',
}
