import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { Field } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineForm } from './line-form'

/** Checks owed before hand-over; leaving one out needs a reason. */
export const Checks: FC<SheetPart> = ({ words, view, once, ...refused }) =>
  view.sheet.checks.length === 0 ? null : (
    <section id="checks">
      <h2>{words.say('page.checks')}</h2>
      <ul class="plain">
        {view.sheet.checks.map((c) => (
          <li>
            <span class="box paper-inline" aria-hidden="true" />
            <b>{words.say(`check.${c.id}`)}</b>{' '}
            <span class="quietly">
              {words.say(`page.check.${c.state}`)}
              {c.blocks && c.state === 'open' ? ` ${words.say('page.check.blocks')}` : ''}
            </span>
            {c.items.length > 0 ? (
              <p class="quietly">{words.say('page.check.from', { what: c.items })}</p>
            ) : null}
            {c.state === 'open' ? (
              <div class="screen-only">
                <LineForm
                  id={view.id}
                  kind="checked"
                  once={`${once}-check-${c.id}`}
                  hidden={{ check: c.id }}
                >
                  <div class="acts">
                    <Button>
                      {words.say('page.check.did')}
                      <span class="unseen"> {words.say(`check.${c.id}`)}</span>
                    </Button>
                  </div>
                </LineForm>
                <details open={isRefused(refusedForm(refused, { kind: 'checked', check: c.id }))}>
                  <summary>{words.say('page.check.waive')}</summary>
                  <LineForm
                    id={view.id}
                    kind="checked"
                    once={`${once}-waive-${c.id}`}
                    hidden={{ check: c.id, waived: '1' }}
                  >
                    <Field
                      name="why"
                      id={`f-waive-${c.id}`}
                      label={words.say('page.check.why')}
                      maxlength={500}
                      {...typed(refusedForm(refused, { kind: 'checked', check: c.id }), 'why')}
                    />
                    <div class="acts">
                      <Button quiet>{words.say('page.check.waive')}</Button>
                    </div>
                  </LineForm>
                </details>
              </div>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  )
