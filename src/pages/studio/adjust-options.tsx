import type { FC } from 'hono/jsx'
import { LETTERS } from '../../quote/options/option'
import { TREATMENTS } from '../../quote/options/treatment'
import { keptOne } from '../frame'
import { errorFor, FieldFault, fieldId } from '../parts/error-summary'
import { Field, Select } from '../parts/field'
import { Tick } from '../parts/tick'
import type { AdjustFormProps } from './adjust-form'

type Letter = (typeof LETTERS)[number]

const Way: FC<AdjustFormProps & { readonly letter: Letter }> = (p) => {
  const { words, docket, kept, errors, letter } = p
  const was = docket.options?.find((o) => o.option === letter)
  const name = `option-${letter}`
  const panels = kept?.rev ? (kept[`${name}-panels[]`] ?? []) : (was?.panels ?? [])
  const shared = errors ? { errors } : {}
  return (
    <fieldset>
      <legend>{words.say('page.adjust.option', { letter: letter.toUpperCase() })}</legend>
      <FieldFault name={name} message={errorFor(errors, name)} />
      <Select
        name={name}
        label={words.say('page.adjust.option.how')}
        options={[
          { value: '', label: words.say('page.adjust.option.none') },
          ...TREATMENTS.map((value) => ({ value, label: words.say(`option.${value}`) })),
        ]}
        value={keptOne(kept, name, was?.treatment ?? '')}
      />
      <details open={panels.length > 0}>
        <summary>{words.say('page.adjust.option.panels')}</summary>
        <div class="columns">
          {(docket.estimate?.paint.panels ?? []).map(({ panel }) => (
            <Tick
              type="checkbox"
              name={`${name}-panels[]`}
              value={panel}
              label={words.say(`panel.${panel}`)}
              checked={panels.includes(panel)}
              id={fieldId(`${name}-${panel}`)}
            />
          ))}
        </div>
      </details>
      <Field
        name={`${name}-text`}
        label={words.say('page.adjust.option.text')}
        rows={2}
        maxlength={500}
        value={keptOne(kept, `${name}-text`, was?.text ?? '')}
        {...shared}
      />
    </fieldset>
  )
}

/** Two or three ways for the customer to choose between, folded away until wanted. */
export const AdjustOptions: FC<AdjustFormProps> = (p) => {
  const { words, docket, errors } = p
  const offered = (docket.options ?? []).length > 0
  const wrong = (errors ?? []).some((e) => e.field.startsWith('option-'))
  return (
    <details open={wrong}>
      <summary>
        {words.say(offered ? 'page.adjust.options.changed' : 'page.adjust.options')}
      </summary>
      <p class="hint">{words.say('page.adjust.options.hint')}</p>
      {LETTERS.map((letter) => (
        <Way {...p} letter={letter} />
      ))}
    </details>
  )
}
