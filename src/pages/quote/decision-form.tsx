import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { type FieldError, type Kept, keptOne } from '../frame'
import { Button, Once } from '../parts/button'
import { errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { NoteView } from '../parts/note-view'
import { refusedForm, typed } from '../parts/refused'
import { Tick } from '../parts/tick'
import { paths } from '../paths'
import { AgreeExtras } from './agree-extras'
import type { QuoteView } from './quote-view'

export type DecisionFormProps = {
  readonly words: Words
  readonly id: string
  readonly quote: QuoteView
  readonly once: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const Options: FC<DecisionFormProps> = ({ words, quote, kept, errors }) =>
  quote.options && quote.options.length > 0 ? (
    <fieldset>
      <legend>{words.say('page.decide.options')}</legend>
      <FieldFault name="option" message={errorFor(errors, 'option')} />
      <div class="ticks">
        {quote.options.map((o, i) => (
          <Tick
            type="radio"
            name="option"
            value={o.option}
            label={o.name}
            hint={money(words, o.offer.total)}
            checked={keptOne(kept, 'option') === o.option}
            {...(i === 0 ? { id: fieldId('option') } : {})}
          />
        ))}
      </div>
    </fieldset>
  ) : null

/** Notes that need a decision; with options those of each, and for which where not for all. */
const notesToRead = ({ estimate, options = [] }: QuoteView) => {
  const lists = options.length > 0 ? options : [{ option: '', estimate }]
  const all = new Map(lists.flatMap((o) => o.estimate.riskNotes).map((n) => [n.id, n]))
  return [...all.values()]
    .filter((n) => n.decision)
    .map((note) => {
      const of = lists.filter((o) => o.estimate.riskNotes.some((n) => n.id === note.id))
      const only = of.length === lists.length ? null : of.map((o) => o.option.toUpperCase())
      return { note, only }
    })
}

/** Notes that ask for a decision must be ticked as read before the yes counts. */
const MustRead: FC<DecisionFormProps> = ({ words, quote, kept, errors }) => {
  const notes = notesToRead(quote)
  if (notes.length === 0) return null
  return (
    <fieldset>
      <legend>{words.say('page.decide.read')}</legend>
      {notes.map(({ note, only }) => (
        <NoteView words={words} note={note}>
          <FieldFault
            name={`acknowledged-${note.id}`}
            message={errorFor(errors, `acknowledged-${note.id}`)}
          />
          <Tick
            type="checkbox"
            name="acknowledged[]"
            value={note.id}
            label={words.say('page.decide.have-read')}
            {...(only ? { hint: words.say('page.decide.for-option', { options: only }) } : {})}
            checked={kept?.['acknowledged[]']?.includes(note.id) ?? false}
            id={fieldId(`acknowledged-${note.id}`)}
            {...(errorFor(errors, `acknowledged-${note.id}`)
              ? { describedby: `${fieldId(`acknowledged-${note.id}`)}-fault` }
              : {})}
          />
        </NoteView>
      ))}
    </fieldset>
  )
}

const Hidden: FC<DecisionFormProps & { readonly decision: string }> = (p) => (
  <>
    <Once once={`${p.once}-${p.decision}`} />
    <input type="hidden" name="revision" value={String(p.quote.revision)} />
    <input type="hidden" name="decision" value={p.decision} />
  </>
)

/** The customer's word on exactly this revision: yes, a question, or no. */
export const DecisionForm: FC<DecisionFormProps> = (p) => {
  const { words, id, quote, errors, kept } = p
  const shared = errors ? { errors } : {}
  return (
    <section class="screen-only" id="decide">
      <h2>{words.say('page.decide')}</h2>
      <form method="post" action={paths.decision(id)} novalidate>
        <Hidden {...p} decision="accept" />
        <Options {...p} />
        <MustRead {...p} />
        <AgreeExtras {...p} />
        <Field
          name="name"
          label={words.say('page.decide.name')}
          hint={words.say('page.decide.name.hint')}
          autocomplete="name"
          maxlength={200}
          value={keptOne(kept, 'name')}
          {...shared}
        />
        <div class="acts">
          <Button>
            {quote.options && quote.options.length > 0
              ? words.say('page.decide.accept-chosen')
              : words.say('page.decide.accept', { total: money(words, quote.offer.total) })}
          </Button>
        </div>
      </form>
      <details open={keptOne(kept, 'decision') === 'ask'}>
        <summary>{words.say('page.decide.ask')}</summary>
        <form method="post" action={paths.decision(id)} novalidate>
          <Hidden {...p} decision="ask" />
          <Field
            name="text"
            id="f-ask"
            label={words.say('page.decide.ask.text')}
            rows={4}
            maxlength={2000}
            {...typed(refusedForm(p, { decision: 'ask' }), 'text')}
          />
          <div class="acts">
            <Button quiet>{words.say('page.decide.ask.send')}</Button>
          </div>
        </form>
      </details>
      <details open={keptOne(kept, 'decision') === 'decline'}>
        <summary>{words.say('page.decide.decline')}</summary>
        <form method="post" action={paths.decision(id)} novalidate>
          <Hidden {...p} decision="decline" />
          <Field
            name="text"
            id="f-decline"
            label={words.say('page.decide.decline.text')}
            hint={words.say('page.decide.decline.hint')}
            rows={3}
            maxlength={2000}
            {...typed(refusedForm(p, { decision: 'decline' }), 'text')}
          />
          <div class="acts">
            <Button quiet>{words.say('page.decide.decline.send')}</Button>
          </div>
        </form>
      </details>
    </section>
  )
}
