import type { Catalogue } from '../render'

/** The chain behind a figure, said as `reason.<rule>` with the row it took. */
export const reasonWords: Catalogue = {
  'reason.minutes':
    'Table of minutes, row {row}: {optimistic} to {pessimistic}, most often {likely}, times {times}.',
  'reason.by-hand': 'Minutes set by the studio.',
  'reason.mixed': 'Something is not known: mixed over {states} states the car may be in.',
  'reason.pace': 'Times the studio’s own pace, {pace}.',
  'reason.lag.dwell': 'Then {minutes:hours} for it to work.',
  'reason.lag.dry': 'Then {minutes:hours} to dry.',
  'reason.lag.cure': 'Then {minutes:hours} to cure.',
  'reason.lag.answer': 'Then {minutes:hours} for an answer.',
  'reason.event':
    'Table of what may turn up, row {row}: chance {chance:percent}, {optimistic} to {pessimistic} minutes, most often {likely}.',
  'reason.note': 'Raised from {least:percent} on; here it stands at {chance:percent}.',
  'reason.limit': 'Table of paint limits, row {row}: {value}.',
  'reason.prior':
    'Expected before anybody measured, row {row}, weight {weight:percent}: topcoat {topcoat} ± {topcoatSd} µm over {undercoat} ± {undercoatSd} µm.',
  'reason.rate': '{rate:money} an hour and {materials:money} for materials.',
  'reason.offer.percentile':
    'Enough in {share:percent} of such cases, and not below the mean: {amount:money} before changes by hand.',
  'reason.offer.mean':
    'The mean, as it is above the amount enough in {share:percent}: {amount:money}.',
  'reason.offer.minimum': 'The smallest charge: {amount:money}.',
  'reason.tax.total.half-up': 'Tax once on the total, half a unit rounds up.',
  'reason.tax.total.half-even': 'Tax once on the total, half a unit rounds to the even one.',
  'reason.tax.total.down': 'Tax once on the total, parts of a unit are left out.',
  'reason.tax.line.half-up': 'Tax line by line, half a unit rounds up.',
  'reason.tax.line.half-even': 'Tax line by line, half a unit rounds to the even one.',
  'reason.tax.line.down': 'Tax line by line, parts of a unit are left out.',
  'reason.plan.people': '{people|# person|# people}, {bays|# bay|# bays}, {lifts|# lift|# lifts}.',
  'reason.plan.day':
    'At most {day:hours} a day, {machine:hours} of them with a machine for one person, {setUp:hours} to set up.',
  'reason.plan.critical': '{steps|# step sets|# steps, one after the other, set} the time.',
  'reason.plan.ready':
    'Ready as a rule at {likely} times the mean of the hours, cautiously at {cautious} times.',
}
