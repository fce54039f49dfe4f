import type { FC } from 'hono/jsx'
import { keptOne } from '../frame'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { Tick } from '../parts/tick'
import type { DecisionFormProps } from './decision-form'

const WAYS = ['wait', 'least', 'named'] as const

/** What needs no asking, and who decides if nobody answers; nothing is agreed that is not typed here. */
export const AgreeExtras: FC<DecisionFormProps> = ({ words, quote, errors, kept }) => {
  const shared = errors ? { errors } : {}
  const chosen = keptOne(kept, 'unanswered', 'wait')
  return (
    <fieldset>
      <legend>{words.say('page.limit')}</legend>
      <p>{words.say('page.limit.lead')}</p>
      <Field
        name="extrasLimit"
        label={words.say('page.limit.amount')}
        hint={
          quote.extrasSuggested > 0
            ? words.say('page.limit.amount.suggested', {
                amount: money(words, quote.extrasSuggested),
              })
            : words.say('page.limit.amount.hint')
        }
        inputmode="decimal"
        short
        value={keptOne(kept, 'extrasLimit')}
        {...shared}
      />
      <fieldset>
        <legend>{words.say('page.limit.unanswered')}</legend>
        {WAYS.map((way) => (
          <Tick
            type="radio"
            name="unanswered"
            value={way}
            label={words.say(`page.limit.${way}`)}
            hint={words.say(`page.limit.${way}.hint`)}
            checked={chosen === way}
          />
        ))}
      </fieldset>
      <Field
        name="decides"
        label={words.say('page.limit.decides')}
        maxlength={200}
        autocomplete="off"
        value={keptOne(kept, 'decides')}
        {...shared}
      />
    </fieldset>
  )
}
