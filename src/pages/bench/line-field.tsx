import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { keptOne } from '../frame'
import { Field, type FieldProps, Select } from '../parts/field'
import { type Refused, typed } from '../parts/refused'

/** The id of a line's field on the sheet, where many forms have fields of one name. */
export const lineFieldId = (kind: string, name: string): string => `f-${kind}-${name}`

type Of = { readonly kind: string; readonly refused: Refused }

/** One field of a line's form: named as in the line's body, with its own id and what was typed. */
export const LineField: FC<
  Of & Omit<FieldProps, 'value' | 'errors' | 'id'> & { readonly otherwise?: string }
> = ({ kind, refused, otherwise, ...field }) => (
  <Field
    {...field}
    id={lineFieldId(kind, field.name)}
    {...typed(refused, field.name, otherwise ?? '')}
  />
)

/** A list to choose one of, of a line's form; `none` puts an empty choice first. */
export const LineSelect: FC<
  Of & {
    readonly words: Words
    readonly name: string
    readonly label: string
    readonly values: readonly string[]
    /** Key of the words of a value, with a dot at its end. */
    readonly of: string
    readonly none?: string
    readonly otherwise?: string
  }
> = ({ kind, refused, words, name, label, values, of, none, otherwise }) => (
  <Select
    name={name}
    id={lineFieldId(kind, name)}
    label={label}
    options={[
      ...(none === undefined ? [] : [{ value: '', label: none }]),
      ...values.map((value) => ({ value, label: words.say(`${of}${value}`) })),
    ]}
    value={keptOne(refused.kept, name, otherwise ?? '')}
  />
)
