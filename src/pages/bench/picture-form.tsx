import type { Child, FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { Button, Once } from '../parts/button'
import { errorFor, FieldFault } from '../parts/error-summary'
import type { Refused } from '../parts/refused'
import { paths } from '../paths'

/** A form that writes one line of the bench with a picture, if there is one. */
export const PictureForm: FC<{
  readonly words: Words
  readonly id: string
  readonly kind: 'found' | 'removed'
  readonly once: string
  readonly hidden?: Readonly<Record<string, string>>
  readonly fileId: string
  readonly refused: Refused
  readonly children?: Child
}> = ({ words, id, kind, once, hidden = {}, fileId, refused, children }) => (
  <form
    class="screen-only"
    method="post"
    action={paths.benchFindings(id)}
    enctype="multipart/form-data"
    data-enhance="photo"
    novalidate
  >
    <Once once={once} />
    <input type="hidden" name="kind" value={kind} />
    {Object.entries(hidden).map(([name, value]) => (
      <input type="hidden" name={name} value={value} />
    ))}
    {children}
    <FieldFault name="file" message={errorFor(refused.errors, 'file')} />
    <div class="field">
      <label for={fileId}>{words.say('page.finding.add-photo')}</label>
      <input id={fileId} type="file" name="file" accept="image/jpeg,image/png,image/webp" />
    </div>
    <div class="acts">
      <Button quiet>{words.say(`page.${kind === 'found' ? 'finding' : 'removal'}.keep`)}</Button>
    </div>
  </form>
)
