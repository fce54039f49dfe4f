import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { Field } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { Tick } from '../parts/tick'
import type { SheetPart } from './bench-view'
import { LineForm } from './line-form'

/** What came with the car: distance, keys, consents, and what was seen on arrival. */
export const CheckIn: FC<SheetPart> = ({ words, view, once, ...refused }) => {
  const came = refusedForm(refused, { kind: 'checked-in' })
  const allowed = came.kept?.['consents[]'] ?? []
  return view.checkIn ? null : (
    <section class="screen-only" id="arrival">
      <details open={isRefused(came)}>
        <summary>{words.say('page.arrival')}</summary>
        <LineForm id={view.id} kind="checked-in" once={`${once}-arrival`}>
          <div class="pair">
            <Field
              name="mileage"
              label={words.say('page.arrival.mileage')}
              inputmode="numeric"
              short
              {...typed(came, 'mileage')}
            />
            <Field
              name="keys"
              label={words.say('page.arrival.keys')}
              inputmode="numeric"
              short
              {...typed(came, 'keys')}
            />
            <Field
              name="fuel"
              label={words.say('page.arrival.fuel')}
              maxlength={40}
              short
              {...typed(came, 'fuel')}
            />
          </div>
          <Tick
            type="checkbox"
            name="consents[]"
            value="drive"
            label={words.say('page.consent.drive')}
            checked={allowed.includes('drive')}
          />
          <Tick
            type="checkbox"
            name="consents[]"
            value="photos"
            label={words.say('page.consent.photos')}
            checked={allowed.includes('photos')}
          />
          <Tick
            type="checkbox"
            name="consents[]"
            value="stickers"
            label={words.say('page.consent.stickers')}
            checked={allowed.includes('stickers')}
          />
          <Field
            name="notes"
            label={words.say('page.arrival.notes')}
            rows={3}
            maxlength={4000}
            {...typed(came, 'notes')}
          />
          <Field
            name="name"
            label={words.say('page.arrival.name')}
            maxlength={200}
            {...typed(came, 'name')}
          />
          <div class="acts">
            <Button>{words.say('page.arrival.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
}
