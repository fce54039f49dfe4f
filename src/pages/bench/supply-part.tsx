import type { FC } from 'hono/jsx'
import { SUPPLY } from '../../jobsheet/supply'
import { wantedText } from '../../words/wanted-text'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

/** Parts the job waits for: wanted, on their way, or here; a car may leave while one is still coming. */
export const SupplyPart: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const wanted = refusedForm(given, { kind: 'wanted' })
  const moved = refusedForm(given, { kind: 'supplied' })
  return (
    <section id="parts" class="fold">
      <details open={isRefused(wanted) || isRefused(moved)}>
        <summary>
          <h2>{words.say('page.parts', { n: view.supply.length })}</h2>
        </summary>
        <ul class="plain">
          {view.supply.map((s) => {
            const refused = refusedForm(given, { kind: 'supplied', item: s.item })
            const of = { kind: `supplied-${s.item}`, refused }
            const name = s.thing ?? wantedText(s.item, words)
            return (
              <li>
                <b>{name}</b> {words.say(`page.supply.${s.state}`)}{' '}
                {s.expected ? words.say('page.supply.by', { date: s.expected }) : ''}
                {s.state === 'in-hand' ? null : (
                  <LineForm
                    id={view.id}
                    kind="supplied"
                    once={`${once}-supply-${s.item}`}
                    hidden={{ item: s.item, ...(s.thing ? { thing: s.thing } : {}) }}
                  >
                    <LineSelect
                      {...of}
                      words={words}
                      name="state"
                      label={words.say('page.supply.state', { what: name })}
                      values={SUPPLY}
                      of="page.supply."
                      otherwise={s.state === 'wanted' ? 'on-its-way' : 'in-hand'}
                    />
                    <LineField
                      {...of}
                      name="expected"
                      type="date"
                      label={words.say('page.supply.expected')}
                      short
                    />
                    <div class="acts">
                      <Button quiet>{words.say('page.arrival.keep')}</Button>
                    </div>
                  </LineForm>
                )}
              </li>
            )
          })}
        </ul>
        <LineForm
          id={view.id}
          kind="wanted"
          once={`${once}-wanted`}
          hidden={{ item: `own:${once}`.slice(0, 64), what: 'part' }}
        >
          <LineField
            kind="wanted"
            refused={wanted}
            name="thing"
            label={words.say('page.parts.new')}
            maxlength={120}
          />
          <div class="acts">
            <Button quiet>{words.say('page.parts.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
}
