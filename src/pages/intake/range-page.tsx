import type { FC } from 'hono/jsx'
import type { Estimate } from '../../quote/estimate-types'
import type { FieldError, Frame } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { chanceWords } from '../parts/chance'
import { ErrorSummary, errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { FromStudio, type FromStudioView } from '../parts/from-studio'
import { money, roundMoney } from '../parts/money-text'
import { NoteView } from '../parts/note-view'
import { SpanBar } from '../parts/span-bar'
import { Tick } from '../parts/tick'
import { promptOf, Why } from '../parts/why'
import { paths } from '../paths'
import { RangeWork } from './range-work'

export type RangePageProps = {
  readonly frame: Frame
  readonly id: string
  readonly estimate: Estimate
  /** What the studio shows before it has looked. */
  readonly shows: 'range' | 'from' | 'after-review'
  readonly pricesWithTax: boolean
  /** Set once sent: the reference to quote on the phone. */
  readonly sent?: { readonly reference: string }
  /** The first question still needed before sending; absent: ready to send. */
  readonly needed?: { readonly href: string }
  /** The paid inspection, when the studio offers one. */
  /** What the studio asked again, changed, offered or turned down. */
  readonly fromStudio?: FromStudioView
  readonly lookOver?: { readonly minutes: number; readonly amount: number }
  readonly once: string
  readonly errors?: readonly FieldError[]
}

/** Most notes shown at first: more than this and every warning sounds alike. */
const MOST_NOTES = 5

const Headline: FC<RangePageProps> = ({
  frame: { words },
  estimate,
  shows,
  pricesWithTax,
  sent,
}) => {
  const { offer, budget } = estimate
  const figures = { low: offer.low, likely: offer.likely, high: offer.high }
  if (shows === 'after-review') return <h1>{words.say('page.range.after-review')}</h1>
  const headline = shows === 'from' ? 'page.range.from' : 'page.range.about'
  return (
    <>
      <h1>{words.say(sent ? 'page.range.title.sent' : 'page.range.title')}</h1>
      <p class="lead-figure">{words.say(headline, figures)}</p>
      <p class="quietly">
        {words.say(pricesWithTax ? 'page.range.with-tax' : 'page.range.without-tax')}{' '}
        {words.say('page.range.not-binding')}
      </p>
      {shows === 'range' ? (
        <SpanBar
          {...figures}
          {...(budget ? { tick: budget.amount } : {})}
          lowText={roundMoney(words, offer.low)}
          likelyText={words.say('page.range.likely', { v: offer.likely })}
          highText={roundMoney(words, offer.high)}
        />
      ) : null}
      <Why
        words={words}
        because={offer.because ?? []}
        counted
        more={[words.say('page.why.range')]}
        title={words.say('page.why.offer')}
      />
      {budget && shows === 'range' ? (
        <p>
          {words.say('page.range.budget', {
            amount: budget.amount,
            chance: chanceWords(words, budget.chance),
          })}
        </p>
      ) : null}
    </>
  )
}

const Days: FC<RangePageProps> = ({ frame: { words }, estimate, shows }) => {
  const { plan, deadline } = estimate
  if (shows === 'after-review') return <p>{words.say('page.range.after-review.days')}</p>
  // A day says what can be said; minutes of a job that has not begun would be a false promise.
  const sameDay = plan.readyLikelyLocal.date === plan.readyCautiousLocal.date
  return (
    <>
      <p>
        {words.say('page.range.days', { n: plan.days.length })}{' '}
        {words.say(sameDay ? 'page.range.elapsed.same' : 'page.range.elapsed', {
          likely: plan.readyLikelyLocal.date,
          cautious: plan.readyCautiousLocal.date,
          cautiousAt: Math.ceil(plan.readyCautiousLocal.minute / 30) * 30,
        })}
      </p>
      {plan.reasons ? (
        <Why
          words={words}
          because={plan.because ?? []}
          counted
          more={plan.reasons.flatMap((r) =>
            r.rule === 'plan.critical' || r.rule === 'plan.people'
              ? [words.say(`reason.${r.rule}`, r.row ?? {})]
              : [],
          )}
          title={words.say('page.why.days')}
        />
      ) : null}
      {deadline ? (
        <p>{words.say(`page.range.deadline.${deadline.holds}`, { date: deadline.date })}</p>
      ) : null}
    </>
  )
}

const Notes: FC<RangePageProps> = ({ frame: { words }, estimate }) => {
  const { riskNotes } = estimate
  if (riskNotes.length === 0) return null
  const first = riskNotes.slice(0, MOST_NOTES)
  const more = riskNotes.slice(MOST_NOTES)
  return (
    <section>
      <h2>{words.say('page.notes')}</h2>
      {first.map((note) => (
        <NoteView words={words} note={note} />
      ))}
      {more.length > 0 ? (
        <details>
          <summary>{words.say('page.notes.more', { n: more.length })}</summary>
          {more.map((note) => (
            <NoteView words={words} note={note} />
          ))}
        </details>
      ) : null}
    </section>
  )
}

const Narrowing: FC<RangePageProps> = ({ frame: { words }, id, estimate, lookOver, shows }) => {
  const open = estimate.narrowing.filter((n) => promptOf(words, n.question) !== null).slice(0, 3)
  return (
    <section>
      <h2>{words.say('page.narrow')}</h2>
      {open.length > 0 ? (
        <ul class="plain">
          {open.map((n) => (
            <li>
              <a href={paths.question(id, n.question)}>{promptOf(words, n.question)}</a>{' '}
              {shows === 'range' ? (
                <span class="quietly">{words.say('page.narrow.share', { share: n.share })}</span>
              ) : null}
            </li>
          ))}
        </ul>
      ) : null}
      <p>{words.say('page.come-by')}</p>
      {lookOver ? (
        <p>
          {words.say('page.look-over', {
            minutes: lookOver.minutes,
            price: money(words, lookOver.amount),
          })}
        </p>
      ) : null}
    </section>
  )
}

const Send: FC<RangePageProps> = ({ frame: { words }, id, needed, once, errors }) => {
  if (needed)
    return (
      <section class="screen-only">
        <p>{words.say('page.send.needed')}</p>
        <div class="acts">
          <a class="button" href={needed.href}>
            {words.say('page.send.answer-rest')}
          </a>
        </div>
      </section>
    )
  const fault = errorFor(errors, 'consent')
  return (
    <section class="screen-only">
      <h2>{words.say('page.send.title')}</h2>
      <p>{words.say('page.send.next')}</p>
      <form method="post" action={paths.submission(id)}>
        <Once once={once} />
        <FieldFault name="consent" message={fault} />
        <Tick
          type="checkbox"
          name="consent"
          value="1"
          id={fieldId('consent')}
          label={words.say('page.send.consent')}
          {...(fault ? { describedby: `${fieldId('consent')}-fault` } : {})}
        />
        <div class="acts">
          <Button>{words.say('page.send.button')}</Button>
          <a class="button quiet" href={paths.conversation(id)}>
            {words.say('page.send.back')}
          </a>
        </div>
      </form>
    </section>
  )
}

/** The range so far, or as sent: what it costs, how long, what to expect and what to watch. */
export const RangePage: FC<RangePageProps> = (p) => {
  const { frame, estimate, sent, errors } = p
  const { words } = frame
  const { expectation } = estimate
  return (
    <Layout frame={frame} title={words.say(sent ? 'page.range.title.sent' : 'page.range.title')}>
      <ErrorSummary words={words} errors={errors} />
      <FromStudio words={words} {...(p.fromStudio ? { view: p.fromStudio } : {})} />
      <section>
        {sent ? (
          <p role="status">{words.say('page.sent.reference', { reference: sent.reference })}</p>
        ) : null}
        <Headline {...p} />
        <Days {...p} />
      </section>
      <section>
        <h2>{words.say('page.expect')}</h2>
        <p>{words.say(expectation.phrase)}</p>
        <Why words={words} because={expectation.because} />
      </section>
      <Notes {...p} />
      <RangeWork words={words} estimate={estimate} shows={p.shows} />
      {sent ? (
        <section>
          <h2>{words.say('page.sent.next.title')}</h2>
          <p>{words.say('page.sent.next')}</p>
        </section>
      ) : (
        <>
          <Narrowing {...p} />
          <Send {...p} />
        </>
      )}
    </Layout>
  )
}
