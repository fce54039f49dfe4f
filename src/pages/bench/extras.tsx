import type { FC } from 'hono/jsx'
import { Button, Once } from '../parts/button'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { paths } from '../paths'
import { AgreementLines } from './agreement'
import type { SheetPart } from './bench-view'

/** Questions to the owner about more work, and how each stands; an answer by phone is written down. */
export const Extras: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const extra = refusedForm(given, { kind: 'extra-asked' })
  return (
    <>
      <AgreementLines words={words} agreement={view.agreement} />
      <details class="screen-only" open={isRefused(extra)}>
        <summary>{words.say('page.extra.new')}</summary>
        <form method="post" action={paths.benchExtra(view.id)} novalidate>
          <Once once={`${once}-extra`} />
          <input type="hidden" name="kind" value="extra-asked" />
          <Field
            name="text"
            id="f-extra"
            label={words.say('page.extra.text')}
            rows={3}
            maxlength={2000}
            {...typed(extra, 'text')}
          />
          <Field
            name="ifNot"
            id="f-extra-if-not"
            label={words.say('page.extra.if-not.ask')}
            maxlength={500}
            {...typed(extra, 'ifNot')}
          />
          <Field
            name="minutes"
            id="f-extra-minutes"
            label={words.say('page.adjust.minutes')}
            inputmode="numeric"
            short
            {...typed(extra, 'minutes')}
          />
          <div class="acts">
            <Button quiet>{words.say('page.extra.ask')}</Button>
          </div>
        </form>
      </details>
      {view.extras.map((e) => {
        const refused = refusedForm(given, { kind: 'extra-decided', extra: e.extra })
        return (
          <div class={`note ${e.decision === null ? 'stop' : 'know'}`}>
            <p>
              <b>{e.text}</b>
            </p>
            <p>
              {words.say('page.extra.asks', { total: money(words, e.total), minutes: e.minutes })}{' '}
              {words.say(`page.extra.${e.decision ?? (e.within ? 'within' : 'waiting')}`)}
            </p>
            {e.decision === null ? (
              <details class="screen-only" open={isRefused(refused)}>
                <summary>
                  {words.say('page.extra.phone')}
                  <span class="unseen"> {e.text}</span>
                </summary>
                <form method="post" action={paths.benchExtraDecision(view.id, e.extra)} novalidate>
                  <Once once={`${once}-phone-${e.extra}`} />
                  <input type="hidden" name="kind" value="extra-decided" />
                  <input type="hidden" name="extra" value={e.extra} />
                  <Field
                    name="name"
                    id={`f-phone-${e.extra}`}
                    label={words.say('page.heard.name')}
                    maxlength={200}
                    {...typed(refused, 'name')}
                  />
                  <div class="acts">
                    <Button quiet name="decision" value="agree">
                      {words.say('page.extra.said-yes')}
                    </Button>
                    <Button quiet name="decision" value="refuse">
                      {words.say('page.extra.said-no')}
                    </Button>
                  </div>
                </form>
              </details>
            ) : null}
          </div>
        )
      })}
    </>
  )
}
