import type { FC } from 'hono/jsx'
import { SHIM_ROWS } from '../../docket/bench-form'
import { PROBES } from '../../docket/kind-names'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

/** The gauge on shims of known thickness: the last verdict, and a form for the next. */
export const GaugeForm: FC<SheetPart & { readonly probe: string }> = ({
  words,
  view,
  once,
  probe,
  ...given
}) => {
  const refused = refusedForm(given, { kind: 'gauge-checked' })
  const of = { kind: 'gauge-checked', refused }
  const { gauge } = view
  return (
    <>
      {gauge ? (
        <div class={`note ${gauge.ok ? 'know' : 'stop'}`}>
          <p>
            <b>{words.say(gauge.ok ? 'page.gauge.passed' : 'page.gauge.failed')}</b>
          </p>
          <ul>
            {gauge.shims.map((s) => (
              <li>
                {words.say(s.ok ? 'page.gauge.shim' : 'page.gauge.shim-off', {
                  nominal: s.nominal,
                  read: s.read,
                  most: s.most,
                })}
              </li>
            ))}
          </ul>
        </div>
      ) : (
        <p>{words.say('page.gauge.none')}</p>
      )}
      <details open={isRefused(refused)}>
        <summary>{words.say('page.gauge.new')}</summary>
        <LineForm id={view.id} kind="gauge-checked" once={`${once}-gauge`}>
          {SHIM_ROWS.map((n) => (
            <div class="pair">
              <LineField
                {...of}
                name={`nominal${n}`}
                label={words.say('page.gauge.nominal', { n })}
                inputmode="decimal"
                short
              />
              <LineField
                {...of}
                name={`read${n}`}
                label={words.say('page.gauge.read', { n })}
                inputmode="decimal"
                short
              />
            </div>
          ))}
          <LineSelect
            {...of}
            words={words}
            name="probe"
            label={words.say('page.reading.probe')}
            values={PROBES}
            of="page.probe."
            otherwise={probe}
          />
          <div class="acts">
            <Button quiet>{words.say('page.gauge.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </>
  )
}
