import type { WantedItem } from '../../jobsheet/in-hand'
import type { InHandView } from '../../pages/studio/docket-view'
import type { EstimateStep } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import type { Desk } from '../acts/desk'
import { todayOf } from '../acts/estimating'
import { thingOf, wantedOf } from '../acts/in-hand'
import type { Any } from './page'

/** How far a thing is and what is to be done about it, in words. */
const whenText = (w: WantedItem, today: string, words: Words): string => {
  if (w.state === 'in-hand') return words.say('page.in-hand.is-in-hand')
  if (w.state === 'on-its-way')
    return w.expected === null
      ? words.say('page.in-hand.is-on-its-way')
      : words.say('page.in-hand.expected-on', { date: w.expected })
  if (w.what === 'key') return words.say('page.in-hand.with-car')
  if (w.orderBy === null) return words.say('page.in-hand.lead', { n: w.lead })
  const key = w.orderBy < today ? 'page.in-hand.by.late' : 'page.in-hand.by'
  return words.say(key, { date: w.orderBy })
}

/** What a docket waits for before its car comes, as its page shows it. */
export const inHandView = (call: Any, desk: Desk, steps: readonly EstimateStep[]): InHandView => {
  const { words } = call.studio
  const today = todayOf(call.studio, call.now)
  const named = new Map(steps.map((s) => [s.id, s.name]))
  const stepText = (id: string): string =>
    named.get(id) ?? (words.has(`step.${id}`) ? words.say(`step.${id}`) : id)
  return {
    items: wantedOf(desk, steps).map((w, i) => ({
      n: i + 1,
      item: w.item,
      thing: thingOf(w, call.studio),
      steps: w.steps.map(stepText),
      state: w.state,
      expected: w.expected,
      when: whenText(w, today, words),
      late: w.state === 'wanted' && w.what !== 'key' && w.orderBy !== null && w.orderBy < today,
    })),
  }
}
