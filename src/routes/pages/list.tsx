import * as z from 'zod'
import { type State, TURNS, type Turn } from '../../docket/states'
import { paths } from '../../pages/paths'
import { ListPage } from '../../pages/studio/list-page'
import { countHeads, listHeads } from '../../store/heads'
import { openEnquiry } from '../acts/enquiry'
import { readPlace, writePlace } from '../acts/place'
import { type Route, route } from '../route'
import { frameOf, page, seeOther } from './page'
import { customerCookie } from './start'

const maybe = z.exactOptional

const LIMIT = 50

export const listRoutes: readonly Route[] = [
  route({
    id: 'page.list',
    face: 'page',
    method: 'GET',
    path: '/studio',
    rights: 'bench',
    summary: 'Dockets by whose turn it is.',
    query: z.object({
      turn: maybe(z.enum(TURNS)),
      q: maybe(z.string().max(100)),
      after: maybe(z.string().max(200)),
    }),
    answers: { 200: 'other' },
    load: ({ query }) => {
      const q = query.q?.trim() ?? ''
      return {
        heads: listHeads({
          limit: LIMIT + 1,
          ...(q === '' ? { turn: query.turn ?? 'ours' } : { q }),
          ...(query.after === undefined ? {} : { after: readPlace(query.after) }),
        }),
        counts: countHeads(),
      }
    },
    act: (call) => {
      const { loaded, query, studio, now } = call
      const turn: Turn = query.turn ?? 'ours'
      const rows = loaded.heads.slice(0, LIMIT)
      const last = rows.at(-1)
      const counted = Object.fromEntries(
        TURNS.map((t) => [t, loaded.counts.find((c) => c.turn === t)?.count ?? 0]),
      ) as Record<Turn, number>
      const next = new URLSearchParams({
        ...(query.q ? { q: query.q } : { turn }),
        ...(last ? { after: writePlace(last) } : {}),
      })
      return page(
        <ListPage
          frame={frameOf(call)}
          turn={turn}
          counts={counted}
          mayOpen={call.who.kind === 'owner'}
          rows={rows.map((h) => ({
            id: h.docket,
            reference: h.reference,
            state: h.state as State,
            title: h.title,
            person: call.who.kind === 'owner' ? h.personName : null,
            riskiest: h.riskiest === null ? null : studio.words.say(`risk.${h.riskiest}`),
            plate: call.who.kind === 'owner' ? h.plate : null,
            wish: h.wish,
            low: h.priceLow,
            high: h.priceHigh,
            wantedBy: h.wantedBy,
            jobDate: h.jobDate,
            ageMinutes: Math.floor((now - (h.receivedAt ?? h.createdAt)) / 60_000),
            doubtful: h.doubtful,
          }))}
          {...(query.q ? { q: query.q } : {})}
          {...(loaded.heads.length > LIMIT ? { nextHref: `${paths.studio}?${next}` } : {})}
        />,
      )
    },
  }),
  route({
    id: 'page.docket.open',
    face: 'page',
    method: 'POST',
    path: '/studio/dockets',
    rights: 'owner',
    summary: 'Open a docket for somebody on the phone.',
    body: 'form',
    answers: { 303: null },
    act: async (call) => {
      const made = await openEnquiry(call, 'en', 'studio')
      return seeOther(paths.conversation(made.id), {
        writes: made.writes,
        cookies: [customerCookie(call, made.id, made.key)],
      })
    },
  }),
]
