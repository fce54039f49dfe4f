import type { FC } from 'hono/jsx'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { ErrorSummary } from '../parts/error-summary'
import { NoteView } from '../parts/note-view'
import { PanelTable } from '../parts/panel-table'
import { Timetable } from '../parts/timetable'
import { paths } from '../paths'
import { stepNames } from '../quote/quote-lines'
import { AdjustForm } from './adjust-form'
import { Against } from './date-form'
import { History, Message, Moves, Reply, Revisions } from './docket-acts'
import { Asking, OwnQuestions } from './docket-asking'
import { Doubted } from './docket-doubted'
import { Erase } from './docket-erase'
import { Facts, LastVisitReadings, OpenThings } from './docket-facts'
import { DocketLead } from './docket-lead'
import type { AgainstView, DocketView, MessageView, StaleView, TrialView } from './docket-view'
import { CouldAddWhy, OfferWhy, PaintWhy } from './figure-reasons'
import { FreshLink } from './fresh-link'
import { InHandSection } from './in-hand-section'

export type DocketPageProps = {
  readonly frame: Frame
  readonly docket: DocketView
  readonly once: string
  readonly message?: MessageView
  /** Set when the figures are a trial and nothing was kept. */
  readonly trial?: TrialView
  /** Set when somebody else wrote meanwhile: nothing typed is lost. */
  readonly stale?: StaleView
  /** What stands against the day that was asked for. */
  readonly against?: AgainstView
  /** The job sheet, once there is one. */
  readonly benchHref?: string
  /** The account, once something was agreed. */
  readonly accountHref?: string
  /** The studio answering the questions itself, on the phone. */
  readonly answersHref?: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const Ways: FC<DocketPageProps> = ({ frame: { words }, benchHref, answersHref, accountHref }) =>
  benchHref || answersHref || accountHref ? (
    <section class="screen-only">
      <div class="acts">
        {benchHref ? (
          <a class="button quiet" href={benchHref}>
            {words.say('page.docket.sheet')}
          </a>
        ) : null}
        {accountHref ? (
          <a class="button quiet" href={accountHref}>
            {words.say('page.docket.account')}
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

/** A cabin job has no use for the panels, unless somebody read them. */
const readAny = (estimate: NonNullable<DocketView['estimate']>): boolean =>
  estimate.paint.panels.some((panel) => panel.total !== null)

/** One docket with everything behind its figures, and what may be done next. */
export const DocketPage: FC<DocketPageProps> = (p) => {
  const { frame, docket, once, errors, kept, message } = p
  const { words } = frame
  const { estimate } = docket
  const acts = {
    words,
    docket,
    once,
    ...(message ? { message } : {}),
    ...(errors ? { errors } : {}),
    ...(kept ? { kept } : {}),
    ...(p.against ? { against: p.against } : {}),
  }
  const painted = estimate && (estimate.scope.level !== 'none' || readAny(estimate))
  return (
    <Layout
      frame={frame}
      title={`${docket.reference ?? words.say('page.list.no-reference')} ${docket.car}`}
      scripts={['enhance.js']}
      wide
    >
      <ErrorSummary
        words={words}
        errors={errors}
        ids={{
          text: kept?.question ? 'f-ask-again' : 'f-reply',
          ...(keptOne(kept, 'to') === 'look-over' ? { why: 'f-look-why' } : {}),
        }}
      />
      <DocketLead
        words={words}
        docket={docket}
        {...(docket.canAsk ? { once } : {})}
        {...(p.trial ? { trial: p.trial } : {})}
        {...(p.stale ? { stale: p.stale } : {})}
      />
      {p.against ? <Against {...acts} against={p.against} /> : null}
      {message ? <Message words={words} docket={docket} once={once} message={message} /> : null}
      <Doubted {...acts} />
      <Ways {...p} />
      <Reply {...acts} />
      <OpenThings words={words} docket={docket} />
      <Asking {...acts} />
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
      <InHandSection {...acts} />
      <Revisions {...acts} />
      <Moves {...acts} />
      {painted ? (
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
      <LastVisitReadings words={words} docket={docket} />
      <Facts words={words} docket={docket} />
      <OwnQuestions {...acts} />
      <History words={words} docket={docket} />
      <FreshLink words={words} id={docket.id} once={once} />
      <Erase {...acts} />
      <section class="screen-only">
        <p>
          <a href={paths.studio}>{words.say('page.docket.back')}</a>
        </p>
      </section>
    </Layout>
  )
}
