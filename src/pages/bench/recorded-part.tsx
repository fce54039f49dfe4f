import type { FC } from 'hono/jsx'
import { RECORDED } from '../../docket/kind-names'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

/** What the record keeps besides: the batch of the coating, the light, the air. */
export const RecordedPart: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const refused = refusedForm(given, { kind: 'recorded' })
  const of = { kind: 'recorded', refused }
  return (
    <section id="recorded" class="fold">
      <details open={isRefused(refused)}>
        <summary>
          <h2>{words.say('page.recorded', { n: view.recorded.length })}</h2>
        </summary>
        <ul class="plain">
          {view.recorded.map((r) => (
            <li>
              <b>{words.say(`page.recorded.${r.what}`)}</b> {r.value}
            </li>
          ))}
        </ul>
        <LineForm id={view.id} kind="recorded" once={`${once}-recorded`}>
          <LineSelect
            {...of}
            words={words}
            name="what"
            label={words.say('page.recorded.what')}
            values={RECORDED}
            of="page.recorded."
          />
          <LineField
            {...of}
            name="value"
            label={words.say('page.recorded.value')}
            maxlength={120}
          />
          <div class="acts">
            <Button quiet>{words.say('page.arrival.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
}
