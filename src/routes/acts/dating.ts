import type { BodyOf } from '../../docket/kinds'
import type { Planned } from '../../docket/planned'
import { MOVES, mayMove } from '../../docket/states'
import { estimate } from '../../quote/estimate'
import type { EstimatePlan } from '../../quote/estimate-types'
import { conflictsOf, firstFree, leftBy, type PlanLimits, takenBy } from '../../quote/plan'
import { type LabourRatios, planReady, type ReadyPlan } from '../../quote/plan/ready'
import type { Task } from '../../quote/plan/task'
import { type Planning, planView } from '../../quote/plan-of'
import { staffOn } from '../../quote/studio-profile'
import { addDaysText } from '../../quote/working-day'
import { invalid, Problem } from '../http/problem'
import type { Call, Load, Studio } from '../route'
import { agreedRevision } from './agreed'
import { conflictText, type DatedCar, takenByOthers } from './days'
import { checkMatch, type Desk, write } from './desk'
import { deskInput, todayOf } from './estimating'
import { notNow } from './revising'

type Any = Call<unknown, unknown, Load>

export type DateGiven = {
  readonly start: string
  readonly startMinute?: number | undefined
  readonly people?: number | undefined
  /** Leave the job without a day where it would be against other cars. */
  readonly onlyIfFree?: boolean | undefined
}

/** What stands against a day, in words, and the first day nothing stands against. */
export type Against = {
  readonly conflicts: readonly string[]
  readonly ready: { readonly date: string; readonly minute: number }
  /** Ready so where the other cars were not there. */
  readonly readyAlone: { readonly date: string; readonly minute: number }
  readonly firstFree: { readonly start: string; readonly startMinute: number } | null
}

/** The line of a dated job. */
export const datedBody = (
  planning: Planning & Pick<Planned, 'names' | 'trades'>,
  ready: ReadyPlan,
  people: number,
  startMinute: number | undefined,
): BodyOf<'dated'> => {
  const { plan } = ready
  return {
    start: plan.startsAt.date,
    people,
    readyLikely: ready.readyLikely.utc,
    readyCautious: ready.readyCautious.utc,
    ...(startMinute === undefined ? {} : { startMinute }),
    planned: {
      tasks: planning.tasks,
      labour: planning.labour,
      taken: takenBy(plan),
      ready: { date: plan.readyAt.date, minute: plan.readyAt.minute },
      ...(planning.names ? { names: planning.names } : {}),
      ...(planning.trades ? { trades: planning.trades } : {}),
    } as Planned,
  }
}

/** A job planned to begin at a moment, in the hours that are left. Throws 422 where none ever are. */
export const planAt = (
  studio: Studio,
  tasks: readonly Task[],
  labour: LabourRatios,
  people: number,
  given: Pick<DateGiven, 'start' | 'startMinute'>,
  left: PlanLimits,
): ReadyPlan => {
  const engine = { ...studio.engine, people }
  const ready = planReady(tasks, engine, given.start, labour, given.startMinute ?? 0, left)
  if (!ready.ok) throw invalid([{ pointer: '/start', code: 'ERR_NO_HOURS' }])
  return ready.value
}

const momentOf = ({ date, minute }: { readonly date: string; readonly minute: number }) => ({
  date,
  minute,
})

/** The planning of an agreed docket on a day: what was agreed, with so many people. */
const planningOf = (call: Any, desk: Desk, given: DateGiven) => {
  const agreed = agreedRevision(desk)
  const adjustments = [
    ...(agreed?.adjustments ?? []),
    ...(given.people === undefined
      ? []
      : [{ kind: 'people' as const, people: given.people, why: 'dated so' }]),
  ]
  const made = estimate({
    ...deskInput(call.studio, call.now, desk, adjustments),
    start: given.start,
    today: addDaysText(given.start, -1),
  })
  const names = made.steps.flatMap((s) => (s.name ? [[s.id, s.name] as const] : []))
  const trades = adjustments.flatMap((a) =>
    a.kind === 'sublet' ? [[a.step, a.name] as const] : [],
  )
  return {
    ...made.planning,
    people: made.plan.people,
    names: Object.fromEntries(names),
    trades: Object.fromEntries(trades),
  }
}

/**
 * Dates an agreed job: planned with those who are there that day, in the hours the other cars leave.
 * Says what stands against it, and the first day on which nothing does.
 */
export const dateJob = (call: Any, desk: Desk, cars: readonly DatedCar[], given: DateGiven) => {
  checkMatch(call, desk)
  if (!mayMove(desk.docket.state, 'dated')) throw notNow(desk.docket, MOVES[desk.docket.state])
  if (given.start < todayOf(call.studio, call.now))
    throw invalid([{ pointer: '/start', code: 'ERR_PAST' }])
  const { studio } = call
  const planning = planningOf(call, desk, given)
  const { tasks, labour, people } = planning
  const staff = staffOn(studio.profile)
  const others = takenByOthers(cars, desk.id, studio, call.now)
  const clashes = (ready: ReadyPlan) =>
    conflictsOf({ job: desk.id, plan: takenBy(ready.plan) }, others, studio.engine, staff)
  const alone = planAt(studio, tasks, labour, people, given, leftBy([], studio.engine, staff))
  const against = clashes(alone)
  const left = leftBy(
    others.map((o) => o.plan),
    studio.engine,
    staff,
  )
  const beside = against.length === 0 ? alone : planAt(studio, tasks, labour, people, given, left)
  // The day asked for is the day it comes: where the others leave no hour on it, it stands against them.
  const sameDay = beside.plan.startsAt.date === alone.plan.startsAt.date
  const ready = sameDay ? beside : alone
  const found: Against | null =
    against.length === 0
      ? null
      : {
          conflicts: [...against].map((c) => conflictText(studio, cars, c, desk.id)),
          ready: momentOf(beside.plan.readyAt),
          readyAlone: momentOf(alone.plan.readyAt),
          firstFree: freeFrom(call, desk, tasks, people, given, others),
        }
  if (found && given.onlyIfFree)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.not-free' },
      more: { state: desk.docket.state, moves: MOVES[desk.docket.state], against: found },
    })
  const { writes, docket } = write(call, desk, [
    { kind: 'dated', body: datedBody(planning, ready, people, given.startMinute) },
  ])
  const plan: EstimatePlan = planView(ready, people)
  return { docket, plan, against: found, writes }
}

const freeFrom = (
  call: Any,
  desk: Desk,
  tasks: readonly Task[],
  people: number,
  given: DateGiven,
  others: Parameters<typeof firstFree>[5],
): Against['firstFree'] => {
  const from = { start: given.start, startMinute: given.startMinute ?? 0 }
  const { studio } = call
  const staff = staffOn(studio.profile)
  return firstFree(desk.id, tasks, studio.engine, people, from, others, staff)?.begin ?? null
}
