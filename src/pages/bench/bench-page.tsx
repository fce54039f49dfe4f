import type { Child, FC } from 'hono/jsx'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { ErrorSummary } from '../parts/error-summary'
import { NoteView } from '../parts/note-view'
import { PanelTable } from '../parts/panel-table'
import { SignOut } from '../parts/sign-out'
import { paths } from '../paths'
import { AllowedForm } from './allowed-form'
import { type BenchView, panelsOfSheet } from './bench-view'
import { Came } from './came'
import { CheckIn } from './check-in'
import { Checks } from './checks'
import { CurrentStep, sheetStepName } from './current-step'
import { DayPart } from './day-part'
import { Findings } from './findings'
import { GaugeForm } from './gauge-form'
import { PaperSheet } from './paper-sheet'
import { PasteForm } from './paste-form'
import { PolishedForm } from './polished-form'
import { ReadingForm } from './reading-form'
import { ReadingList } from './reading-list'
import { RecordedPart } from './recorded-part'
import { idsOf } from './refused-ids'
import { Removals } from './removals'
import { SmallerResult } from './smaller-result'
import { StepList } from './step-list'
import { SupplyPart } from './supply-part'
import { Timers } from './timers'
import { Told } from './told'
import { UnsentLines } from './unsent-lines'

export type BenchPageProps = {
  readonly frame: Frame
  /** The docket's revision the page was made of: a device draws nothing older over it. */
  readonly rev: number
  readonly view: BenchView
  readonly once: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
  readonly scripts?: readonly string[]
}

/** Steps at which paint is read or taken off: readings and panels stand open beside them. */
const MEASURING = new Set([
  'readings',
  'cold-reading',
  'test-spot',
  'polish-cut',
  'polish-light',
  'polish-finishing',
  'polish-hand',
])

/** A job inside the car has panels too, but nobody reads them. */
const paintIsRead = (view: BenchView): boolean =>
  view.sheet.panels.length > 0 &&
  (view.readings.length > 0 || view.sheet.steps.some((s) => MEASURING.has(s.id)))

/** Panels that were read and have no reference, in walking order. */
const unreferenced = (view: BenchView): readonly string[] =>
  view.sheet.panels.filter((p) => p.total !== null && !p.reference).map((p) => p.panel)

const measures = (view: BenchView): boolean => view.current !== null && MEASURING.has(view.current)

/** A part of the sheet that is there when wanted: one thing at a time stands open. */
const Fold: FC<{
  readonly id: string
  readonly title: string
  readonly open: boolean
  readonly screenOnly?: boolean
  readonly children?: Child
}> = ({ id, title, open, screenOnly, children }) => (
  <section id={id} class={screenOnly ? 'fold screen-only' : 'fold'}>
    <details open={open}>
      <summary>
        <h2>{title}</h2>
      </summary>
      {children}
    </details>
  </section>
)

/** Forms of the reading part, by the kind of line they write. */
const MEASURED = new Set([
  'reading',
  'unreadable',
  'polished',
  'gauge-checked',
  'allowed',
  'pasted',
  'struck',
])

/** Everything of the sheet under its head; the browser renders the same without a signal. */
export const BenchBody: FC<Omit<BenchPageProps, 'scripts' | 'rev'>> = (p) => {
  const { view, once, errors, kept } = p
  const { words } = p.frame
  const step = view.sheet.steps.find((s) => s.id === view.current)
  const last = view.readings.at(-1)
  const refused = { ...(errors ? { errors } : {}), ...(kept ? { kept } : {}) }
  const part = { words, view, once, ...refused }
  const panel = step?.places.find((place) => panelsOfSheet(view).includes(place)) ?? last?.panel
  return (
    <>
      <UnsentLines words={words} unsent={view.unsent} />
      <ErrorSummary words={words} errors={errors} ids={idsOf(kept)} />
      <CheckIn words={words} view={view} once={once} {...refused} />
      {step ? (
        <>
          <CurrentStep {...part} step={step} />
          <Timers {...part} step={step.id} />
        </>
      ) : (
        <section>
          <h1>{words.say('page.steps.all-done')}</h1>
          <div class="acts">
            <a class="button" href={paths.handover(view.id)}>
              {words.say('page.handover')}
            </a>
          </div>
        </section>
      )}
      {paintIsRead(view) ? (
        <>
          <Fold
            id="reading"
            title={words.say('page.reading.open')}
            open={measures(view) || MEASURED.has(keptOne(refused.kept, 'kind'))}
            screenOnly
          >
            <GaugeForm {...part} probe={last?.probe ?? 'magnetic'} />
            <ReadingForm
              words={words}
              id={view.id}
              once={once}
              panels={panelsOfSheet(view)}
              unreferenced={unreferenced(view)}
              {...(panel ? { panel } : {})}
              {...(last?.probe ? { probe: last.probe } : {})}
              {...refused}
            />
            <PasteForm {...part} probe={last?.probe ?? 'magnetic'} />
            <ReadingList {...part} />
            <PolishedForm {...part} {...(panel ? { panel } : {})} />
            <AllowedForm {...part} {...(panel ? { panel } : {})} />
          </Fold>
          <Fold id="panels" title={words.say('page.panels.open')} open={measures(view)}>
            <PanelTable words={words} panels={view.sheet.panels} bench />
          </Fold>
        </>
      ) : null}
      {view.notes.length > 0 ? (
        <Fold
          id="notes"
          title={words.say('page.bench.notes.open', { n: view.notes.length })}
          open={view.checkIn === null}
        >
          {view.notes.map((note) => (
            <NoteView words={words} note={note} bench />
          ))}
        </Fold>
      ) : null}
      {paintIsRead(view) ? (
        <SmallerResult words={words} view={view} once={once} {...refused} />
      ) : null}
      <StepList words={words} view={view} />
      <Told words={words} view={view} />
      <Came {...part} />
      <Findings {...part} />
      <Removals {...part} />
      <SupplyPart {...part} />
      <DayPart {...part} />
      <RecordedPart {...part} />
      <Checks {...part} />
      <PaperSheet words={words} view={view} />
      <section class="screen-only">
        <div class="acts">
          <a class="button quiet" href={paths.handover(view.id)}>
            {words.say('page.handover')}
          </a>
        </div>
      </section>
    </>
  )
}

/** The job sheet: one current step large, and everything else of the job under it. */
export const BenchPage: FC<BenchPageProps> = (p) => {
  const { frame, view } = p
  const { words } = frame
  const step = view.sheet.steps.find((s) => s.id === view.current)
  const title = step ? sheetStepName(words, step) : words.say('page.steps.all-done')
  return (
    <Layout
      frame={{
        ...frame,
        who: `${view.reference} · ${view.car}`,
        reference: `${view.reference} ${view.car}`,
      }}
      title={title}
      scripts={p.scripts ?? ['bench.js', 'leave.js']}
      bench
    >
      <p class="notice" hidden data-notice="not-kept">
        {words.say('page.bench.not-kept')}
      </p>
      <p class="notice" hidden data-notice="no-signal">
        {words.say('page.bench.no-signal')}
      </p>
      <div
        id="sheet"
        data-worker={frame.assets('bench-worker.js')}
        data-rev={String(p.rev)}
        data-refused={p.errors ? '1' : undefined}
      >
        <BenchBody {...p} />
      </div>
      <section class="screen-only">
        <SignOut words={words} once={`${p.once}-out`} />
      </section>
    </Layout>
  )
}
