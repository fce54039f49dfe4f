import type { FC } from 'hono/jsx'

import { Button, Once } from '../parts/button'
import { Field } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { paths } from '../paths'
import type { SheetPart } from './bench-view'

/** Readings as plain columns, a panel a line, as a gauge or a table gives them. */
export const PasteForm: FC<SheetPart & { readonly probe: string }> = ({
  words,
  view,
  once,
  probe,
  ...given
}) => {
  const refused = refusedForm(given, { kind: 'pasted' })
  return (
    <details open={isRefused(refused)}>
      <summary>{words.say('page.paste.new')}</summary>
      <form class="screen-only" method="post" action={paths.benchLines(view.id)} novalidate>
        <Once once={`${once}-paste`} />
        <input type="hidden" name="kind" value="pasted" />
        <input type="hidden" name="probe" value={probe} />
        <Field
          name="columns"
          label={words.say('page.paste.columns')}
          hint={words.say('page.paste.columns.hint')}
          rows={6}
          {...typed(refused, 'columns')}
        />
        <div class="acts">
          <Button quiet>{words.say('page.reading.keep')}</Button>
        </div>
      </form>
    </details>
  )
}
