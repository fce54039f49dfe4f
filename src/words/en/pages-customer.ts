import type { Catalogue } from '../render'

/** What the owner of the car reads besides questions, range and quote: links, the day, afterwards. */
export const customerWords: Catalogue = {
  'page.leave.make': 'Make me a private link',
  'page.leave.make.lead':
    'To go on with another device, or later when this browser has forgotten you, make a private link.',
  'page.leave.until':
    'It works until {date:date}, as often as you like, on any device. When it is old or lost, ask the studio: it can send you a new one, and nothing you told is lost by that.',
  'page.range.after-review.days':
    'A person reads every word and answers with a price and the days it takes. Until then, this is what we understood.',
  'page.problem.old-link':
    'A private link ends after 180 days, or when the data behind it was deleted. Ask the studio for a new one: it can make one for you at once, and your answers stay as they are.',
}
