import type { Catalogue } from '../render'

/** Options of a quote: what each is, how it differs, and what it leaves for later. */
export const optionWords: Catalogue = {
  'option.why': 'option {letter}',
  'option.name': '{letter}. {what}',
  'option.name-panels': '{letter}. {what}: {panels}',
  'option.leave': 'Leave the marks as they are',
  'option.finishing': 'One finishing pass',
  'option.light': 'One light pass',
  'option.two-step': 'Cut and finish, two passes',
  'option.repaint': 'Leave it to a licensed body shop',
  'option.leave.leaves':
    'For later: the marks stay, and so does all of the paint. It can still be polished another time.',
  'option.finishing.leaves':
    'For later: takes up to about {high}\u00a0µm of the paint for good. Only haze and the finest marks go; the others can be polished another time as far as the paint allows.',
  'option.light.leaves':
    'For later: takes up to about {high}\u00a0µm of the paint for good. Deeper scratches stay; they can be polished another time as far as the paint allows.',
  'option.two-step.leaves':
    'For later: takes about {low} to {high}\u00a0µm of the paint for good. There may be too little left for a second time, and what catches a nail stays.',
  'option.repaint.leaves':
    'For later: we do not polish there. The body shop names its own price, which is not in this figure. New paint has to harden before it is polished or protected: ask the painter how long.',
  'option.costs': '{total:money} in all',
  'option.beside': 'likely between {low:money} and {high:money}',
  'option.days': '{n|about one day|about # days}',
  'option.only': 'Only here: {steps}.',
  'option.lines': 'Line by line: {name}',
  'option.chosen': 'You chose {name}.',
  'page.options': 'You choose',
  'page.options.lead':
    'These differ only as said here; everything else is the same. None is chosen for you.',
  'page.options.offer': '{n} ways to do it, from {low} to {high}',
  'page.decide.for-option': 'Counts for {options}.',
  'page.limit': 'If we find more on the way',
  'page.limit.lead':
    'We ask before anything costs more than you agreed to. You may say now what needs no asking.',
  'page.limit.amount': 'Extra work without asking, up to this much in all',
  'page.limit.amount.hint': 'With tax. Leave it empty, or type 0, and we ask every time.',
  'page.limit.amount.suggested':
    'With tax. The studio suggests {amount}. Leave it empty, or type 0, and we ask every time.',
  'page.limit.unanswered': 'If we ask and nobody answers within a day',
  'page.limit.wait': 'Stop and wait for me',
  'page.limit.wait.hint': 'The day it is ready may move.',
  'page.limit.least': 'Do the least that keeps the car safe, and leave the rest',
  'page.limit.least.hint': 'The extra work is not done and costs nothing.',
  'page.limit.named': 'Somebody else decides',
  'page.limit.named.hint': 'Name them below.',
  'page.limit.decides': 'Who decides then, and how to reach them',
  'page.limit.agreed':
    'Agreed beforehand: extra work up to {limit:money} in all without asking, {left:money} of it left.',
  'page.limit.none': 'Nothing agreed beforehand: ask before any extra work.',
  'page.limit.if-wait': 'If nobody answers: stop and wait.',
  'page.limit.if-least': 'If nobody answers: do the least that keeps the car safe, leave the rest.',
  'page.limit.if-named': 'If nobody answers, this person decides: {name}',
  'page.limit.if-named-there':
    'If nobody answers, the person named on the docket decides; the studio knows who.',
  'page.limit.yours': 'You agreed to extra work up to {limit:money} without asking.',
  'page.limit.yours-none': 'We ask you before any extra work.',
  'page.quote.law':
    'What you may take back, and until when, is a matter of the law where you live; these terms do not change it.',
  'page.adjust.options': 'Give the customer a choice',
  'page.adjust.options.changed': 'A choice is offered',
  'page.adjust.options.hint':
    'Two or three ways to treat the paint, each reckoned by itself. All other changes of this form count for every one. Say nothing here for a quote without a choice.',
  'page.adjust.option': 'Option {letter}',
  'page.adjust.option.how': 'What is done',
  'page.adjust.option.none': 'not offered',
  'page.adjust.option.panels': 'Only these panels (none: the whole car)',
  'page.adjust.option.text': 'What you say about it',
  'page.revision.option': '{name}: {total}',
  'diff.options': 'The choice of options is another one.',
  'message.quote-options':
    'Hello,\n\nyour quote {reference} from {studio} is ready. You choose between {n} ways to do it, from {low} to {high} with tax, open until {until:date}.\nPlease read what we would like you to decide before you say yes:\n{link}\n\nThis link is for you only.',
  'error.ERR_TWO_OPTIONS': 'A choice needs two options or three. Add one, or take this one out.',
  'error.ERR_SAME_OPTION':
    'This option comes to the same work as one before it, perhaps since the readings allow no more. Choose another treatment, or take it out.',
  'error.ERR_OPTION_PANEL': 'This car has no such panel.',
}
