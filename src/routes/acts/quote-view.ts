import type { Revision } from '../../docket/fold'
import { lineName } from '../../pages/quote/quote-lines'
import type { Estimate } from '../../quote/estimate-types'
import type { StoredEstimate } from '../../store/estimates'
import type { Words } from '../../words/render'
import type { Studio } from '../route'
import type { Desk } from './desk'
import { optionViews } from './option-views'
import { revisionDiff } from './revising'

/** The ways to choose between, with only what tells each from the others. */
const optionsOf = (desk: Desk, sent: Revision, stored: readonly StoredEstimate[], words: Words) => {
  const views = optionViews(sent, stored, desk.texts, words)
  if (views.length === 0) return {}
  return {
    options: views.map(({ estimate, said, name, ...o }) => ({
      ...o,
      text: name,
      said,
      lines: o.offer.lines.map((l) => ({ ...l, text: lineName(words, l) })),
      decide: estimate.riskNotes.filter((n) => n.decision).map((n) => n.id),
    })),
  }
}

/** A sent revision as the customer reads it: lines, offer, what to decide, what changed. */
export const quoteView = (
  desk: Desk,
  sent: Revision,
  estimate: Estimate | null,
  { words, profile }: Studio,
  stored: readonly StoredEstimate[] = [],
) => {
  const earlier = desk.docket.revisions.filter(
    (r) => r.sentAt !== null && r.revision < sent.revision,
  )
  const notes = estimate?.riskNotes ?? []
  return {
    reference: desk.docket.reference,
    revision: sent.revision,
    state: desk.docket.state,
    rev: desk.docket.rev,
    currency: sent.offer.currency,
    offer: sent.offer,
    lines: sent.offer.lines.map((l) => ({ ...l, text: lineName(words, l) })),
    validUntil: sent.validUntil,
    minutes: sent.minutes,
    days: sent.ready.days,
    message: sent.message ? (desk.texts.get(sent.message.text) ?? null) : null,
    terms: sent.terms ?? profile.terms,
    expectation: estimate ? { text: words.say(estimate.expectation.phrase) } : null,
    decide: notes
      .filter((n) => n.decision)
      .map((n) => ({
        id: n.id,
        severity: n.severity,
        text: words.say(`risk.${n.id}`, n.params),
        means: words.say(`risk.${n.id}.means`, n.params),
        decision: words.say(`risk.${n.id}.decision`, n.params),
      })),
    know: notes
      .filter((n) => !n.decision)
      .map((n) => ({
        id: n.id,
        severity: n.severity,
        text: words.say(`risk.${n.id}`, n.params),
        means: words.say(`risk.${n.id}.means`, n.params),
      })),
    turnedDown: (estimate?.scope.turnedDown ?? []).map((t) => ({
      id: t.id,
      text: words.say(`refuse.${t.id}`, t.params),
      turn: words.say(`refuse.${t.id}.turn`, t.params),
    })),
    couldAdd: (estimate?.couldAdd ?? []).slice(0, 8).map((c) => ({
      ...c,
      text: words.say(c.kind === 'event' ? `event.${c.id}` : `step.${c.id}`),
    })),
    changed: earlier.length === 0 ? null : revisionDiff(earlier.at(-1) ?? null, sent),
    ...optionsOf(desk, sent, stored, words),
    /** What the studio suggests; nothing is agreed unless it is said with the yes. */
    extrasSuggested: profile.extrasLimit,
    decisions: desk.docket.decisions.map((d) => ({
      decision: d.decision,
      revision: d.revision,
      at: new Date(d.at).toISOString(),
      text: d.text ? (desk.texts.get(d.text.text) ?? null) : null,
    })),
  }
}
