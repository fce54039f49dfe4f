import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { FieldError } from '../frame'

/** Id of the first control of a field; the summary leads there. */
export const fieldId = (name: string): string => `f-${name.replace(/[^a-zA-Z0-9-]/g, '-')}`

export const errorFor = (errors: readonly FieldError[] | undefined, name: string) =>
  errors?.find((e) => e.field === name)?.message

/** Everything that stopped the form, each leading to its field. Nothing when there is nothing. */
export const ErrorSummary: FC<{
  readonly words: Words
  readonly errors: readonly FieldError[] | undefined
  /** Ids of fields that bear another than their name's, since a page has several of the name. */
  readonly ids?: Readonly<Record<string, string>>
}> = ({ words, errors, ids = {} }) =>
  errors && errors.length > 0 ? (
    <div class="faults" role="alert" tabindex={-1} id="faults">
      <h2>{words.say('page.faults', { n: errors.length })}</h2>
      <ul>
        {errors.map((e) => (
          <li>
            <a href={`#${ids[e.field] ?? fieldId(e.field)}`}>{e.message}</a>
          </li>
        ))}
      </ul>
    </div>
  ) : null

/** The same sentence beside the field. */
export const FieldFault: FC<{ readonly name: string; readonly message: string | undefined }> = ({
  name,
  message,
}) =>
  message === undefined ? null : (
    <p class="fault" id={`${fieldId(name)}-fault`}>
      {message}
    </p>
  )
