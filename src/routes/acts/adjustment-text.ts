import type { Adjustment } from '../../quote/adjustment'
import type { Words } from '../../words/render'

/** One change in words, with its reason. */
export const adjustmentText = (a: Adjustment, words: Words): string => {
  const why = a.why
  const spoken = (key: string, otherwise: string): string =>
    words.has(key) ? words.say(key) : otherwise
  const step = 'step' in a ? ('name' in a ? a.name : spoken(`step.${a.step}`, a.step)) : ''
  switch (a.kind) {
    case 'minutes':
      return words.say('change.minutes', { step, minutes: a.minutes, why })
    case 'price':
      return words.say('change.price', { step, amount: a.amount, why })
    case 'remove':
    case 'add':
      return words.say(`change.${a.kind}`, { step, why })
    case 'sublet':
      return words.say('change.sublet', { step, amount: a.cost, why })
    case 'by-time':
      return words.say('change.by-time', { step, minutes: a.capMinutes, why })
    case 'discount':
    case 'surcharge':
      return words.say(`change.${a.kind}`, { amount: a.amount, why })
    case 'discount-share':
      return words.say('change.discount-share', { share: a.basisPoints / 100, why })
    case 'travel':
      return words.say('change.travel', { km: a.metres / 1000, why })
    case 'bay-days':
      return words.say('change.bay-days', { n: a.days, why })
    case 'people':
      return words.say('change.people', { n: a.people, why })
    case 'waive-note':
      return words.say('change.waive-note', { note: spoken(`risk.${a.note}`, a.note), why })
    case 'level': {
      const panel =
        a.panel === undefined ? words.say('change.whole-car') : spoken(`panel.${a.panel}`, a.panel)
      return words.say('change.level', { panel, level: words.say(`level.${a.level}`), why })
    }
    case 'start':
      return words.say('change.start', { date: a.day, why })
  }
}
