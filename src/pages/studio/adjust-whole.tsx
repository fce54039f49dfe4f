import type { FC } from 'hono/jsx'
import { keptOne } from '../frame'
import { Field } from '../parts/field'
import { fromMinor } from '../parts/money-text'
import type { AdjustFormProps } from './adjust-form'

/** Changes that belong to no line there is: a new line, money off, people, a word beside it. */
export const AdjustWhole: FC<AdjustFormProps> = ({ words, docket, errors, kept }) => {
  const shared = errors ? { errors } : {}
  const discount = docket.adjustments.findLast((a) => a.kind === 'discount')
  const people = docket.adjustments.findLast((a) => a.kind === 'people')
  const was = (name: string, otherwise: string): string => keptOne(kept, name, otherwise)
  return (
    <>
      <fieldset>
        <legend>{words.say('page.adjust.add')}</legend>
        <Field
          name="add-name"
          label={words.say('page.adjust.add.name')}
          value={was('add-name', '')}
          maxlength={200}
          {...shared}
        />
        <div class="pair">
          <Field
            name="add-minutes"
            label={words.say('page.adjust.minutes')}
            value={was('add-minutes', '')}
            inputmode="numeric"
            short
            {...shared}
          />
          <Field
            name="add-price"
            label={words.say('page.adjust.price')}
            value={was('add-price', '')}
            inputmode="decimal"
            short
            {...shared}
          />
        </div>
        <Field
          name="add-why"
          label={words.say('page.adjust.why')}
          value={was('add-why', '')}
          maxlength={500}
          {...shared}
        />
      </fieldset>
      <fieldset>
        <legend>{words.say('page.adjust.whole')}</legend>
        <div class="pair">
          <Field
            name="discount"
            label={words.say('page.adjust.discount')}
            value={was(
              'discount',
              discount?.kind === 'discount'
                ? fromMinor(discount.amount, words.formats.exponent)
                : '',
            )}
            inputmode="decimal"
            short
            {...shared}
          />
          <Field
            name="people"
            label={words.say('page.adjust.people')}
            value={was('people', people?.kind === 'people' ? String(people.people) : '')}
            inputmode="numeric"
            short
            {...shared}
          />
        </div>
        <Field
          name="whole-why"
          label={words.say('page.adjust.why')}
          value={was('whole-why', discount?.why ?? people?.why ?? '')}
          maxlength={500}
          {...shared}
        />
        <Field
          name="message"
          label={words.say('page.adjust.message')}
          rows={4}
          value={was('message', '')}
          maxlength={2000}
          {...shared}
        />
      </fieldset>
    </>
  )
}
