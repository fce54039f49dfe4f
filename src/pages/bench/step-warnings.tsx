import type { FC } from 'hono/jsx'
import type { SheetStep } from '../../jobsheet/sheet'
import { Button } from '../parts/button'
import type { SheetPart } from './bench-view'
import { LineForm } from './line-form'

/** What speaks against the current step: holds first, then the working order with its reasons. */
export const StepWarnings: FC<SheetPart & { readonly step: SheetStep }> = ({
  words,
  view,
  once,
  step,
}) => {
  const told = new Set(view.order.flatMap((w) => w.first))
  const untold = step.before.filter((id) => !told.has(id))
  const names = (ids: readonly string[]) => ids.map((s) => words.say(`step.${s}`))
  return (
    <>
      {step.heldBy ? (
        <div class="note stop">
          <p>
            <b>{words.say(`page.held.${step.heldBy}`)}</b>
          </p>
        </div>
      ) : null}
      {view.holds.length > 0 ? (
        <div class="note stop" id="refit-hold">
          <p>
            <b>{words.say('page.refit-hold', { n: view.holds.length })}</b>
          </p>
          {view.holds.map((r) => (
            <LineForm
              id={view.id}
              kind="refitted"
              once={`${once}-hold-${r.id}`}
              hidden={{ removal: r.id, step: step.id }}
            >
              <p>
                <b>{r.item}</b> {r.where}
              </p>
              <div class="acts">
                <Button quiet>
                  {words.say('page.removal.refit')}
                  <span class="unseen"> {r.item}</span>
                </Button>
              </div>
            </LineForm>
          ))}
        </div>
      ) : null}
      {view.film.here && view.film.state ? (
        <div class="note stop">
          <p>
            <b>{words.say(`page.film.${view.film.state}`, { n: view.film.lifts })}</b>
          </p>
          {view.film.state === 'ask' ? (
            <p>
              <a href="#film">{words.say('page.film.answer')}</a>
            </p>
          ) : null}
        </div>
      ) : null}
      {view.order.map((w) => (
        <div class={`note ${w.hard ? 'stop' : 'decide'}`}>
          <p>
            <b>{words.say(w.hard ? 'page.order.hard' : 'page.order.soft')}</b>{' '}
            {words.say(`order.${w.id}`)}{' '}
            {w.first.length > 0 ? words.say('page.order.open', { what: names(w.first) }) : ''}
          </p>
        </div>
      ))}
      {untold.length > 0 ? (
        <div class="note decide">
          <p>{words.say('page.step.before', { what: names(untold) })}</p>
        </div>
      ) : null}
    </>
  )
}
