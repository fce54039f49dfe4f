import type { FC } from 'hono/jsx'
import { HEARD } from '../../docket/kind-names'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

/** Paint came away with the film: the owner decides whether the rest stays on. */
export const FilmAnswer: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const refused = refusedForm(given, { kind: 'film-answered' })
  const of = { kind: 'film-answered', refused }
  if (view.film.state === null) return null
  return (
    <div class={`note ${view.film.state === 'go-on' ? 'decide' : 'stop'}`} id="film">
      <p>
        <b>{words.say(`page.film.${view.film.state}`, { n: view.film.lifts })}</b>
      </p>
      <details class="screen-only" open={view.film.state === 'ask' || isRefused(refused)}>
        <summary>{words.say('page.film.answer')}</summary>
        <LineForm id={view.id} kind="film-answered" once={`${once}-film`}>
          <LineSelect
            {...of}
            words={words}
            name="go"
            label={words.say('page.film.go')}
            values={['leave', 'go-on']}
            of="page.film.go."
            otherwise="leave"
          />
          <LineField
            {...of}
            name="why"
            label={words.say('page.film.why')}
            rows={2}
            maxlength={2000}
          />
          <LineField {...of} name="name" label={words.say('page.heard.name')} maxlength={200} />
          <LineSelect
            {...of}
            words={words}
            name="how"
            label={words.say('page.heard')}
            values={HEARD}
            of="page.heard."
          />
          <div class="acts">
            <Button quiet>{words.say('page.film.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </div>
  )
}
