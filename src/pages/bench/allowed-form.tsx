import type { FC } from 'hono/jsx'
import { HEARD } from '../../docket/kind-names'
import { sequenceIds } from '../../quote/paint'
import { Button } from '../parts/button'
import { errorFor, FieldFault } from '../parts/error-summary'
import { isRefused, refusedForm } from '../parts/refused'
import { panelsOfSheet, type SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

/** The owner's word that more than the allowance may come off: who, how, and the written reason. */
export const AllowedForm: FC<SheetPart & { readonly panel?: string }> = ({
  words,
  view,
  once,
  panel,
  ...given
}) => {
  const refused = refusedForm(given, { kind: 'allowed' })
  const of = { kind: 'allowed', refused, words }
  const more = view.sheet.panels.filter((p) => p.byDecision)
  return (
    <>
      {view.decided.map((d) => (
        <div class="note decide">
          <p>
            {words.say('page.allowed.said', {
              panel: words.say(`panel.${d.panel}`),
              sequence: words.say(`sequence.${d.sequence}`),
              name: d.name,
              why: d.why,
            })}
          </p>
        </div>
      ))}
      {more.length === 0 && !isRefused(refused) ? null : (
        <details open={isRefused(refused)}>
          <summary>{words.say('page.allowed.new')}</summary>
          <LineForm id={view.id} kind="allowed" once={`${once}-allowed`}>
            <LineSelect
              {...of}
              name="panel"
              label={words.say('page.panel')}
              values={more.length > 0 ? more.map((p) => p.panel) : panelsOfSheet(view)}
              of="panel."
              otherwise={panel ?? ''}
            />
            <FieldFault name="sequence" message={errorFor(refused.errors, 'sequence')} />
            <LineSelect
              {...of}
              name="sequence"
              label={words.say('page.polished.what')}
              values={sequenceIds}
              of="sequence."
              otherwise={more[0]?.byDecision ?? 'gentle'}
            />
            <LineField
              kind="allowed"
              refused={refused}
              name="why"
              label={words.say('page.allowed.why')}
              rows={2}
              maxlength={2000}
            />
            <LineField
              kind="allowed"
              refused={refused}
              name="name"
              label={words.say('page.heard.name')}
              maxlength={200}
            />
            <LineSelect
              {...of}
              name="how"
              label={words.say('page.heard')}
              values={HEARD}
              of="page.heard."
            />
            <div class="acts">
              <Button quiet>{words.say('page.allowed.keep')}</Button>
            </div>
          </LineForm>
        </details>
      )}
    </>
  )
}
