import type { FC } from 'hono/jsx'
import { LOCKING_KEYS } from '../../docket/kind-names'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import { Tick } from '../parts/tick'
import { ArrivalDamage } from './arrival-damage'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

export const CONSENTS = ['drive', 'photos', 'stickers'] as const

/** What came with the car, before any water: distance, keys, lamps, valuables, consents, damage. */
export const CheckIn: FC<SheetPart> = (p) => {
  const { words, view, once, errors, kept } = p
  const refused = refusedForm(
    { ...(errors ? { errors } : {}), ...(kept ? { kept } : {}) },
    {
      kind: 'checked-in',
    },
  )
  const allowed = refused.kept?.['consents[]'] ?? []
  const of = { kind: 'checked-in', refused }
  if (view.checkIn) return null
  return (
    <section class="screen-only" id="arrival">
      <details open={isRefused(refused)}>
        <summary>{words.say('page.arrival')}</summary>
        <LineForm id={view.id} kind="checked-in" once={`${once}-arrival`}>
          <div class="pair">
            <LineField
              {...of}
              name="mileage"
              label={words.say('page.arrival.mileage')}
              inputmode="numeric"
              short
            />
            <LineField
              {...of}
              name="fuel"
              label={words.say('page.arrival.fuel')}
              maxlength={40}
              short
            />
            <LineField
              {...of}
              name="keys"
              label={words.say('page.arrival.keys')}
              inputmode="numeric"
              short
            />
          </div>
          <LineSelect
            {...of}
            words={words}
            name="lockingKey"
            label={words.say('page.arrival.locking-key')}
            values={LOCKING_KEYS}
            of="page.locking-key."
            none={words.say('page.locking-key.not-asked')}
          />
          <LineField
            {...of}
            name="warnings"
            label={words.say('page.arrival.warnings')}
            hint={words.say('page.arrival.warnings.hint')}
            maxlength={400}
          />
          <LineField
            {...of}
            name="valuables"
            label={words.say('page.arrival.valuables')}
            maxlength={400}
          />
          <LineField
            {...of}
            name="notes"
            label={words.say('page.arrival.notes')}
            rows={3}
            maxlength={4000}
          />
          {CONSENTS.map((consent) => (
            <Tick
              type="checkbox"
              name="consents[]"
              value={consent}
              label={words.say(`page.consent.${consent}`)}
              checked={allowed.includes(consent)}
            />
          ))}
          <LineField {...of} name="name" label={words.say('page.arrival.name')} maxlength={200} />
          <div class="acts">
            <Button>{words.say('page.arrival.keep')}</Button>
          </div>
        </LineForm>
      </details>
      <ArrivalDamage {...p} />
    </section>
  )
}
