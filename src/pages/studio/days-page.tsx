import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { date } from '../parts/money-text'
import { paths } from '../paths'

export type DaysPageProps = {
  readonly frame: Frame
  readonly once: string
  readonly today: string
  readonly days: readonly {
    readonly date: string
    readonly items: readonly {
      readonly kind: string
      readonly docket: string | null
      readonly text: string
    }[]
  }[]
  readonly late: readonly {
    readonly docket: string
    readonly kind: 'late' | 'moved'
    readonly text: string
    readonly start: string
    readonly startMinute: number
  }[]
  /** The moves were other ones when the button was pressed. */
  readonly changed?: boolean
  /** The owner may move days and make the calendar's address; the bench reads. */
  readonly owner: boolean
  /** Since when there is an address for calendars; null: none was made. */
  readonly feedSince: string | null
}

/** What is late, what moves for it, and the one press that moves it. */
const Late: FC<DaysPageProps> = ({ frame: { words }, late, once, changed, owner }) => {
  if (late.length === 0) return null
  const moved = late.filter((l) => l.kind === 'moved')
  return (
    <section id="late">
      <h2>{words.say('page.days.late')}</h2>
      {changed ? (
        <p role="alert">
          <b>{words.say('page.days.changed')}</b>
        </p>
      ) : null}
      <ul class="plain">
        {late.map((l) => (
          <li class={`note ${l.kind === 'late' ? 'decide' : 'know'}`}>
            <a href={paths.docket(l.docket)}>{l.text}</a>
          </li>
        ))}
      </ul>
      {moved.length > 0 && owner ? (
        <form method="post" action={paths.daysMoves} class="screen-only">
          <Once once={`${once}-moves`} />
          {moved.map((m) => (
            <input type="hidden" name="move" value={`${m.docket} ${m.start} ${m.startMinute}`} />
          ))}
          <p class="quietly">{words.say('page.days.move.hint')}</p>
          <div class="acts">
            <Button>{words.say('page.days.move', { n: moved.length })}</Button>
          </div>
        </form>
      ) : null}
    </section>
  )
}

/** The address a calendar reads; only its owner can make one, and a new one ends the old. */
const Feed: FC<DaysPageProps> = ({ frame: { words }, once, owner, feedSince }) =>
  owner ? (
    <section class="screen-only" id="feed">
      <h2>{words.say('page.feed')}</h2>
      <p>
        {feedSince === null
          ? words.say('page.feed.none')
          : words.say('page.feed.since', { date: feedSince })}
      </p>
      <form method="post" action={paths.daysFeed}>
        <Once once={`${once}-feed`} />
        <div class="acts">
          <Button quiet>
            {words.say(feedSince === null ? 'page.feed.make' : 'page.feed.renew')}
          </Button>
        </div>
      </form>
    </section>
  ) : null

/** The studio's days: a list by day, no more. */
export const DaysPage: FC<DaysPageProps> = (p) => {
  const { words } = p.frame
  return (
    <Layout frame={p.frame} title={words.say('page.days-list')} wide>
      <section>
        <h1>{words.say('page.days-list')}</h1>
        {p.days.length === 0 ? <p>{words.say('page.days-list.none')}</p> : null}
      </section>
      <Late {...p} />
      {p.days.map((day) => (
        <section id={`day-${day.date}`}>
          <h2>
            {day.date === p.today
              ? words.say('page.days-list.today', { date: day.date })
              : date(words, day.date)}
          </h2>
          <ul class="plain">
            {day.items.map((item) => (
              <li class={item.kind === 'conflict' ? 'note decide' : undefined}>
                {item.docket === null ? (
                  item.text
                ) : (
                  <a href={paths.docket(item.docket)}>{item.text}</a>
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
      <Feed {...p} />
    </Layout>
  )
}
