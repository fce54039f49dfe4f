import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineField } from './line-field'
import { LineForm } from './line-form'

/** Every reading as it was typed, newest first; a slip is struck with its reason and counts nowhere. */
export const ReadingList: FC<SheetPart> = ({ words, view, once, ...given }) =>
  view.readings.length === 0 ? null : (
    <details open={isRefused(refusedForm(given, { kind: 'struck' }))}>
      <summary>{words.say('page.readings.all', { n: view.readings.length })}</summary>
      <ul class="plain">
        {[...view.readings].reverse().map((r) => {
          const refused = refusedForm(given, { kind: 'struck', line: r.id })
          const trust = view.trust[r.id] ?? 'unchecked'
          return (
            <li>
              <b>{words.say(`panel.${r.panel}`)}</b>{' '}
              {words.say(
                r.kind === 'reference' ? 'page.readings.reference' : 'page.readings.panel',
              )}{' '}
              {r.spot ? `${r.spot}: ` : ''}
              {words.say('page.readings.values', { values: r.values.map(String) })}{' '}
              {r.probe ? words.say(`page.probe.${r.probe}`) : ''}{' '}
              {r.overFilm ? words.say('page.reading.over-film') : ''}
              {trust === 'failed' ? (
                <p class="fault">{words.say('page.readings.in-doubt')}</p>
              ) : null}
              <details class="screen-only" open={isRefused(refused)}>
                <summary>
                  {words.say('page.strike')}
                  <span class="unseen"> {words.say(`panel.${r.panel}`)}</span>
                </summary>
                <LineForm
                  id={view.id}
                  kind="struck"
                  once={`${once}-strike-${r.id}`}
                  hidden={{ line: r.id }}
                >
                  <LineField
                    kind={`struck-${r.id}`}
                    refused={refused}
                    name="why"
                    label={words.say('page.strike.why')}
                    maxlength={300}
                  />
                  <div class="acts">
                    <Button quiet>{words.say('page.strike')}</Button>
                  </div>
                </LineForm>
              </details>
            </li>
          )
        })}
      </ul>
    </details>
  )
