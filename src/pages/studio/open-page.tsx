import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { FieldError, Frame, Kept } from '../frame'
import type { QuestionView } from '../intake/question-view'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary, errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { Field, Select } from '../parts/field'
import { Tick } from '../parts/tick'
import { paths } from '../paths'

export type KnownCar = {
  readonly id: string
  readonly title: string
  readonly person: string | null
  readonly plate: string | null
  readonly reference: string | null
  readonly age: string
}

export type OpenPageProps = {
  readonly frame: Frame
  readonly once: string
  /** Searched for a car that was here before. */
  readonly q?: string
  readonly found: readonly KnownCar[]
  /** The earlier visit the form starts from. */
  readonly like?: KnownCar
  /** The few questions of the short way, with what is filled in. */
  readonly questions: readonly QuestionView[]
  readonly kept: Kept
  readonly errors?: readonly FieldError[]
}

const Known: FC<OpenPageProps> = ({ frame: { words }, q, found, like }) => (
  <section>
    <h1>{words.say('page.open')}</h1>
    {like ? (
      <p>
        {words.say('page.open.like', { car: like.title || words.say('page.list.no-car') })}{' '}
        <a href={paths.docket(like.id)}>{like.reference ?? words.say('page.open.last')}</a>
        {` · ${like.age} · `}
        <a href={paths.newDocket}>{words.say('page.open.anew')}</a>
      </p>
    ) : (
      <form method="get" action={paths.newDocket} role="search">
        <Field name="q" type="search" label={words.say('page.open.search')} value={q ?? ''} />
        <div class="acts">
          <Button quiet>{words.say('page.list.search.button')}</Button>
        </div>
      </form>
    )}
    {q && found.length === 0 ? <p role="status">{words.say('page.open.none')}</p> : null}
    {found.length > 0 ? (
      <ul class="plain known">
        {found.map((k) => (
          <li>
            <a href={paths.newLike(k.id)}>
              {[k.title || words.say('page.list.no-car'), k.person, k.plate]
                .filter(Boolean)
                .join(', ')}
            </a>{' '}
            <span class="quietly">{[k.reference, k.age].filter(Boolean).join(' · ')}</span>
          </li>
        ))}
      </ul>
    ) : null}
  </section>
)

type OneProps = {
  readonly words: Words
  readonly question: QuestionView
  readonly kept: Kept
  readonly errors: readonly FieldError[] | undefined
}

const first = (kept: Kept, name: string): string => kept[name]?.[0] ?? ''

const Ticks: FC<OneProps> = ({ words, question: q, kept, errors }) => {
  const name = `${q.id}.value[]`
  const picked = kept[name] ?? []
  const fault = errorFor(errors, `${q.id}.value`)
  return (
    <fieldset>
      <legend>{words.say(`page.open.${q.id}`)}</legend>
      <FieldFault name={`${q.id}.value`} message={fault} />
      <div class="columns">
        {(q.options ?? []).map((o, i) => (
          <Tick
            type="checkbox"
            name={name}
            value={o.value}
            label={o.label}
            checked={picked.includes(o.value)}
            {...(i === 0 ? { id: fieldId(`${q.id}.value`) } : {})}
          />
        ))}
        {q.unsureAllowed ? (
          <Tick
            type="checkbox"
            name={`${q.id}.none`}
            value="1"
            label={words.say('page.open.none-of-these')}
            checked={first(kept, `${q.id}.none`) === '1'}
          />
        ) : null}
      </div>
      {q.unsureAllowed ? <p class="hint">{words.say('page.open.not-said')}</p> : null}
    </fieldset>
  )
}

const One: FC<OneProps> = (p) => {
  const { words, question: q, kept, errors } = p
  const name = `${q.id}.value`
  const label = words.say(`page.open.${q.id}`)
  if (q.kind === 'multi') return <Ticks {...p} />
  if (q.kind === 'choice')
    return (
      <div>
        <FieldFault name={name} message={errorFor(errors, name)} />
        <Select
          name={name}
          label={label}
          value={first(kept, name)}
          options={[
            { value: '', label: words.say(q.unsureAllowed ? 'page.open.unknown' : 'page.choose') },
            ...(q.options ?? []).map((o) => ({ value: o.value, label: o.label })),
          ]}
        />
      </div>
    )
  return (
    <Field
      name={name}
      label={label}
      value={first(kept, name)}
      short={q.kind !== 'text'}
      {...(q.kind === 'date' ? { type: 'date' as const } : {})}
      {...(q.kind === 'year' ? { inputmode: 'numeric' as const } : {})}
      {...(errors ? { errors } : {})}
    />
  )
}

const Who: FC<OpenPageProps> = ({ frame: { words }, kept, errors }) => {
  const shared = errors ? { errors } : {}
  return (
    <fieldset>
      <legend>{words.say('page.open.who')}</legend>
      {(['name', 'phone', 'email'] as const).map((part) => (
        <Field
          name={`contact.${part}`}
          label={words.say(`page.open.${part}`)}
          value={first(kept, `contact.${part}`)}
          autocomplete="off"
          {...(part === 'phone' ? { type: 'tel' as const } : {})}
          {...(part === 'email' ? { type: 'email' as const } : {})}
          {...shared}
        />
      ))}
      <Field
        name="plate"
        label={words.say('page.open.plate')}
        value={first(kept, 'plate')}
        autocomplete="off"
        maxlength={20}
        short
        {...shared}
      />
    </fieldset>
  )
}

/** Opening a docket oneself: from the last visit of a car, or from the few things one asks first. */
export const OpenPage: FC<OpenPageProps> = (p) => {
  const { frame, once, like, questions, kept, errors } = p
  const { words } = frame
  const fault = errorFor(errors, 'consent')
  return (
    <Layout frame={frame} title={words.say('page.open')}>
      <ErrorSummary words={words} errors={errors} />
      <Known {...p} />
      <section>
        <form method="post" action={paths.openShort} novalidate>
          <Once once={once} />
          {like ? <input type="hidden" name="like" value={like.id} /> : null}
          <Who {...p} />
          {questions.map((question) => (
            <One words={words} question={question} kept={kept} errors={errors} />
          ))}
          <FieldFault name="consent" message={fault} />
          <Tick
            type="checkbox"
            name="consent"
            value="1"
            id={fieldId('consent')}
            label={words.say('page.open.consent')}
            checked={first(kept, 'consent') === '1'}
          />
          <div class="acts">
            <Button>{words.say('page.open.button')}</Button>
          </div>
        </form>
      </section>
      {like ? null : (
        <section>
          <form method="post" action={paths.openDocket}>
            <Once once={`${once}-long`} />
            <p>{words.say('page.list.open.lead')}</p>
            <div class="acts">
              <Button quiet>{words.say('page.open.long')}</Button>
            </div>
          </form>
        </section>
      )}
    </Layout>
  )
}
