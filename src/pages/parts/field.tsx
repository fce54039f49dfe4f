import type { FC } from 'hono/jsx'
import type { FieldError } from '../frame'
import { errorFor, FieldFault, fieldId } from './error-summary'

export type FieldProps = {
  readonly name: string
  readonly label: string
  readonly hint?: string
  readonly value?: string
  readonly errors?: readonly FieldError[]
  readonly type?: 'text' | 'email' | 'tel' | 'search' | 'date' | 'time'
  readonly inputmode?: 'numeric' | 'decimal'
  readonly autocomplete?: string
  /** Rows make it a text area. */
  readonly rows?: number
  readonly readonly?: boolean
  /** Few characters expected: a short box. */
  readonly short?: boolean
  readonly maxlength?: number
  /** Tells two fields of one name apart on a page. */
  readonly id?: string
}

/** One labelled control with its hint and fault tied to it. */
export const Field: FC<FieldProps> = (p) => {
  const id = p.id ?? fieldId(p.name)
  const fault = errorFor(p.errors, p.name)
  const described = [p.hint ? `${id}-hint` : '', fault ? `${fieldId(p.name)}-fault` : '']
    .filter(Boolean)
    .join(' ')
  const shared = {
    id,
    name: p.name,
    readonly: p.readonly,
    maxlength: p.maxlength,
    autocomplete: p.autocomplete,
    'aria-describedby': described || undefined,
    'aria-invalid': fault ? ('true' as const) : undefined,
  }
  return (
    <div class="field">
      <label for={id}>{p.label}</label>
      {p.hint ? (
        <p class="hint" id={`${id}-hint`}>
          {p.hint}
        </p>
      ) : null}
      <FieldFault name={p.name} message={fault} />
      {p.rows ? (
        <textarea {...shared} rows={p.rows}>
          {p.value ?? ''}
        </textarea>
      ) : (
        <input
          {...shared}
          type={p.type ?? 'text'}
          inputmode={p.inputmode}
          value={p.value ?? ''}
          class={p.short ? 'short' : undefined}
          spellcheck={p.type === 'email' ? false : undefined}
        />
      )}
    </div>
  )
}

export type Choice = { readonly value: string; readonly label: string; readonly hint?: string }

/** A labelled list to choose one of, for small sets inside studio forms. */
export const Select: FC<{
  readonly name: string
  readonly label: string
  readonly options: readonly Choice[]
  readonly value?: string
  readonly id?: string
}> = ({ name, label, options, value, id }) => (
  <div class="field">
    <label for={id ?? fieldId(name)}>{label}</label>
    <select id={id ?? fieldId(name)} name={name}>
      {options.map((o) => (
        <option value={o.value} selected={o.value === value}>
          {o.label}
        </option>
      ))}
    </select>
  </div>
)
