import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { Field } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineForm } from './line-form'

/** Parts taken off and where they lie; each must be back before the car leaves. */
export const Removals: FC<SheetPart> = ({ words, view, once, ...refused }) => {
  const off = refusedForm(refused, { kind: 'removed' })
  return (
    <section id="removals">
      <h2>{words.say('page.removals')}</h2>
      <ul class="plain">
        {view.removals.map((r) => (
          <li>
            <b>{r.item}</b> {[r.place, r.thickness, r.stored].filter(Boolean).join(', ')}
            {r.refitted ? (
              <p class="quietly">{words.say('page.removal.back')}</p>
            ) : (
              <LineForm
                id={view.id}
                kind="refitted"
                once={`${once}-refit-${r.id}`}
                hidden={{ removal: r.id }}
              >
                <div class="acts">
                  <Button quiet>
                    {words.say('page.removal.refit')}
                    <span class="unseen"> {r.item}</span>
                  </Button>
                </div>
              </LineForm>
            )}
          </li>
        ))}
      </ul>
      <details class="screen-only" open={isRefused(off)}>
        <summary>{words.say('page.removal.new')}</summary>
        <LineForm id={view.id} kind="removed" once={`${once}-removed`}>
          <Field
            name="item"
            label={words.say('page.removal.item')}
            maxlength={80}
            {...typed(off, 'item')}
          />
          <Field
            name="place"
            id="f-removed-place"
            label={words.say('page.finding.place')}
            maxlength={64}
            {...typed(off, 'place')}
          />
          <Field
            name="thickness"
            label={words.say('page.removal.thickness')}
            maxlength={40}
            {...typed(off, 'thickness')}
          />
          <Field
            name="stored"
            label={words.say('page.removal.stored')}
            maxlength={80}
            {...typed(off, 'stored')}
          />
          <div class="acts">
            <Button quiet>{words.say('page.removal.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
}
