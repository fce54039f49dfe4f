import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { Button, Once } from '../parts/button'
import { Field } from '../parts/field'
import { money } from '../parts/money-text'
import { Tick } from '../parts/tick'
import { paths } from '../paths'
import type { BenchView } from './bench-view'
import { LineForm } from './line-form'

type Props = { readonly words: Words; readonly view: BenchView; readonly once: string }

/** What was found, with a photo if there is one, and the question it may lead to. */
export const Findings: FC<Props> = ({ words, view, once }) => (
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
    <details class="screen-only">
      <summary>{words.say('page.finding.new')}</summary>
      <form
        method="post"
        action={paths.benchFindings(view.id)}
        enctype="multipart/form-data"
        data-enhance="photo"
        novalidate
      >
        <Once once={`${once}-found`} />
        <Field name="place" label={words.say('page.finding.place')} maxlength={80} />
        <Field name="text" id="f-found" label={words.say('page.finding.text')} rows={3} />
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
    <details class="screen-only">
      <summary>{words.say('page.extra.new')}</summary>
      <form method="post" action={paths.benchExtra(view.id)} novalidate>
        <Once once={`${once}-extra`} />
        <Field name="text" id="f-extra" label={words.say('page.extra.text')} rows={3} />
        <Field
          name="minutes"
          id="f-extra-minutes"
          label={words.say('page.adjust.minutes')}
          inputmode="numeric"
          short
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

/** Parts taken off and where they lie; each must be back before the car leaves. */
export const Removals: FC<Props> = ({ words, view, once }) => (
  <section id="removals">
    <h2>{words.say('page.removals')}</h2>
    <ul class="plain">
      {view.removals.map((r) => (
        <li>
          <b>{r.item}</b> {[r.place, r.thickness, r.stored].filter(Boolean).join(', ')}
          {r.refitted ? (
            <p class="quietly">{words.say('page.removal.back')}</p>
          ) : (
            <LineForm
              id={view.id}
              kind="refitted"
              once={`${once}-refit-${r.id}`}
              hidden={{ removal: r.id }}
            >
              <div class="acts">
                <Button quiet>
                  {words.say('page.removal.refit')}
                  <span class="unseen"> {r.item}</span>
                </Button>
              </div>
            </LineForm>
          )}
        </li>
      ))}
    </ul>
    <details class="screen-only">
      <summary>{words.say('page.removal.new')}</summary>
      <LineForm id={view.id} kind="removed" once={`${once}-removed`}>
        <Field name="item" label={words.say('page.removal.item')} maxlength={80} />
        <Field name="place" id="f-removed-place" label={words.say('page.finding.place')} />
        <Field name="thickness" label={words.say('page.removal.thickness')} maxlength={40} />
        <Field name="stored" label={words.say('page.removal.stored')} maxlength={80} />
        <div class="acts">
          <Button quiet>{words.say('page.removal.keep')}</Button>
        </div>
      </LineForm>
    </details>
  </section>
)

/** Checks owed before hand-over; leaving one out needs a reason. */
export const Checks: FC<Props> = ({ words, view, once }) =>
  view.sheet.checks.length === 0 ? null : (
    <section id="checks">
      <h2>{words.say('page.checks')}</h2>
      <ul class="plain">
        {view.sheet.checks.map((c) => (
          <li>
            <span class="box paper-inline" aria-hidden="true" />
            <b>{words.say(`check.${c.id}`)}</b>{' '}
            <span class="quietly">
              {words.say(`page.check.${c.state}`)}
              {c.blocks && c.state === 'open' ? ` ${words.say('page.check.blocks')}` : ''}
            </span>
            {c.state === 'open' ? (
              <div class="screen-only">
                <LineForm
                  id={view.id}
                  kind="checked"
                  once={`${once}-check-${c.id}`}
                  hidden={{ check: c.id }}
                >
                  <div class="acts">
                    <Button>
                      {words.say('page.check.did')}
                      <span class="unseen"> {words.say(`check.${c.id}`)}</span>
                    </Button>
                  </div>
                </LineForm>
                <details>
                  <summary>{words.say('page.check.waive')}</summary>
                  <LineForm
                    id={view.id}
                    kind="checked"
                    once={`${once}-waive-${c.id}`}
                    hidden={{ check: c.id, waived: '1' }}
                  >
                    <Field
                      name="why"
                      id={`f-waive-${c.id}`}
                      label={words.say('page.check.why')}
                      maxlength={500}
                    />
                    <div class="acts">
                      <Button quiet>{words.say('page.check.waive')}</Button>
                    </div>
                  </LineForm>
                </details>
              </div>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  )

/** What came with the car: distance, keys, consents, and what was seen on arrival. */
export const CheckIn: FC<Props> = ({ words, view, once }) =>
  view.checkIn ? null : (
    <section class="screen-only" id="arrival">
      <details>
        <summary>{words.say('page.arrival')}</summary>
        <LineForm id={view.id} kind="checked-in" once={`${once}-arrival`}>
          <div class="pair">
            <Field
              name="mileage"
              label={words.say('page.arrival.mileage')}
              inputmode="numeric"
              short
            />
            <Field name="keys" label={words.say('page.arrival.keys')} inputmode="numeric" short />
            <Field name="fuel" label={words.say('page.arrival.fuel')} maxlength={40} short />
          </div>
          <Tick
            type="checkbox"
            name="consents[]"
            value="drive"
            label={words.say('page.consent.drive')}
          />
          <Tick
            type="checkbox"
            name="consents[]"
            value="photos"
            label={words.say('page.consent.photos')}
          />
          <Tick
            type="checkbox"
            name="consents[]"
            value="stickers"
            label={words.say('page.consent.stickers')}
          />
          <Field name="notes" label={words.say('page.arrival.notes')} rows={3} />
          <Field name="name" label={words.say('page.arrival.name')} />
          <div class="acts">
            <Button>{words.say('page.arrival.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
