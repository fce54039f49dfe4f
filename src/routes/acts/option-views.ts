import type { Docket, Revision } from '../../docket/fold'
import type { QuoteOption } from '../../docket/kinds'
import { lineName } from '../../pages/quote/quote-lines'
import type { OptionView } from '../../pages/quote/quote-view'
import { leavesFor, onlyHere } from '../../quote/options/differences'
import type { StoredEstimate } from '../../store/estimates'
import type { Words } from '../../words/render'
import { estimateBehind } from './agreed'

/** An option by its letter, its treatment and, where it is not the whole car, its panels. */
export const optionName = (
  o: Pick<QuoteOption, 'option' | 'treatment' | 'panels'>,
  words: Words,
): string =>
  words.say(o.panels ? 'option.name-panels' : 'option.name', {
    letter: o.option.toUpperCase(),
    what: words.say(`option.${o.treatment}`),
    ...(o.panels ? { panels: o.panels.map((p) => words.say(`panel.${p}`)) } : {}),
  })

/** An option by name with what it comes to. */
export const optionLine = (
  o: Pick<QuoteOption, 'option' | 'treatment' | 'panels'> & {
    readonly offer: { readonly total: number }
  },
  words: Words,
): string =>
  words.say('page.revision.option', {
    name: optionName(o, words),
    total: words.say('format.money', { v: o.offer.total }),
  })

/** The options of a revision; empty where it has none. Estimates that are not kept are left out. */
export const optionViews = (
  revision: Revision,
  stored: readonly StoredEstimate[],
  texts: ReadonlyMap<string, string>,
  words: Words,
): readonly OptionView[] => {
  const all = (revision.options ?? []).flatMap((o) => {
    const estimate = estimateBehind(o, stored)
    return estimate ? [{ o, estimate }] : []
  })
  const only = onlyHere(all.map(({ estimate }) => estimate))
  return all.map(({ o, estimate }, i) => ({
    option: o.option,
    name: optionName(o, words),
    said: o.text ? (texts.get(o.text.text) ?? null) : null,
    offer: o.offer,
    days: o.ready.days,
    expects: words.say(estimate.expectation.phrase),
    only: (only[i] ?? []).map((id) => {
      const step = estimate.steps.find((s) => s.id === id)
      return lineName(words, { step: id, ...(step?.name ? { name: step.name } : {}) })
    }),
    leaves: words.say(leavesFor(o.treatment)),
    estimate,
  }))
}

/** The option a yes was given to, by name; null without a choice. */
export const chosenName = ({ agreed, revisions }: Docket, words: Words): string | null => {
  const revision = revisions.find((r) => r.revision === agreed?.revision)
  const found = revision?.options?.find((o) => o.option === agreed?.option)
  return found ? optionName(found, words) : null
}
