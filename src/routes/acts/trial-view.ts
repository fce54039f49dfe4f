import type { TrialView } from '../../pages/studio/docket-view'
import type { Estimated } from '../../quote/estimate'
import type { Note } from '../../quote/estimate-types'
import type { Words } from '../../words/render'

/** Two estimates side by side, in words: what they come to, when it is ready, which notes differ. */
export const trialView = (before: Estimated, after: Estimated, words: Words): TrialView => {
  const row = (what: string, say: (e: Estimated) => string) => ({
    what: words.say(`page.trial.${what}`),
    before: say(before),
    after: say(after),
  })
  const day = (date: string, minute: number): string =>
    words.say('page.trial.day', { date, minute })
  const said = (n: Note): string => words.say(`risk.${n.id}`, n.params)
  const without = (a: Estimated, b: Estimated): readonly string[] =>
    a.riskNotes.filter((n) => !b.riskNotes.some((m) => m.id === n.id)).map(said)
  return {
    rows: [
      row('range', (e) => words.say('page.list.range', { low: e.offer.low, high: e.offer.high })),
      row('offer', (e) => words.say('format.money', { v: e.offer.total })),
      row('deposit', (e) => words.say('format.money', { v: e.offer.deposit })),
      row('labour', (e) =>
        words.say('page.minutes-span', { low: e.labourMinutes.low, high: e.labourMinutes.high }),
      ),
      row('people', (e) => String(e.plan.people)),
      row('begins', (e) => words.say('format.date', { v: e.plan.start })),
      row('ready', (e) => day(e.plan.readyLikelyLocal.date, e.plan.readyLikelyLocal.minute)),
      row('ready-cautious', (e) =>
        day(e.plan.readyCautiousLocal.date, e.plan.readyCautiousLocal.minute),
      ),
      row('notes', (e) => words.say('page.trial.notes-n', { n: e.riskNotes.length })),
    ],
    notesNew: without(after, before),
    notesGone: without(before, after),
  }
}
