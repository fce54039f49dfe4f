import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineField } from './line-field'
import { LineForm } from './line-form'

/**
 * Times by a label: what runs at this step with the end to the minute, and a form for another. There
 * is no value to begin with: without a label there is no timer.
 */
export const Timers: FC<SheetPart & { readonly step: string }> = ({
  words,
  view,
  once,
  step,
  ...given
}) => {
  const refused = refusedForm(given, { kind: 'timer-set' })
  const of = { kind: 'timer-set', refused }
  return (
    <section id="timers">
      {view.timers.map((t) => (
        <p class="timer" data-ends={String(t.ends)}>
          {words.say('page.timer.until', {
            what: t.what || words.say('page.timer.plain'),
            minutes: t.minutes,
            at: t.clock,
          })}{' '}
          <b data-left />
        </p>
      ))}
      <details class="screen-only" open={isRefused(refused)}>
        <summary>{words.say('page.timer.new')}</summary>
        <LineForm id={view.id} kind="timer-set" once={`${once}-timer`} hidden={{ step }}>
          <LineField
            {...of}
            name="minutes"
            label={words.say('page.timer.minutes')}
            hint={words.say('page.timer.minutes.hint')}
            inputmode="numeric"
            short
          />
          <LineField {...of} name="what" label={words.say('page.timer.what')} maxlength={80} />
          <div class="acts">
            <Button quiet>{words.say('page.timer.set')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
}
