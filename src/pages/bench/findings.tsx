import type { FC } from 'hono/jsx'
import { Button, Once } from '../parts/button'
import { errorFor, FieldFault } from '../parts/error-summary'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { isRefused, refusedForm, typed } from '../parts/refused'
import { paths } from '../paths'
import type { SheetPart } from './bench-view'

/** What was found, with a photo if there is one, and the question it may lead to. */
export const Findings: FC<SheetPart> = ({ words, view, once, ...refused }) => {
  const found = refusedForm(refused, { kind: 'found' })
  const extra = refusedForm(refused, { kind: 'extra-asked' })
  return (
    <section id="findings">
      <h2>{words.say('page.findings')}</h2>
      <ul class="plain">
        {view.findings.map((f) => (
          <li>
            <b>{f.place}</b> {f.text}
            {f.photoSrc ? (
              <p>
                <a href={f.photoSrc}>{words.say('page.finding.photo')}</a>
              </p>
            ) : null}
          </li>
        ))}
      </ul>
      <details class="screen-only" open={isRefused(found)}>
        <summary>{words.say('page.finding.new')}</summary>
        <form
          method="post"
          action={paths.benchFindings(view.id)}
          enctype="multipart/form-data"
          data-enhance="photo"
          novalidate
        >
          <Once once={`${once}-found`} />
          <input type="hidden" name="kind" value="found" />
          <Field
            name="place"
            label={words.say('page.finding.place')}
            maxlength={80}
            {...typed(found, 'place')}
          />
          <Field
            name="text"
            id="f-found"
            label={words.say('page.finding.text')}
            rows={3}
            maxlength={2000}
            {...typed(found, 'text')}
          />
          <FieldFault name="file" message={errorFor(found.errors, 'file')} />
          <div class="field">
            <label for="f-found-file">{words.say('page.finding.add-photo')}</label>
            <input
              id="f-found-file"
              type="file"
              name="file"
              accept="image/jpeg,image/png,image/webp"
            />
          </div>
          <div class="acts">
            <Button quiet>{words.say('page.finding.keep')}</Button>
          </div>
        </form>
      </details>
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
      {view.extras.map((e) => (
        <div class={`note ${e.decision === null ? 'stop' : 'know'}`}>
          <p>
            <b>{e.text}</b>
          </p>
          <p>
            {words.say('page.extra.asks', { total: money(words, e.total), minutes: e.minutes })}{' '}
            {words.say(`page.extra.${e.decision ?? (e.within ? 'within' : 'waiting')}`)}
          </p>
        </div>
      ))}
    </section>
  )
}
