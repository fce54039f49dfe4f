import * as z from 'zod'
import { day } from '../../docket/line-shapes'
import { datedCars, daysLoad, daysLoadWhole } from '../acts/days'
import { moveAll, movesOf } from '../acts/days-moving'
import { daysView } from '../acts/days-view'
import { type Route, route } from '../route'

const base = '/api/v1/days'
const move = z.strictObject({
  docket: z.string().max(64),
  start: day,
  startMinute: z.int().min(0).max(1439),
})

const daysAnswer = z.object({
  today: day,
  days: z.array(
    z.object({
      date: day,
      items: z.array(
        z.object({ kind: z.string(), docket: z.string().nullable(), text: z.string() }),
      ),
    }),
  ),
  late: z.array(
    z.object({ docket: z.string(), kind: z.enum(['late', 'moved']), text: z.string() }),
  ),
  moves: z.array(move),
})

export const studioDaysRoutes: readonly Route[] = [
  route({
    id: 'days.read',
    face: 'api',
    method: 'GET',
    path: base,
    rights: 'bench',
    summary: 'The studio’s days, what is late, and what moves for it.',
    answers: { 200: daysAnswer },
    load: daysLoad,
    act: ({ loaded, studio, now }) => {
      const { jobs, ...view } = daysView(datedCars(loaded, studio, now), studio, now)
      return { status: 200, json: { ...view, moves: movesOf(jobs) } }
    },
  }),
  route({
    id: 'days.move',
    face: 'api',
    method: 'POST',
    path: `${base}/moves`,
    rights: 'owner',
    summary:
      'Give every job that a late one pushes its new day, as it was read; 409 when it changed.',
    body: z.strictObject({ moves: z.array(move).max(200) }),
    answers: { 200: z.object({ moves: z.array(move) }) },
    load: daysLoadWhole,
    act: (call) => {
      const cars = datedCars(call.loaded, call.studio, call.now)
      const done = moveAll(call, cars, call.body.moves)
      return { status: 200, writes: done.writes, json: { moves: done.moved } }
    },
  }),
]
