import type { Catalogue } from '../render'

/** Words of the days: what stands against one, the list by day, what has to be in hand. */
export const daysWords: Catalogue = {
  'conflict.people':
    '{date:date}, {from:clock} to {to:clock}: {needed} people are needed, with {cars}, and {available|one is|# are} there.',
  'conflict.people.alone':
    '{date:date}, {from:clock} to {to:clock}: {needed} people are needed and {available|one is|# are} there.',
  'conflict.bay':
    '{date:date}, {from:clock} to {to:clock}: the bay is kept by {cars}; {needed} cars need one and there {available|is one|are #}.',
  'conflict.bay.alone':
    '{date:date}, {from:clock} to {to:clock}: {needed|a bay is|# bays are} needed and there {available|is one|are #}.',
  'conflict.lift':
    '{date:date}, {from:clock} to {to:clock}: the lift is taken by {cars}; {needed} cars need one and there {available|is one|are #}.',
  'conflict.lift.alone':
    '{date:date}, {from:clock} to {to:clock}: {needed|a lift is|# lifts are} needed and there {available|is one|are #}.',

  'page.setting.absences': 'Who is away',
  'page.setting.absences.hint':
    'One a line: name; first day; last day, as in Ada; 2026-07-01; 2026-07-10. Dates are planned with those who are there.',
  'error.ERR_ABSENCE':
    'One a line: name; first day; last day, each as year-month-day. One day needs no last.',
  'page.date.days': 'See the days',
  'page.against': 'Other cars stand against {date:date}. The job was not dated yet.',
  'page.against.ready':
    'Worked on in the hours the others leave, it is ready about {date:date} at {time:clock}; alone it would be {alone:date} at {aloneTime:clock}.',
  'page.against.free': 'The first day with nothing against it: {date:date}.',
  'page.against.free-at':
    'The first day with nothing against it: {date:date}, from {time:clock} on.',
  'page.against.none': 'None of the next 90 days is without something against it.',
  'page.against.take-free': 'Take {date:date}',
  'page.against.anyway': 'Take {date:date} all the same',
  'problem.not-now.moves': 'What moves has changed. Read it again, then move it.',
  'problem.not-now.not-free': 'Other cars stand against this day.',
  'error.ERR_NO_HOURS':
    'Nobody has an hour for it from this day on. Look at the hours, the days off and who is away.',

  'days.late':
    '{car} is behind: ready about {ready:date} at {readyTime:clock} instead of {was:date} at {wasTime:clock}.',
  'days.not-brought':
    '{car} was to come on {start:date} and is not checked in. Begun now it is ready about {ready:date} at {readyTime:clock}.',
  'days.moved':
    '{car} moves from {from:date} to {start:date}{at}, as {why:words} by {cars}. Ready about {ready:date} at {readyTime:clock}.',
  'days.at': ', {time:clock}',
  'days.at-opening': '',
  'days.lacks.people': 'its people are taken',
  'days.lacks.bay': 'its bay is taken',
  'days.lacks.lift': 'its lift is taken',
  'days.comes': '{car} comes: {title}.',
  'days.comes.at': '{car} comes at {time:clock}: {title}.',
  'days.work': '{from:clock} to {to:clock}: {car}{people||, up to # people at once}.',
  'days.dries':
    '{car} dries or cures and keeps the bay until {date:date}, {time:clock}; people are free.',
  'days.ready': '{car} is ready about {time:clock}.',
  'days.order': 'Order today at the latest, for {car}: {thing}.',
  'days.order.late': 'Was to be ordered by {date:date}, for {car}: {thing}.',
  'days.order.key': 'Comes with {car}: {thing}.',
  'days.away': '{name} is away.',
  'days.unplanned':
    '{car} comes: {title}. It was dated before days were held against each other; give it its day again to have it reckoned with.',

  'page.days-list': 'Days',
  'page.days-list.none': 'No car has a day yet.',
  'page.days-list.today': 'Today, {date:date}',
  'page.days.late': 'Later than dated',
  'page.days.changed':
    'This has changed since the page was opened. Nothing was moved; read it again.',
  'page.days.move.hint':
    'Each moved car gets its new day on its docket. Its owner is not told by this: tell them.',
  'page.days.move': 'Move {n|the car|all # cars}',
  'page.feed': 'Days in your calendar',
  'page.feed.none':
    'A calendar can read the days at a secret address. There is none yet. It names cars and references, no people.',
  'page.feed.since':
    'A calendar reads the days at the secret address made on {date:date}. A new one ends it at once.',
  'page.feed.make': 'Make the address',
  'page.feed.renew': 'Make a new address',
  'page.feed.lead':
    'Subscribe to this address in a calendar. Whoever has it can read the days, so keep it to yourself. It is shown this once; an earlier one no longer opens anything.',
  'page.feed.link': 'The address for calendars',
  'page.feed.back': 'Back to the days',
  'feed.comes': '{car} comes',
  'feed.work': '{car}',
  'feed.ready': '{car} ready',
  'nav.days': 'Days',

  'page.in-hand': 'In hand before the car comes',
  'page.in-hand.all': 'Everything is in hand.',
  'page.in-hand.open': '{n|One thing is|# things are} still to come.',
  'page.in-hand.for': 'for {steps}',
  'page.in-hand.state': 'How far is it: {thing}',
  'page.in-hand.wanted': 'wanted',
  'page.in-hand.on-its-way': 'on its way',
  'page.in-hand.in-hand': 'in hand',
  'page.in-hand.expected': 'Expected on',
  'page.in-hand.add': 'Something else is wanted',
  'page.in-hand.what': 'What kind of thing',
  'page.in-hand.part': 'a part for this car',
  'page.in-hand.product': 'a product',
  'page.in-hand.key': 'a key',
  'page.in-hand.trade': 'an outside trade',
  'page.in-hand.thing': 'What it is',
  'page.in-hand.order-by': 'To be ordered by',
  'page.in-hand.order-by.hint': 'Left empty: counted back from the day the car comes.',
  'page.in-hand.save': 'Keep what is in hand',
  'page.in-hand.by': 'Order by {date:date}.',
  'page.in-hand.by.late': 'Was to be ordered by {date:date}.',
  'page.in-hand.lead': 'Order about {n|a day|# days} before the car comes.',
  'page.in-hand.with-car': 'Comes with the car.',
  'page.in-hand.is-in-hand': 'In hand.',
  'page.in-hand.expected-on': 'On its way, expected {date:date}.',
  'page.in-hand.is-on-its-way': 'On its way.',
}
