import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { Field } from '../parts/field'
import { typed } from '../parts/refused'
import { paths } from '../paths'
import { type ActsProps, Rev } from './docket-acts'
import type { AgainstView } from './docket-view'

/** The day the car comes. */
export const DateForm: FC<ActsProps> = (p) => (
  <form method="post" action={paths.docketDate(p.docket.id)}>
    <Rev {...p} what="date" />
    <div class="pair">
      <Field
        name="start"
        type="date"
        label={p.words.say('page.date.start')}
        short
        {...typed(p, 'start')}
      />
      <Field
        name="startTime"
        type="time"
        label={p.words.say('page.date.time')}
        short
        {...typed(p, 'startTime')}
      />
    </div>
    <div class="acts">
      <Button>{p.words.say('page.date.set')}</Button>
      <a class="button quiet" href={paths.days}>
        {p.words.say('page.date.days')}
      </a>
    </div>
  </form>
)

const clockOf = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`

/** What stands against the day asked for; it may be taken all the same, or the first free one. */
export const Against: FC<ActsProps & { readonly against: AgainstView }> = (p) => {
  const { words, docket, against: a } = p
  const free = a.firstFree
  const freeTime = free && free.startMinute > 0 ? clockOf(free.startMinute) : ''
  const same = free?.start === a.start && freeTime === a.time
  return (
    <section class="screen-only" id="against" role="alert">
      <div class="note decide">
        <p>
          <b>{words.say('page.against', { date: a.start })}</b>
        </p>
        <ul>
          {a.conflicts.map((text) => (
            <li>{text}</li>
          ))}
        </ul>
        <p>
          {words.say('page.against.ready', {
            date: a.ready.date,
            time: a.ready.minute,
            alone: a.readyAlone.date,
            aloneTime: a.readyAlone.minute,
          })}
        </p>
        <p>
          {free === null
            ? words.say('page.against.none')
            : words.say(freeTime ? 'page.against.free-at' : 'page.against.free', {
                date: free.start,
                time: free.startMinute,
              })}
        </p>
      </div>
      <div class="acts">
        {free && !same ? (
          <form method="post" action={paths.docketDate(docket.id)}>
            <Rev {...p} what="date-free" />
            <input type="hidden" name="start" value={free.start} />
            <input type="hidden" name="startTime" value={freeTime} />
            <Button>{words.say('page.against.take-free', { date: free.start })}</Button>
          </form>
        ) : null}
        <form method="post" action={paths.docketDate(docket.id)}>
          <Rev {...p} what="date-anyway" />
          <input type="hidden" name="start" value={a.start} />
          <input type="hidden" name="startTime" value={a.time} />
          <input type="hidden" name="anyway" value={`${a.start} ${a.time}`} />
          <Button quiet>{words.say('page.against.anyway', { date: a.start })}</Button>
        </form>
      </div>
    </section>
  )
}
