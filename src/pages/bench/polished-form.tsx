import type { FC } from 'hono/jsx'
import { sequenceIds } from '../../quote/paint'
import { keptOne } from '../frame'
import { Button } from '../parts/button'
import { errorFor, FieldFault } from '../parts/error-summary'
import { Select } from '../parts/field'
import { isRefused, refusedForm } from '../parts/refused'
import { Tick } from '../parts/tick'
import { panelsOfSheet, type SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

const KEPT = ['machine', 'pad', 'abrasive', 'speed'] as const

/** What was run on a panel; machine, pad, product and speed stay as they were last time. */
export const PolishedForm: FC<SheetPart & { readonly panel?: string }> = ({
  words,
  view,
  once,
  panel,
  ...given
}) => {
  const refused = refusedForm(given, { kind: 'polished' })
  const of = { kind: 'polished', refused }
  const last = view.polished.at(-1)
  return (
    <details open={isRefused(refused)}>
      <summary>{words.say('page.polished')}</summary>
      <LineForm id={view.id} kind="polished" once={`${once}-polished`}>
        <LineSelect
          {...of}
          words={words}
          name="panel"
          label={words.say('page.panel')}
          values={panelsOfSheet(view)}
          of="panel."
          otherwise={panel ?? last?.panel ?? ''}
        />
        <FieldFault name="sequence" message={errorFor(refused.errors, 'sequence')} />
        <Select
          name="sequence"
          id="f-polished-sequence"
          label={words.say('page.polished.what')}
          options={sequenceIds.map((v) => ({ value: v, label: words.say(`sequence.${v}`) }))}
          value={keptOne(refused.kept, 'sequence', last?.sequence ?? 'light')}
        />
        <LineField
          {...of}
          name="sets"
          label={words.say('page.polished.sets')}
          inputmode="numeric"
          short
          otherwise="1"
        />
        {KEPT.map((name) => (
          <LineField
            {...of}
            name={name}
            label={words.say(`page.polished.${name}`)}
            maxlength={name === 'speed' ? 40 : 80}
            otherwise={last?.[name] ?? ''}
          />
        ))}
        {refused.errors?.some((e) => e.field === 'sequence') ? (
          <Tick type="checkbox" name="ran" value="1" label={words.say('page.polished.ran')} />
        ) : null}
        <div class="acts">
          <Button quiet>{words.say('page.polished.keep')}</Button>
        </div>
      </LineForm>
    </details>
  )
}
