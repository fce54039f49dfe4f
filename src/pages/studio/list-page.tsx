import type { FC } from 'hono/jsx'
import type { State, Turn } from '../../docket/states'
import { TURNS } from '../../docket/states'
import type { Words } from '../../words/render'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { Button } from '../parts/button'
import { Field } from '../parts/field'
import { paths } from '../paths'

export type ListRow = {
  readonly id: string
  readonly reference: string | null
  readonly state: State
  /** The car in a few words. */
  readonly title: string
  readonly person: string | null
  /** The riskiest thing known, as a sentence. */
  readonly riskiest: string | null
  readonly low: number | null
  readonly high: number | null
  readonly plate: string | null
  readonly wish: string | null
  readonly wantedBy: string | null
  readonly jobDate: string | null
  /** Minutes since it last moved. */
  readonly ageMinutes: number
  /** Waits apart: it may not be from a person. */
  readonly doubtful: boolean
}

export type ListPageProps = {
  readonly frame: Frame
  readonly turn: Turn
  readonly counts: Readonly<Record<Turn, number>>
  readonly rows: readonly ListRow[]
  readonly q?: string
  readonly nextHref?: string
  /** The owner may open dockets; the bench may not. */
  readonly mayOpen: boolean
}

/** Minutes as the largest whole unit: "5 min", "3 h", "2 days". */
export const ageWords = (words: Words, minutes: number): string => {
  if (minutes < 60) return words.say('page.age.minutes', { n: Math.max(0, Math.floor(minutes)) })
  if (minutes < 48 * 60) return words.say('page.age.hours', { n: Math.floor(minutes / 60) })
  return words.say('page.age.days', { n: Math.floor(minutes / 1440) })
}

const Row: FC<{ readonly words: Words; readonly row: ListRow }> = ({ words, row }) => (
  <li>
    <p class="what">
      <a href={paths.docket(row.id)}>
        {row.title || words.say('page.list.no-car')}
        {row.person ? `, ${row.person}` : ''}
      </a>
      <span class="figure">
        {row.low === null || row.high === null
          ? words.say('page.list.no-range')
          : words.say('page.list.range', { low: row.low, high: row.high })}
      </span>
    </p>
    {row.riskiest ? <p>{row.riskiest}</p> : null}
    <p class="quietly">
      {[
        row.reference ?? words.say('page.list.no-reference'),
        ...(row.plate ? [row.plate] : []),
        words.say(`page.state.${row.state}`),
        ...(row.wish ? [words.say(`page.list.wish.${row.wish}`)] : []),
        ...(row.wantedBy ? [words.say('page.list.wanted', { date: row.wantedBy })] : []),
        ...(row.jobDate ? [words.say('page.list.dated', { date: row.jobDate })] : []),
        ageWords(words, row.ageMinutes),
        ...(row.doubtful ? [words.say('page.list.doubtful')] : []),
      ].join(' · ')}
    </p>
  </li>
)

/** The studio's dockets by whose turn it is. */
export const ListPage: FC<ListPageProps> = ({
  frame,
  turn,
  counts,
  rows,
  q,
  nextHref,
  mayOpen,
}) => {
  const { words } = frame
  const found = q !== undefined && q !== ''
  const title = found
    ? words.say('page.list.found', { q: q ?? '' })
    : words.say(`page.turn.${turn}`)
  return (
    <Layout frame={frame} title={title} wide>
      <section>
        <h1>{title}</h1>
        <ul class="group-links">
          {TURNS.filter((t) => t !== 'apart' || counts[t] > 0 || turn === t).map((t) => (
            <li>
              <a
                href={paths.studioTurn(t)}
                aria-current={t === turn && !found ? 'page' : undefined}
              >
                {words.say(`page.turn.${t}`)} {counts[t]}
              </a>
            </li>
          ))}
        </ul>
        {turn === 'apart' && !found ? <p>{words.say('page.list.apart')}</p> : null}
        {mayOpen ? (
          <div class="acts screen-only">
            <a class="button quiet" href={paths.newDocket}>
              {words.say('page.list.open')}
            </a>
          </div>
        ) : null}
        <form method="get" action={paths.studio} role="search" class="screen-only">
          <Field name="q" type="search" label={words.say('page.list.search')} value={q ?? ''} />
          <div class="acts">
            <Button quiet>{words.say('page.list.search.button')}</Button>
          </div>
        </form>
      </section>
      {rows.length === 0 ? (
        <section>
          <p>{words.say(found ? 'page.list.none-found' : `page.list.none.${turn}`)}</p>
        </section>
      ) : (
        <ol class="lines dockets">
          {rows.map((row) => (
            <Row words={words} row={row} />
          ))}
        </ol>
      )}
      {nextHref ? (
        <section class="screen-only">
          <p>
            <a href={nextHref} rel="next">
              {words.say('page.list.next')}
            </a>
          </p>
        </section>
      ) : null}
    </Layout>
  )
}
