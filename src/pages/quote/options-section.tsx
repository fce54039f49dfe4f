import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { QuoteLines } from './quote-lines'
import type { OptionView, QuoteView } from './quote-view'

const Option: FC<{ readonly words: Words; readonly quote: QuoteView; readonly o: OptionView }> = ({
  words,
  quote,
  o,
}) => (
  <li>
    <h3>{o.name}</h3>
    <p>
      <b>{words.say('option.costs', { total: o.offer.total })}</b>,{' '}
      {words.say('option.beside', { low: o.offer.low, high: o.offer.high })};{' '}
      {words.say('option.days', { n: o.days })}.
    </p>
    {o.said ? <p class="said">{o.said}</p> : null}
    <p>{o.expects}</p>
    {o.only.length > 0 ? <p>{words.say('option.only', { steps: o.only })}</p> : null}
    <p>{o.leaves}</p>
    <details>
      <summary>{words.say('option.lines', { name: o.name })}</summary>
      <QuoteLines
        words={words}
        offer={o.offer}
        estimate={o.estimate}
        taxMillionths={quote.taxMillionths}
      />
    </details>
  </li>
)

/** The ways to do it, each with only what tells it from the others. */
export const OptionsSection: FC<{ readonly words: Words; readonly quote: QuoteView }> = ({
  words,
  quote,
}) => (
  <section id="options">
    <h2>{words.say('page.options')}</h2>
    <p>{words.say('page.options.lead')}</p>
    <ol class="plain ways">
      {(quote.options ?? []).map((o) => (
        <Option words={words} quote={quote} o={o} />
      ))}
    </ol>
  </section>
)
