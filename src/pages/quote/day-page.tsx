import type { FC } from 'hono/jsx'
import type { State } from '../../docket/states'
import type { FieldError, Frame, Kept } from '../frame'
import { keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary, errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { Field } from '../parts/field'
import { date } from '../parts/money-text'
import { Tick } from '../parts/tick'
import { paths } from '../paths'

/** States there is a word for here; before them there is no day, after them nothing to wait for. */
export const DAY_STATES = [
  'agreed',
  'dated',
  'on-bench',
  'held',
  'finished',
  'part-done',
  'uncollected',
  'not-brought',
  'called-off',
  'come-back',
  'handed-over',
] as const satisfies readonly State[]

export type DayPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly once: string
  readonly state: (typeof DAY_STATES)[number]
  readonly dated?: {
    readonly start: string
    readonly startMinute?: number
    readonly readyLikely: string
    readonly readyCautious: string
  } | null
  /** Why it waits, as the studio wrote it. */
  readonly why: string | null
  /** Extra work that waits for a yes or a no. */
  readonly waiting: number
  readonly done: readonly { readonly text: string }[]
  readonly lookAgain: readonly {
    readonly after: number
    readonly date: string
    readonly told: boolean
  }[]
  readonly told: readonly { readonly well: boolean; readonly text: string | null }[]
  /** What the studio wrote back. */
  readonly replies: readonly string[]
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const Dates: FC<DayPageProps> = ({ frame: { words }, id, dated, state }) => {
  if (!dated) return null
  const sameDay = dated.readyLikely === dated.readyCautious
  return (
    <>
      <p>
        {state === 'dated'
          ? `${words.say(
              dated.startMinute === undefined ? 'page.agreed.day' : 'page.agreed.day-at',
              { start: dated.start, at: dated.startMinute ?? 0 },
            )} `
          : null}
        {words.say(sameDay ? 'page.agreed.ready-same' : 'page.agreed.ready', {
          likely: date(words, dated.readyLikely),
          cautious: date(words, dated.readyCautious),
        })}
      </p>
      <p class="screen-only">
        <a href={paths.dayFile(id)}>{words.say('page.day.calendar')}</a>{' '}
        <span class="quietly">{words.say('page.day.calendar.hint')}</span>
      </p>
    </>
  )
}

const Tell: FC<DayPageProps> = ({ frame: { words }, id, once, errors, kept }) => {
  const fault = errorFor(errors, 'well')
  return (
    <form method="post" action={paths.told(id)} enctype="multipart/form-data" class="screen-only">
      <Once once={once} />
      <input type="hidden" name="subject" value="told" />
      <fieldset>
        <legend>{words.say('page.told.ask')}</legend>
        <FieldFault name="well" message={fault} />
        <div class="ticks">
          {(['yes', 'no'] as const).map((value, i) => (
            <Tick
              type="radio"
              name="well"
              value={value}
              label={words.say(`page.told.${value}`)}
              checked={keptOne(kept, 'well') === value}
              {...(i === 0 ? { id: fieldId('well') } : {})}
            />
          ))}
        </div>
        <Field
          name="text"
          rows={4}
          maxlength={2000}
          label={words.say('page.told.text')}
          value={keptOne(kept, 'text')}
          {...(errors ? { errors } : {})}
        />
        <div class="field">
          <label for={fieldId('file')}>{words.say('page.told.photo')}</label>
          <FieldFault name="file" message={errorFor(errors, 'file')} />
          <input
            id={fieldId('file')}
            type="file"
            name="file"
            accept="image/jpeg,image/png,image/webp"
          />
        </div>
      </fieldset>
      <div class="acts">
        <Button>{words.say('page.told.button')}</Button>
      </div>
    </form>
  )
}

const After: FC<DayPageProps> = (p) => {
  const { words } = p.frame
  return (
    <section>
      <h2>{words.say('page.told')}</h2>
      <p>{words.say('page.told.lead')}</p>
      <ul class="plain">
        {p.lookAgain.map((l) => (
          <li>
            {words.say('page.told.day', { n: l.after, date: l.date })}
            {l.told ? <span class="quietly">{` ${words.say('page.told.done')}`}</span> : null}
          </li>
        ))}
      </ul>
      {p.told.map((t) => (
        <>
          <p class="asked">{words.say(t.well ? 'page.told.you-well' : 'page.told.you-wrong')}</p>
          {t.text ? <p class="said-plainly">{t.text}</p> : null}
        </>
      ))}
      {p.told.length > 0
        ? p.replies.map((text) => (
            <>
              <p class="asked">{words.say('page.talk.studio')}</p>
              <p class="said-plainly">{text}</p>
            </>
          ))
        : null}
      <Tell {...p} />
    </section>
  )
}

/** How it stands with the car: booked, in the bay, waiting and for what, ready, and afterwards. */
export const DayPage: FC<DayPageProps> = (p) => {
  const { frame, id, state } = p
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say(`page.day.${state}`)}>
      <ErrorSummary words={words} errors={p.errors} />
      <section>
        <h1>{words.say(`page.day.${state}`)}</h1>
        <p>{words.say(`page.day.${state}.do`)}</p>
        {p.why ? <p class="said-plainly">{p.why}</p> : null}
        {p.waiting > 0 ? (
          <div class="note decide">
            <p>
              <b>{words.say('page.day.waiting', { n: p.waiting })}</b>
            </p>
            <p>
              <a href={paths.quote(id)}>{words.say('page.day.waiting.see')}</a>
            </p>
          </div>
        ) : null}
        <Dates {...p} />
        {p.done.length > 0 && state !== 'handed-over' ? (
          <details>
            <summary>{words.say('page.day.done', { n: p.done.length })}</summary>
            <ul class="plain">
              {p.done.map((d) => (
                <li>{d.text}</li>
              ))}
            </ul>
          </details>
        ) : null}
        <p class="screen-only">
          <a href={state === 'handed-over' ? paths.record(id) : paths.quote(id)}>
            {words.say(state === 'handed-over' ? 'page.record.see' : 'page.agreed.quote')}
          </a>
        </p>
      </section>
      {state === 'handed-over' ? <After {...p} /> : null}
    </Layout>
  )
}
