import type { FC } from 'hono/jsx'
import type { SheetStep } from '../../jobsheet/sheet'
import type { Words } from '../../words/render'
import { Button } from '../parts/button'
import { Field } from '../parts/field'
import { hours } from '../parts/money-text'
import { refusedForm, typed } from '../parts/refused'
import type { BenchView, SheetPart } from './bench-view'
import { LineForm } from './line-form'
import { StepWarnings } from './step-warnings'

export type CurrentStepProps = SheetPart & { readonly step: SheetStep }

export const sheetStepName = (words: Words, step: Pick<SheetStep, 'id' | 'name'>): string =>
  step.name ?? words.say(`step.${step.id}`)

const Listed: FC<{ readonly title: string; readonly items: readonly string[] }> = ({
  title,
  items,
}) =>
  items.length === 0 ? null : (
    <>
      <h2>{title}</h2>
      <ul>
        {items.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </>
  )

/** Film that took paint with it: no further pull before the owner's word, none after a no. */
const blocksFilm = (view: BenchView): boolean =>
  view.film.state === 'ask' || view.film.state === 'leave'

/** Panels of a polishing step on which less is allowed than on the others, each with its verdict. */
const gatesOf = (words: Words, view: BenchView, step: SheetStep): readonly string[] =>
  step.machine || step.id.startsWith('polish-')
    ? view.sheet.panels
        .filter((p) => step.places.length === 0 || step.places.includes(p.panel))
        .filter((p) => p.verdict !== 'another-set' && p.verdict !== 'not-measured')
        .map((p) =>
          words.say('page.step.gate', {
            panel: words.say(`panel.${p.panel}`),
            verdict: words.say(`verdict.${p.verdict}`),
          }),
        )
    : []

/** The one thing to do now: what, how long, what to mind, what to mask, and its buttons. */
export const CurrentStep: FC<CurrentStepProps> = ({ words, view, once, step, ...refused }) => {
  const { id } = view
  const doKey = `step.${step.id}.do`
  const begun = step.state === 'begun'
  const places = step.places.map((p) => (words.has(`panel.${p}`) ? words.say(`panel.${p}`) : p))
  const gates = gatesOf(words, view, step)
  const stopped = view.holds.length > 0 || (view.film.here && blocksFilm(view))
  return (
    <section id="step">
      <p class="quietly">{words.say(`page.step.${step.state}`)}</p>
      <h1 class="lead-figure">{sheetStepName(words, step)}</h1>
      {words.has(doKey) ? <p>{words.say(doKey)}</p> : null}
      <p>
        {words.say('page.step.minutes', { v: step.expectedMinutes })}{' '}
        {step.crewMax === 2 ? words.say('page.step.two') : words.say('page.step.one')}{' '}
        {step.used > 0 ? words.say('page.step.used', { v: step.used }) : ''}{' '}
        {step.entered ? words.say('page.step.entered') : ''}{' '}
        {step.byTime ? words.say('page.step.cap', { v: step.byTime.capMinutes }) : ''}
      </p>
      <StepWarnings words={words} view={view} once={once} step={step} />
      {step.cautions.map((c) => (
        <div class="note stop">
          <p>{words.say(`caution.${c}`)}</p>
        </div>
      ))}
      <Listed title={words.say('page.step.gates')} items={gates} />
      <Listed title={words.say('page.step.places')} items={places} />
      <Listed
        title={words.say('page.step.masks')}
        items={step.masks.map((m) => words.say(`mask.${m}`))}
      />
      <Listed
        title={words.say('page.step.materials')}
        items={step.materials.map((m) => words.say(`material.${m}`))}
      />
      {step.lagMinutes > 0 && step.lagWhy ? (
        <p>{words.say(`page.step.lag.${step.lagWhy}`, { time: hours(words, step.lagMinutes) })}</p>
      ) : null}
      <div class="screen-only">
        {stopped && !begun ? null : begun ? (
          <>
            <LineForm id={id} kind="done" once={`${once}-done`} hidden={{ step: step.id }}>
              <Field
                name="minutes"
                label={words.say('page.step.own-minutes')}
                hint={words.say('page.step.own-minutes.hint')}
                inputmode="numeric"
                short
                {...typed(refusedForm(refused, { kind: 'done', step: step.id }), 'minutes')}
              />
              {stopped ? null : (
                <div class="acts">
                  <Button>{words.say('page.step.done')}</Button>
                </div>
              )}
            </LineForm>
            <LineForm id={id} kind="broke-off" once={`${once}-off`} hidden={{ step: step.id }}>
              <div class="acts">
                <Button quiet>{words.say('page.step.break-off')}</Button>
              </div>
            </LineForm>
          </>
        ) : step.state !== 'done' ? (
          <LineForm id={id} kind="began" once={`${once}-begin`} hidden={{ step: step.id }}>
            <div class="acts">
              <Button>
                {words.say(step.state === 'broken-off' ? 'page.step.go-on' : 'page.step.begin')}
              </Button>
            </div>
          </LineForm>
        ) : (
          <LineForm id={id} kind="done" once={`${once}-later`} hidden={{ step: step.id }}>
            <Field
              name="minutes"
              label={words.say('page.step.minutes-afterwards')}
              inputmode="numeric"
              short
              {...typed(refusedForm(refused, { kind: 'done', step: step.id }), 'minutes')}
            />
            <div class="acts">
              <Button quiet>{words.say('page.step.minutes-keep')}</Button>
            </div>
          </LineForm>
        )}
      </div>
    </section>
  )
}
