import type { Catalogue } from '../render'

/** Messages the studio sends on its own way: plain text, the link last. */
export const messageWords: Catalogue = {
  'message.amount': '{amount:money}',
  'message.quote':
    'Hello,\n\nyour quote {reference} from {studio} is ready: {total} with tax, open until {until:date}.\nPlease read what we would like you to decide before you say yes:\n{link}\n\nThis link is for you only.',
  'message.ask':
    'Hello,\n\nabout your enquiry {reference} at {studio} we would like to ask one thing again: {question}\nYou can answer here:\n{link}\n\nThis link is for you only.',
  'message.look-over':
    'Hello,\n\nbefore we can name a price for {reference} we would like to look the car over: about {minutes:hours}, {price}. What we find stands on your page:\n{link}\n\n{studio}. This link is for you only.',
  'message.turned-down':
    'Hello,\n\nthank you for asking us about your car ({reference}). We cannot take it on; why, and who may help, stands here:\n{link}\n\n{studio}',
  'message.reply':
    'Hello,\n\nwe have replied to your question about {reference}. You can read it here:\n{link}\n\n{studio}. This link is for you only.',
  'message.day':
    'Hello,\n\nplease bring your car ({reference}) on {date:date}{at}. By our cautious reckoning it is ready on {ready:date}. How it stands, and a file for your calendar, is here:\n{link}\n\n{studio}. This link is for you only.',
  'message.smaller':
    'Hello,\n\nwe have measured the paint of your car ({reference}) and would do less than we planned. Please read why, and tell us whether we should go on:\n{link}\n\n{studio}. This link is for you only.',
  'message.extra':
    'Hello,\n\nwe found something on your car ({reference}) and stopped to ask. It would add {total}. Please look and tell us yes or no:\n{link}',
}
