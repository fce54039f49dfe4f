import { paths } from '../../pages/paths'
import type { DaysPageProps } from '../../pages/studio/days-page'
import { DaysPage } from '../../pages/studio/days-page'
import { FeedPage } from '../../pages/studio/feed-page'
import { renewFeed, selectFeed, selectFeedByHash } from '../../store/feeds'
import { datedCars, daysLoad, daysLoadWhole } from '../acts/days'
import { studioFeed } from '../acts/days-feed'
import { type MoveSeen, moveAll } from '../acts/days-moving'
import { daysView } from '../acts/days-view'
import { todayOf } from '../acts/estimating'
import { newKey, sha256 } from '../http/keys'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { type Any, formOf, frameOf, onceOf, orAgain, page, seeOther } from './page'

type Loaded = Parameters<typeof datedCars>[0] & {
  readonly feed: readonly { readonly createdAt: number }[]
}

const daysPage = (
  call: Any,
  loaded: Loaded,
  more: Partial<Pick<DaysPageProps, 'changed'>> = {},
  status = 200,
) => {
  const { today, days, late } = daysView(
    datedCars(loaded, call.studio, call.now),
    call.studio,
    call.now,
  )
  const since = loaded.feed[0]?.createdAt
  return page(
    <DaysPage
      frame={frameOf(call)}
      once={onceOf(call)}
      today={today}
      days={days}
      late={late}
      owner={call.who.kind === 'owner'}
      feedSince={since === undefined ? null : todayOf(call.studio, since)}
      {...more}
    />,
    status,
  )
}

/** "docket 2026-06-01 660" as it stands in the form. */
const seenOf = (typed: string): MoveSeen => {
  const [docket = '', start = '', minute = ''] = typed.split(' ')
  return { docket, start, startMinute: Number(minute) }
}

export const daysPageRoutes: readonly Route[] = [
  route({
    id: 'page.days',
    face: 'page',
    method: 'GET',
    path: '/studio/days',
    rights: 'bench',
    summary: 'The studio’s days: who comes, who is worked on, what dries, what is ready.',
    answers: { 200: 'other' },
    load: () => ({ ...daysLoad(), feed: selectFeed() }),
    act: (call) => daysPage(call, call.loaded),
  }),
  route({
    id: 'page.days.moves',
    face: 'page',
    method: 'POST',
    path: '/studio/days/moves',
    rights: 'owner',
    summary: 'Give every job that a late one pushes its new day.',
    body: 'form',
    answers: { 303: null, 409: 'other' },
    load: () => ({ ...daysLoadWhole(), feed: selectFeed() }),
    act: (call) =>
      orAgain(
        () => {
          const cars = datedCars(call.loaded, call.studio, call.now)
          const done = moveAll(call, cars, formOf(call).all('move').map(seenOf))
          return seeOther(paths.days, { writes: done.writes })
        },
        () => daysPage(call, call.loaded, { changed: true }, 409),
        ['not-now'],
      ),
  }),
  route({
    id: 'page.days.feed',
    face: 'page',
    method: 'POST',
    path: '/studio/days/feed',
    rights: 'owner',
    summary: 'A new secret address for calendars; the old one ends.',
    body: 'form',
    answers: { 200: 'other' },
    act: async (call) => {
      const key = newKey(call.deps.random)
      return {
        ...page(<FeedPage frame={frameOf(call)} link={`${call.origin}/calendar/${key}`} />),
        writes: [renewFeed(await sha256(key), call.now)],
      }
    },
  }),
  route({
    id: 'page.feed',
    face: 'page',
    method: 'GET',
    path: '/calendar/:feed',
    rights: 'public',
    summary: 'The studio’s days as a calendar reads them, at their secret address.',
    answers: { 200: 'other' },
    rate: { name: 'feed', perMinute: 30 },
    load: async ({ params }) => ({
      feed: selectFeedByHash(await sha256(params.feed ?? '')),
      ...daysLoad(),
    }),
    act: (call) => {
      if (call.loaded.feed.length === 0) throw new Problem('not-yours')
      const cars = datedCars(call.loaded, call.studio, call.now)
      return {
        status: 200,
        text: {
          body: studioFeed(cars, call.studio, call.now, call.origin),
          mime: 'text/calendar; charset=utf-8',
        },
        headers: { 'content-disposition': 'attachment; filename="days.ics"' },
      }
    },
  }),
]
