import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { type FieldError, type Kept, keptOne } from '../frame'
import { errorFor, fieldId } from '../parts/error-summary'
import { Field } from '../parts/field'
import { Tick } from '../parts/tick'
import type { QuestionView } from './question-view'

export type QuestionInputProps = {
  readonly words: Words
  readonly question: QuestionView
  readonly kept?: Kept
  readonly errors?: readonly FieldError[]
}

const described = (p: QuestionInputProps, name: string): string | undefined =>
  [p.question.how ? 'q-how' : '', errorFor(p.errors, name) ? `${fieldId(name)}-fault` : '']
    .filter(Boolean)
    .join(' ') || undefined

/** Choices of one or several; nothing is ticked that was not ticked before. */
const Choices: FC<QuestionInputProps & { readonly many: boolean }> = (p) => {
  const name = p.many ? 'value[]' : 'value'
  const kept = p.kept?.[name] ?? []
  const yesNo = [
    { value: 'true', label: p.words.say('page.yes') },
    { value: 'false', label: p.words.say('page.no') },
  ]
  const options = p.question.kind === 'yesNo' ? yesNo : (p.question.options ?? [])
  return (
    <div class="ticks">
      {options.map((o, i) => (
        <Tick
          type={p.many ? 'checkbox' : 'radio'}
          name={name}
          value={o.value}
          label={o.label}
          checked={kept.includes(o.value)}
          {...('hint' in o && o.hint ? { hint: o.hint } : {})}
          {...(p.question.alone?.includes(o.value) ? { alone: true } : {})}
          {...(i === 0 ? { id: fieldId('value') } : {})}
        />
      ))}
    </div>
  )
}

/** One box whose name is the question itself. */
const Box: FC<
  QuestionInputProps & {
    readonly inputmode?: 'numeric' | 'decimal'
    readonly short?: boolean
    readonly autocapitalize?: 'characters'
    readonly maxlength?: number
    readonly type?: 'text' | 'date'
  }
> = (p) => (
  <input
    type={p.type ?? 'text'}
    id={fieldId('value')}
    name="value"
    class={p.short ? 'short' : undefined}
    inputmode={p.inputmode}
    autocapitalize={p.autocapitalize}
    autocomplete="off"
    maxlength={p.maxlength}
    value={keptOne(p.kept, 'value')}
    aria-labelledby="q"
    aria-describedby={described(p, 'value')}
    aria-invalid={errorFor(p.errors, 'value') ? 'true' : undefined}
  />
)

const unitName = (words: Words, unit: string): string =>
  words.has(`unit.${unit}.name`) ? words.say(`unit.${unit}.name`) : unit

const NumberBox: FC<QuestionInputProps> = (p) => {
  const { unit, units = [] } = p.question
  return (
    <div class="with-unit">
      <Box {...p} inputmode="decimal" short maxlength={12} />
      {units.length > 1 ? (
        <select name="unit" aria-label={p.words.say('page.unit')}>
          {units.map((u) => (
            <option value={u} selected={keptOne(p.kept, 'unit', unit) === u}>
              {unitName(p.words, u)}
            </option>
          ))}
        </select>
      ) : (
        <>
          {unit ? <input type="hidden" name="unit" value={unit} /> : null}
          <span class="unit">{unit ? unitName(p.words, unit) : ''}</span>
        </>
      )}
    </div>
  )
}

const ContactFields: FC<QuestionInputProps> = ({ words, kept, errors }) => {
  const shared = errors ? { errors } : {}
  return (
    <>
      <Field
        name="name"
        label={words.say('page.contact.name')}
        autocomplete="name"
        value={keptOne(kept, 'name')}
        maxlength={200}
        {...shared}
      />
      <p class="hint">{words.say('page.contact.one')}</p>
      <Field
        name="email"
        type="email"
        label={words.say('page.contact.email')}
        autocomplete="email"
        value={keptOne(kept, 'email')}
        maxlength={254}
        {...shared}
      />
      <Field
        name="phone"
        type="tel"
        label={words.say('page.contact.phone')}
        autocomplete="tel"
        value={keptOne(kept, 'phone')}
        maxlength={40}
        {...shared}
      />
    </>
  )
}

/** The control for a question's kind. Photos have a form of their own. */
export const QuestionInput: FC<QuestionInputProps> = (p) => {
  switch (p.question.kind) {
    case 'choice':
    case 'yesNo':
      return <Choices {...p} many={false} />
    case 'multi':
      return <Choices {...p} many />
    case 'number':
      return <NumberBox {...p} />
    case 'year':
      return <Box {...p} inputmode="numeric" short maxlength={4} />
    case 'date':
      return <Box {...p} type="date" short />
    case 'money':
      return (
        <div class="with-unit">
          <Box {...p} inputmode="decimal" short maxlength={12} />
          <span class="unit">{p.words.formats.currency}</span>
        </div>
      )
    case 'vin':
      return <Box {...p} autocapitalize="characters" maxlength={32} />
    case 'text':
      return (
        <textarea
          id={fieldId('value')}
          name="value"
          rows={5}
          maxlength={10_000}
          aria-labelledby="q"
          aria-describedby={described(p, 'value')}
          aria-invalid={errorFor(p.errors, 'value') ? 'true' : undefined}
        >
          {keptOne(p.kept, 'value')}
        </textarea>
      )
    case 'contact':
      return <ContactFields {...p} />
    case 'photos':
      return null
  }
}
