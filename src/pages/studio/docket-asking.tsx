import type { FC } from 'hono/jsx'
import { keptOne } from '../frame'
import { Button } from '../parts/button'
import { Field, Select } from '../parts/field'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { paths } from '../paths'
import { type ActsProps, Rev } from './docket-acts'

/** What is not known: answer it for the customer, or ask once more. */
export const Asking: FC<ActsProps> = (p) => {
  const { words, docket } = p
  const unsure = docket.unsure ?? []
  const waiting = docket.waiting ?? []
  const asked = p.kept?.question ? p : {}
  if (!docket.canAsk && waiting.length === 0) return null
  return (
    <section class="screen-only" id="asking">
      {waiting.length > 0 ? (
        <>
          <h2>{words.say('page.asking.waiting')}</h2>
          <ul>
            {waiting.map((w) => (
              <li>
                {w.prompt} {w.text ? <span class="quietly">{w.text}</span> : null}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {docket.canAsk ? (
        <details open={isRefused(asked)}>
          <summary>{words.say('page.asking')}</summary>
          <form method="post" action={paths.docketAsking(docket.id)}>
            <Rev {...p} what="ask" />
            <Select
              name="question"
              label={words.say('page.asking.question')}
              options={[
                ...unsure.map((u) => ({ value: u.question, label: u.prompt })),
                { value: 'photos', label: words.say('page.asking.photos') },
                ...docket.facts
                  .filter((f) => !f.unsure && f.question !== 'contact' && f.question !== 'photos')
                  .map((f) => ({ value: f.question, label: f.prompt })),
              ]}
            />
            <Field
              name="text"
              id="f-ask-again"
              label={words.say('page.asking.text')}
              hint={words.say('page.asking.hint')}
              rows={2}
              maxlength={500}
              {...typed(asked, 'text')}
            />
            <div class="acts">
              <Button quiet>{words.say('page.asking.button')}</Button>
            </div>
          </form>
        </details>
      ) : null}
    </section>
  )
}

/** A paid inspection before a price, and turning the car down with a word where to go instead. */
export const Parting: FC<ActsProps> = (p) => {
  const { words, docket } = p
  const looked = refusedForm(p, { to: 'look-over' })
  const turned = refusedForm(p, { to: 'turned-down' })
  const mayLook = docket.moves.includes('look-over')
  const mayTurn = docket.moves.includes('turned-down')
  const refused = docket.estimate?.scope.turnedDown[0]
  return (
    <>
      {mayLook ? (
        <details open={isRefused(looked)}>
          <summary>{words.say('page.look')}</summary>
          <form method="post" action={paths.docketMove(docket.id)} novalidate>
            <Rev {...p} what="look" />
            <input type="hidden" name="to" value="look-over" />
            <div class="pair">
              <Field
                name="look-minutes"
                label={words.say('page.look.minutes')}
                inputmode="numeric"
                short
                {...typed(looked, 'look-minutes', '45')}
              />
              <Field
                name="look-amount"
                label={words.say('page.look.amount')}
                inputmode="decimal"
                short
                {...typed(looked, 'look-amount')}
              />
            </div>
            <Field
              name="why"
              id="f-look-why"
              label={words.say('page.look.text')}
              rows={2}
              maxlength={1000}
              {...typed(looked, 'why')}
            />
            <div class="acts">
              <Button quiet>{words.say('page.look.button')}</Button>
            </div>
          </form>
        </details>
      ) : null}
      {mayTurn ? (
        <details open={isRefused(turned)}>
          <summary>{words.say('page.turn-down')}</summary>
          <form method="post" action={paths.docketMove(docket.id)} novalidate>
            <Rev {...p} what="turn" />
            <input type="hidden" name="to" value="turned-down" />
            <Field
              name="why"
              label={words.say('page.turn-down.why')}
              rows={2}
              maxlength={1000}
              {...typed(
                turned,
                'why',
                refused ? words.say(`refuse.${refused.id}`, refused.params) : '',
              )}
            />
            <Field
              name="turn"
              label={words.say('page.turn-down.turn')}
              hint={words.say('page.turn-down.hint')}
              rows={2}
              maxlength={1000}
              {...typed(
                turned,
                'turn',
                refused ? words.say(`refuse.${refused.id}.turn`, refused.params) : '',
              )}
            />
            <div class="acts">
              <Button quiet>{words.say('page.turn-down.button')}</Button>
            </div>
          </form>
        </details>
      ) : null}
    </>
  )
}

/** The studio's own questions: they stand on the docket and change no figure. */
export const OwnQuestions: FC<ActsProps> = (p) => {
  const { words, docket } = p
  const own = docket.own ?? []
  if (own.length === 0) return null
  return (
    <section id="own">
      <h2>{words.say('page.own')}</h2>
      <form method="post" action={paths.docketOwn(docket.id)}>
        <Rev {...p} what="own" />
        {own.map((q) => (
          <Field
            name={`own:${q.id}`}
            label={q.prompt}
            value={keptOne(p.kept, `own:${q.id}`, q.answer ?? '')}
            maxlength={500}
            {...(p.errors ? { errors: p.errors } : {})}
          />
        ))}
        <div class="acts">
          <Button quiet>{words.say('page.own.button')}</Button>
        </div>
      </form>
    </section>
  )
}
