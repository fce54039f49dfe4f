import type { FC } from 'hono/jsx'
import type { FieldError, Frame, Kept } from '../frame'
import { Layout } from '../layout'
import { chanceWords } from '../parts/chance'
import { ErrorSummary } from '../parts/error-summary'
import { money } from '../parts/money-text'
import { NoteView } from '../parts/note-view'
import { PanelTable } from '../parts/panel-table'
import { Timetable } from '../parts/timetable'
import { paths } from '../paths'
import { stepNames } from '../quote/quote-lines'
import { AdjustForm } from './adjust-form'
import { History, Moves, Reply, Revisions } from './docket-acts'
import { Facts, OpenThings } from './docket-facts'
import type { DocketView, MessageView } from './docket-view'
import { CouldAddWhy, OfferWhy, PaintWhy } from './figure-reasons'

export type DocketPageProps = {
  readonly frame: Frame
  readonly docket: DocketView
  readonly once: string
  readonly message?: MessageView
  /** True when the figures are a trial and nothing was kept. */
  readonly trial?: boolean
  /** The job sheet, once there is one. */
  readonly benchHref?: string
  /** The studio answering the questions itself, on the phone. */
  readonly answersHref?: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const Headline: FC<DocketPageProps> = ({ frame: { words }, docket, trial }) => {
  const { offer, estimate } = docket
  return (
    <section>
      <p class="quietly">
        {[
          docket.reference ?? words.say('page.list.no-reference'),
          docket.car,
          docket.person?.name,
          words.say(`page.state.${docket.state}`),
        ]
          .filter(Boolean)
          .join(' · ')}
      </p>
      {docket.whyMoved ? <p class="quietly">{docket.whyMoved}</p> : null}
      {offer ? (
        <>
          <h1 class="lead-figure">
            {words.say(trial ? 'page.docket.trial' : 'page.docket.offer', {
              total: money(words, offer.total),
            })}
          </h1>
          <p>
            {words.say('page.docket.enough', { chance: chanceWords(words, offer.chanceEnough) })}{' '}
            {words.say('page.docket.range', { low: offer.low, high: offer.high })}{' '}
            {estimate
              ? words.say('page.docket.labour', {
                  low: estimate.labourMinutes.low,
                  likely: estimate.labourMinutes.likely,
                  high: estimate.labourMinutes.high,
                })
              : ''}
          </p>
        </>
      ) : (
        <h1>{words.say('page.docket.no-offer')}</h1>
      )}
      {trial ? <p role="status">{words.say('page.docket.trial.lead')}</p> : null}
      {docket.dropped.length > 0 ? (
        <p>{words.say('page.docket.dropped', { n: docket.dropped.length })}</p>
      ) : null}
    </section>
  )
}

const Ways: FC<DocketPageProps> = ({ frame: { words }, benchHref, answersHref }) =>
  benchHref || answersHref ? (
    <section class="screen-only">
      <div class="acts">
        {benchHref ? (
          <a class="button quiet" href={benchHref}>
            {words.say('page.docket.sheet')}
          </a>
        ) : null}
        {answersHref ? (
          <a class="button quiet" href={answersHref}>
            {words.say('page.docket.answer')}
          </a>
        ) : null}
      </div>
    </section>
  ) : null

/** One docket with everything behind its figures, and what may be done next. */
export const DocketPage: FC<DocketPageProps> = (p) => {
  const { frame, docket, once, errors, kept, message } = p
  const { words } = frame
  const { estimate } = docket
  const acts = { words, docket, once, ...(message ? { message } : {}) }
  return (
    <Layout
      frame={frame}
      title={`${docket.reference ?? words.say('page.list.no-reference')} ${docket.car}`}
      scripts={['enhance.js']}
      wide
    >
      <ErrorSummary words={words} errors={errors} ids={{ text: 'f-reply' }} />
      <Headline {...p} />
      <Reply {...acts} {...(errors ? { errors } : {})} />
      <OpenThings words={words} docket={docket} />
      {estimate && estimate.riskNotes.length > 0 ? (
        <section>
          <h2>{words.say('page.docket.notes')}</h2>
          <div class="columns">
            {estimate.riskNotes.map((note) => (
              <NoteView words={words} note={note} bench full />
            ))}
          </div>
        </section>
      ) : null}
      {estimate ? (
        <section>
          <OfferWhy words={words} estimate={estimate} />
          <CouldAddWhy words={words} estimate={estimate} />
        </section>
      ) : null}
      {estimate || docket.offer ? (
        <AdjustForm
          words={words}
          docket={docket}
          once={`${once}-revision`}
          {...(errors ? { errors } : {})}
          {...(kept ? { kept } : {})}
        />
      ) : null}
      <Revisions {...acts} />
      <Ways {...p} />
      <Moves {...acts} />
      {estimate && estimate.paint.panels.length > 0 ? (
        <section>
          <h2>{words.say('page.panels')}</h2>
          <PanelTable words={words} panels={estimate.paint.panels} full />
          <PaintWhy words={words} estimate={estimate} />
        </section>
      ) : null}
      {estimate ? (
        <section>
          <h2>{words.say('page.days')}</h2>
          <Timetable
            words={words}
            plan={estimate.plan}
            stepName={stepNames(words, estimate.steps)}
          />
        </section>
      ) : null}
      <Facts words={words} docket={docket} />
      <History words={words} docket={docket} />
      <section class="screen-only">
        <p>
          <a href={paths.studio}>{words.say('page.docket.back')}</a>
        </p>
      </section>
    </Layout>
  )
}
