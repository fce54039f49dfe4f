import type { FC } from 'hono/jsx'
import { PROBES } from '../../docket/kind-names'
import type { Words } from '../../words/render'
import { type FieldError, type Kept, keptOne } from '../frame'
import { Button } from '../parts/button'
import { Field, Select } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { Tick } from '../parts/tick'
import { LineForm } from './line-form'

export type ReadingFormProps = {
  readonly words: Words
  readonly id: string
  readonly once: string
  /** In walking order. */
  readonly panels: readonly string[]
  /** The panel chosen last, or the step's. */
  readonly panel?: string
  readonly probe?: string
  /** Panels that were read without a reference: nothing is cut on them. */
  readonly unreferenced?: readonly string[]
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'] as const

/** Large keys over the plain box; shown by the browser script only. */
const Pad: FC<{ readonly words: Words }> = ({ words }) => (
  <div class="pad" hidden data-pad="f-values">
    {KEYS.map((k) => (
      <button type="button" data-key={k}>
        {k}
      </button>
    ))}
    <button type="button" data-key="back" aria-label={words.say('page.pad.back')}>
      ⌫
    </button>
    <button type="button" data-key="next">
      {words.say('page.pad.next')}
    </button>
  </div>
)

const panelChoices = (words: Words, panels: readonly string[]) =>
  panels.map((p) => ({ value: p, label: words.say(`panel.${p}`) }))

/** Readings of one place: several values, the reference apart, film told. */
export const ReadingForm: FC<ReadingFormProps> = (p) => {
  const { words, id, once, panels } = p
  const read = refusedForm(p, { kind: 'reading' })
  const unread = refusedForm(p, { kind: 'unreadable' })
  const of = keptOne(read.kept, 'of', 'panel')
  return (
    <>
      {p.unreferenced && p.unreferenced.length > 0 ? (
        <div class="note decide">
          <p>
            {words.say('page.reading.references-first', {
              n: p.unreferenced.length,
              what: p.unreferenced.map((each) => words.say(`panel.${each}`)),
            })}
          </p>
        </div>
      ) : null}
      <LineForm id={id} kind="reading" once={`${once}-reading`}>
        <Select
          name="panel"
          label={words.say('page.panel')}
          options={panelChoices(words, panels)}
          value={keptOne(read.kept, 'panel', p.panel ?? '')}
        />
        <Field
          name="values"
          label={words.say('page.reading.values')}
          hint={words.say('page.reading.values.hint')}
          inputmode="decimal"
          autocomplete="off"
          {...typed(read, 'values')}
        />
        <Pad words={words} />
        <fieldset>
          <legend class="unseen">{words.say('page.reading.of')}</legend>
          <Tick
            type="radio"
            name="of"
            value="panel"
            label={words.say('page.reading.of.panel')}
            checked={of === 'panel'}
          />
          <Tick
            type="radio"
            name="of"
            value="reference"
            label={words.say('page.reading.of.reference')}
            checked={of === 'reference'}
          />
        </fieldset>
        <Field
          name="spot"
          label={words.say('page.reading.spot')}
          hint={words.say('page.reading.spot.hint')}
          maxlength={40}
          {...typed(read, 'spot')}
        />
        <Tick
          type="checkbox"
          name="overFilm"
          value="1"
          label={words.say('page.reading.over-film')}
          checked={read.kept?.overFilm !== undefined}
        />
        <Select
          name="probe"
          label={words.say('page.reading.probe')}
          options={PROBES.map((v) => ({ value: v, label: words.say(`page.probe.${v}`) }))}
          value={keptOne(read.kept, 'probe', p.probe ?? 'magnetic')}
        />
        <div class="acts">
          <Button>{words.say('page.reading.keep')}</Button>
        </div>
      </LineForm>
      <details open={isRefused(unread)}>
        <summary>{words.say('page.reading.cannot')}</summary>
        <LineForm id={id} kind="unreadable" once={`${once}-unreadable`}>
          <Select
            name="panel"
            id="f-unreadable-panel"
            label={words.say('page.panel')}
            options={panelChoices(words, panels)}
            value={keptOne(unread.kept, 'panel')}
          />
          <Field
            name="why"
            id="f-unreadable-why"
            label={words.say('page.reading.cannot.why')}
            maxlength={500}
            {...typed(unread, 'why')}
          />
          <div class="acts">
            <Button quiet>{words.say('page.reading.cannot.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </>
  )
}
