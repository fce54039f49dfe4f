import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { isRefused, refusedForm } from '../parts/refused'
import { Tick } from '../parts/tick'
import type { SheetPart } from './bench-view'
import { LineField, LineSelect } from './line-field'
import { LineForm } from './line-form'

/** Who is there and when the rest is ready by that; where the car stands overnight. */
export const DayPart: FC<SheetPart> = ({ words, view, once, ...given }) => {
  const crew = refusedForm(given, { kind: 'crew-changed' })
  const night = refusedForm(given, { kind: 'stayed-overnight' })
  const ofCrew = { kind: 'crew-changed', refused: crew }
  const ofNight = { kind: 'stayed-overnight', refused: night }
  return (
    <section id="day" class="fold screen-only">
      <details open={isRefused(crew) || isRefused(night)}>
        <summary>
          <h2>{words.say('page.day')}</h2>
        </summary>
        {view.crew ? (
          <div class="note decide">
            <p>
              {words.say('page.crew.now', { n: view.crew.people })}{' '}
              {view.crew.noLifting ? words.say('page.crew.no-lifting.said') : ''}
            </p>
            <p>
              {view.crew.readyLikely
                ? words.say(view.waits.length > 0 ? 'page.crew.ready-without' : 'page.crew.ready', {
                    likely: view.crew.readyLikely.slice(0, 10),
                  })
                : words.say('page.crew.no-plan')}
            </p>
            {view.waits.length > 0 ? (
              <p>
                {words.say('page.crew.waits', {
                  what: view.waits.map((id) => words.say(`step.${id}`)),
                })}
              </p>
            ) : null}
            {view.late ? <p>{words.say('page.crew.late', { date: view.late })}</p> : null}
          </div>
        ) : null}
        <LineForm id={view.id} kind="crew-changed" once={`${once}-crew`}>
          <LineField
            {...ofCrew}
            name="people"
            label={words.say('page.crew.people')}
            inputmode="numeric"
            short
          />
          <Tick
            type="checkbox"
            name="noLifting"
            value="1"
            label={words.say('page.crew.no-lifting')}
            checked={crew.kept?.noLifting !== undefined}
          />
          <LineField {...ofCrew} name="why" label={words.say('page.crew.why')} maxlength={200} />
          <div class="acts">
            <Button quiet>{words.say('page.crew.keep')}</Button>
          </div>
        </LineForm>
        <h3>{words.say('page.night')}</h3>
        {view.night ? (
          <p>
            {words.say(`page.night.${view.night.go}.said`, {
              where: view.night.where,
              keys: view.night.keys,
            })}{' '}
            {words.say(view.night.shut ? 'page.night.shut.said' : 'page.night.open.said')}
          </p>
        ) : null}
        <LineForm id={view.id} kind="stayed-overnight" once={`${once}-night`}>
          <LineSelect
            {...ofNight}
            words={words}
            name="go"
            label={words.say('page.night.go')}
            values={['carry-on', 'tell-owner']}
            of="page.night."
          />
          <LineField
            {...ofNight}
            name="where"
            label={words.say('page.night.where')}
            maxlength={80}
          />
          <LineField {...ofNight} name="keys" label={words.say('page.night.keys')} maxlength={80} />
          <Tick
            type="checkbox"
            name="shut"
            value="1"
            label={words.say('page.night.shut')}
            checked={night.kept?.shut !== undefined}
          />
          <LineField
            {...ofNight}
            name="text"
            label={words.say('page.night.text')}
            maxlength={400}
          />
          <div class="acts">
            <Button quiet>{words.say('page.night.keep')}</Button>
          </div>
        </LineForm>
      </details>
    </section>
  )
}
