import type { Child, FC } from 'hono/jsx'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { ErrorSummary } from '../parts/error-summary'
import { NoteView } from '../parts/note-view'
import { PanelTable } from '../parts/panel-table'
import { paths } from '../paths'
import { type BenchView, panelsOfSheet } from './bench-view'
import { CheckIn } from './check-in'
import { Checks } from './checks'
import { CurrentStep, sheetStepName } from './current-step'
import { Findings } from './findings'
import { PaperSheet } from './paper-sheet'
import { ReadingForm } from './reading-form'
import { Removals } from './removals'
import { StepList } from './step-list'
import { Told } from './told'

export type BenchPageProps = {
  readonly frame: Frame
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
const MEASURED = new Set(['reading', 'unreadable', 'polished'])

/** Fields of the refused form that bear an id of their own. */
const idsOf = (kept: Kept | undefined): Readonly<Record<string, string>> => {
  switch (keptOne(kept, 'kind')) {
    case 'found':
      return { text: 'f-found', file: 'f-found-file' }
    case 'extra-asked':
      return { text: 'f-extra', minutes: 'f-extra-minutes' }
    case 'removed':
      return { place: 'f-removed-place' }
    case 'unreadable':
      return { panel: 'f-unreadable-panel', why: 'f-unreadable-why' }
    case 'polished':
      return { panel: 'f-polished-panel' }
    case 'checked':
      return { why: `f-waive-${keptOne(kept, 'check')}` }
    default:
      return {}
  }
}

/** Everything of the sheet under its head; the browser renders the same without a signal. */
export const BenchBody: FC<Omit<BenchPageProps, 'scripts'>> = (p) => {
  const { view, once, errors, kept } = p
  const { words } = p.frame
  const step = view.sheet.steps.find((s) => s.id === view.current)
  const last = view.readings.at(-1)
  const refused = { ...(errors ? { errors } : {}), ...(kept ? { kept } : {}) }
  const panel = step?.places.find((place) => panelsOfSheet(view).includes(place)) ?? last?.panel
  return (
    <>
      <ErrorSummary words={words} errors={errors} ids={idsOf(kept)} />
      <CheckIn words={words} view={view} once={once} {...refused} />
      {step ? (
        <CurrentStep words={words} id={view.id} once={once} step={step} {...refused} />
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
            <ReadingForm
              words={words}
              id={view.id}
              once={once}
              panels={panelsOfSheet(view)}
              {...(panel ? { panel } : {})}
              {...(last?.probe ? { probe: last.probe } : {})}
              {...refused}
            />
          </Fold>
          <Fold id="panels" title={words.say('page.panels.open')} open={measures(view)}>
            <PanelTable words={words} panels={view.sheet.panels} />
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
      <StepList words={words} view={view} />
      <Told words={words} view={view} />
      <Findings words={words} view={view} once={once} {...refused} />
      <Removals words={words} view={view} once={once} {...refused} />
      <Checks words={words} view={view} once={once} {...refused} />
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
  const unsent = view.unsent ? ` · ${words.say('page.unsent', { n: view.unsent })}` : ''
  return (
    <Layout
      frame={{
        ...frame,
        who: `${view.reference} · ${view.car}${unsent}`,
        reference: `${view.reference} ${view.car}`,
      }}
      title={title}
      scripts={p.scripts ?? ['enhance.js']}
      bench
    >
      <BenchBody {...p} />
    </Layout>
  )
}
