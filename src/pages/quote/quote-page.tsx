import type { FC } from 'hono/jsx'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { ErrorSummary } from '../parts/error-summary'
import { FromStudio, type FromStudioView } from '../parts/from-studio'
import { money, roundMoney } from '../parts/money-text'
import { NoteView } from '../parts/note-view'
import { SpanBar } from '../parts/span-bar'
import { Timetable } from '../parts/timetable'
import { Why } from '../parts/why'
import { DecisionForm } from './decision-form'
import { OptionsSection } from './options-section'
import { QuoteLines, stepNames } from './quote-lines'
import type { QuoteView } from './quote-view'
import { Talk, type TalkView } from './talk'

export type QuotePageProps = {
  readonly frame: Frame
  readonly id: string
  readonly quote: QuoteView
  readonly once: string
  /** False when it is answered already, lapsed or called back. */
  readonly canDecide: boolean
  /** Said instead of the form, e.g. that it was valid until a date. */
  readonly closed?: string
  /** What the studio asked again or changed since. */
  readonly fromStudio?: FromStudioView
  /** A question asked and what the studio replied, in order. */
  readonly talk?: TalkView
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

/** What it comes to: one offer with the range beside it, or from which to which option. */
const Figures: FC<QuotePageProps> = ({ frame: { words }, quote }) => {
  const { offer, options = [] } = quote
  const totals = options.map((o) => o.offer.total)
  return totals.length > 0 ? (
    <h1>
      {words.say('page.options.offer', {
        n: totals.length,
        low: money(words, Math.min(...totals)),
        high: money(words, Math.max(...totals)),
      })}
    </h1>
  ) : (
    <>
      <h1>{words.say('page.quote.offer', { total: money(words, offer.total) })}</h1>
      <p>{words.say('page.quote.beside', { low: offer.low, high: offer.high })}</p>
      <SpanBar
        low={offer.low}
        likely={offer.total}
        high={offer.high}
        lowText={roundMoney(words, offer.low)}
        likelyText={words.say('page.quote.this-offer', { v: offer.total })}
        highText={roundMoney(words, offer.high)}
      />
    </>
  )
}

const Offered: FC<QuotePageProps> = (p) => {
  const {
    frame: { words },
    quote,
  } = p
  const { offer, estimate } = quote
  const { plan } = estimate
  const chosen = (quote.options ?? []).length > 0
  return (
    <section>
      <p class="quietly">
        {words.say('page.quote.which', {
          reference: quote.reference,
          revision: quote.revision,
          date: quote.sentOn,
        })}{' '}
        {quote.car}
      </p>
      <Figures {...p} />
      <p>
        {chosen ? '' : `${words.say('page.range.days', { n: plan.days.length })} `}
        {words.say('page.quote.valid', { date: quote.validUntil })}
        {offer.deposit > 0 && !chosen
          ? ` ${words.say('page.quote.deposit', { amount: money(words, offer.deposit) })}`
          : ''}
      </p>
      {quote.message ? <p class="said">{quote.message}</p> : null}
    </section>
  )
}

const Plain: FC<QuotePageProps> = ({ frame: { words }, quote }) => (
  <>
    <section>
      <h2>{words.say('page.quote.lines')}</h2>
      <QuoteLines
        words={words}
        offer={quote.offer}
        estimate={quote.estimate}
        taxMillionths={quote.taxMillionths}
      />
    </section>
    <section>
      <h2>{words.say('page.expect')}</h2>
      <p>{words.say(quote.estimate.expectation.phrase)}</p>
      <Why words={words} because={quote.estimate.expectation.because} />
    </section>
  </>
)

/** A sent revision: what is offered line by line, what to know, and the form to answer it. */
export const QuotePage: FC<QuotePageProps> = (p) => {
  const { frame, quote, errors } = p
  const { words } = frame
  const { estimate } = quote
  const told = estimate.riskNotes.filter((n) => !(p.canDecide && n.decision))
  return (
    <Layout
      frame={frame}
      title={words.say('page.quote.title', {
        revision: quote.revision,
        reference: quote.reference,
      })}
    >
      <ErrorSummary
        words={words}
        errors={errors}
        ids={{ text: keptOne(p.kept, 'decision') === 'decline' ? 'f-decline' : 'f-ask' }}
      />
      <FromStudio words={words} {...(p.fromStudio ? { view: p.fromStudio } : {})} />
      {!p.canDecide && p.closed ? (
        <p class="notice" role="status">
          {p.closed}
        </p>
      ) : null}
      <Offered {...p} />
      <Talk words={words} talk={p.talk} />
      {quote.changes && quote.changes.length > 0 ? (
        <section>
          <h2>{words.say('page.quote.changed')}</h2>
          <ul>
            {quote.changes.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        </section>
      ) : null}
      {quote.options ? <OptionsSection words={words} quote={quote} /> : <Plain {...p} />}
      {told.length > 0 ? (
        <section>
          <h2>{words.say('page.notes')}</h2>
          {told.map((note) => (
            <NoteView words={words} note={note} />
          ))}
        </section>
      ) : null}
      {quote.options ? null : (
        <section>
          <h2>{words.say('page.days')}</h2>
          <Timetable
            words={words}
            plan={estimate.plan}
            stepName={stepNames(words, estimate.steps)}
          />
        </section>
      )}
      {p.canDecide ? (
        <DecisionForm
          words={words}
          id={p.id}
          quote={quote}
          once={p.once}
          {...(errors ? { errors } : {})}
          {...(p.kept ? { kept: p.kept } : {})}
        />
      ) : null}
      {quote.terms ? (
        <section>
          <h2>{words.say('page.quote.terms')}</h2>
          <p class="said-plainly">{quote.terms}</p>
          <p class="quietly">{words.say('page.quote.law')}</p>
        </section>
      ) : null}
    </Layout>
  )
}
