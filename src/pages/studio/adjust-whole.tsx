import type { FC } from 'hono/jsx'
import type { Adjustment } from '../../docket/kinds'
import { keptOne } from '../frame'
import { Field, Select } from '../parts/field'
import { fromMinor } from '../parts/money-text'
import type { AdjustFormProps } from './adjust-form'

type WholeField = {
  readonly name: string
  readonly kind: 'money' | 'number' | 'whole' | 'date'
  /** As typed, of the change in force. */
  readonly was: (all: readonly Adjustment[], exponent: number) => string
}

const last = <K extends Adjustment['kind']>(all: readonly Adjustment[], kind: K) =>
  all.findLast((a): a is Extract<Adjustment, { kind: K }> => a.kind === kind)

const figure = (n: number | undefined): string => (n === undefined ? '' : String(n))

/** Changes of the whole job; the same names are read back from the posted form. */
const WHOLE: readonly WholeField[] = [
  ...(['discount', 'surcharge'] as const).map(
    (kind): WholeField => ({
      name: kind,
      kind: 'money',
      was: (all, e) => {
        const a = last(all, kind)
        return a ? fromMinor(a.amount, e) : ''
      },
    }),
  ),
  {
    name: 'discount-share',
    kind: 'number',
    was: (all) => figure((last(all, 'discount-share')?.basisPoints ?? Number.NaN) / 100),
  },
  {
    name: 'travel',
    kind: 'number',
    was: (all) => figure((last(all, 'travel')?.metres ?? Number.NaN) / 1000),
  },
  { name: 'bay-days', kind: 'whole', was: (all) => figure(last(all, 'bay-days')?.days) },
  { name: 'people', kind: 'whole', was: (all) => figure(last(all, 'people')?.people) },
  { name: 'begins', kind: 'date', was: (all) => last(all, 'start')?.day ?? '' },
]

const WHOLE_KINDS: readonly string[] = [
  'discount',
  'surcharge',
  'discount-share',
  'travel',
  'bay-days',
  'people',
  'start',
]

/** A line that is in no catalogue: own work, or an outside trade's. */
const NewLine: FC<AdjustFormProps & { readonly what: 'add' | 'sublet' }> = (p) => {
  const { words, kept, errors, what } = p
  const shared = errors ? { errors } : {}
  const faulty = (errors ?? []).some((e) => e.field.startsWith(`${what}-`))
  return (
    <details open={faulty}>
      <summary>{words.say(`page.adjust.${what}`)}</summary>
      {what === 'add' && (p.docket.ownWork ?? []).length > 0 ? (
        <Select
          name="own-work"
          label={words.say('page.adjust.own-work')}
          value={keptOne(kept, 'own-work')}
          options={[
            { value: '', label: words.say('page.adjust.own-work.none') },
            ...(p.docket.ownWork ?? []).map((name) => ({ value: name, label: name })),
          ]}
        />
      ) : null}
      <Field
        name={`${what}-name`}
        label={words.say('page.adjust.add.name')}
        value={keptOne(kept, `${what}-name`)}
        maxlength={200}
        {...shared}
      />
      <div class="pair">
        {what === 'add' ? (
          <Field
            name="add-minutes"
            label={words.say('page.adjust.minutes')}
            value={keptOne(kept, 'add-minutes')}
            inputmode="numeric"
            short
            {...shared}
          />
        ) : null}
        <Field
          name={`${what}-price`}
          label={words.say(what === 'add' ? 'page.adjust.price' : 'page.adjust.cost')}
          value={keptOne(kept, `${what}-price`)}
          inputmode="decimal"
          short
          {...shared}
        />
      </div>
      <Field
        name={`${what}-why`}
        label={words.say('page.adjust.why')}
        value={keptOne(kept, `${what}-why`)}
        maxlength={500}
        {...shared}
      />
    </details>
  )
}

/** Changes that belong to no line there is: a new line, money off or on, people, the quote's terms. */
export const AdjustWhole: FC<AdjustFormProps> = (p) => {
  const { words, docket, errors, kept } = p
  const shared = errors ? { errors } : {}
  const { exponent } = words.formats
  const why = docket.adjustments.findLast((a) => WHOLE_KINDS.includes(a.kind))?.why ?? ''
  return (
    <>
      <NewLine {...p} what="add" />
      <NewLine {...p} what="sublet" />
      <fieldset>
        <legend>{words.say('page.adjust.whole')}</legend>
        <div class="pair">
          {WHOLE.map((f) => {
            const was = f.was(docket.adjustments, exponent)
            return (
              <Field
                name={f.name}
                label={words.say(`page.adjust.${f.name}`)}
                value={keptOne(kept, f.name, was === 'NaN' ? '' : was)}
                short
                {...(f.kind === 'date' ? { type: 'date' as const } : {})}
                {...(f.kind === 'date'
                  ? {}
                  : {
                      inputmode: f.kind === 'whole' ? ('numeric' as const) : ('decimal' as const),
                    })}
                {...shared}
              />
            )
          })}
        </div>
        <Field
          name="whole-why"
          label={words.say('page.adjust.why')}
          value={keptOne(kept, 'whole-why', why)}
          maxlength={500}
          {...shared}
        />
      </fieldset>
      <fieldset>
        <legend>{words.say('page.adjust.quote')}</legend>
        <div class="pair">
          <Field
            name="valid-days"
            label={words.say('page.adjust.valid-days')}
            value={keptOne(kept, 'valid-days')}
            inputmode="numeric"
            short
            {...shared}
          />
          <Field
            name="deposit"
            label={words.say('page.adjust.deposit')}
            value={keptOne(kept, 'deposit')}
            inputmode="decimal"
            short
            {...shared}
          />
        </div>
        <p class="hint">{words.say('page.adjust.quote.hint')}</p>
        <Field
          name="message"
          label={words.say('page.adjust.message')}
          rows={4}
          value={keptOne(kept, 'message')}
          maxlength={2000}
          {...shared}
        />
      </fieldset>
    </>
  )
}
