import { parseDay } from '../../kernel/calendar'
import { err, ok, type Result } from '../../kernel/result'
import { dayPlan, type JobPlan } from './day-plan'
import { type JobModel, makeModel, readyBound } from './model'
import { linkTasks, type NetworkError } from './network'
import { type CrewRule, type Placed, placeTasks } from './place'
import { listOrder } from './schedule'
import { smallRandom } from './small-random'
import { PEOPLE_PER_CAR, STARTS, type Studio, type Task } from './task'
import { growAxis, makeAxis, NoWorkingTime, workAfter } from './working-axis'

export type PlanError =
  | NetworkError
  | 'bad-date'
  | 'no-people'
  | 'no-bay'
  | 'no-lift'
  | 'no-working-time'

/** What is already settled when planning: people by day and earliest moments. */
export type PlanLimits = {
  /** UTC minute before which a task (by id) cannot start. */
  readonly notBefore?: ReadonlyMap<string, number>
  /** People there on a day number; the studio's number when left out. */
  readonly peopleOn?: (dayNo: number) => number
  /** Randomised starts; STARTS when left out. */
  readonly starts?: number
}

/** A chosen way through the job: which task first, and who does how many of them. */
export type Course = { readonly order: readonly number[]; readonly crews: readonly number[] }
export type Searched = {
  readonly placed: readonly Placed[]
  readonly finish: number
  readonly course: Course
  readonly bound: number
}

const SEED = 0x1f123bb5
const RULES: readonly CrewRule[] = ['idle', 'most', 'one']

const crewMinutes = (placed: readonly Placed[]): number =>
  placed.reduce((sum, task) => sum + (task.end - task.start) * task.crew, 0)

/**
 * Best placing found for at most `people`. Each smaller number of people is tried as well and the
 * better one kept, so one more person can never make the car ready later.
 */
export const searchCourse = (model: JobModel, people: number, starts: number): Searched => {
  let best: Searched | undefined
  const bound = readyBound(model, people)
  const base = model.tail.map((tail) => -tail)
  for (let crew = 1; crew <= people; crew++) {
    const random = smallRandom(SEED)
    for (let k = 0; k < starts && !(best && best.finish <= bound); k++) {
      const key = k < RULES.length ? base : base.map((value) => value * (0.6 + 0.8 * random()))
      const order = listOrder(key, model.network)
      const rule = crew === 1 ? 'one' : RULES[k % RULES.length]!
      if (crew === 1 && k > 0 && k < RULES.length) continue
      const { placed, finish } = placeTasks(model, order, crew, rule)
      const shorter = !best || finish < best.finish
      if (!shorter && !(finish === best!.finish && crewMinutes(placed) < crewMinutes(best!.placed)))
        continue
      best = { placed, finish, course: { order, crews: placed.map((task) => task.crew) }, bound }
    }
  }
  return best!
}

const lacking = (tasks: readonly Task[], studio: Studio): PlanError | undefined => {
  if (studio.people < 1) return 'no-people'
  if (studio.bays < 1 && tasks.some((task) => task.needs.bay)) return 'no-bay'
  if (studio.lifts < 1 && tasks.some((task) => task.needs.lift)) return 'no-lift'
  return undefined
}

/** The model of a job starting on a date, with the errors of planJob. */
export const modelJob = (
  tasks: readonly Task[],
  studio: Studio,
  startLocal: string,
  startMinute = 0,
  limits: PlanLimits = {},
): Result<JobModel, PlanError> => {
  const linked = linkTasks(tasks)
  if (!linked.ok) return linked
  const lack = lacking(tasks, studio)
  if (lack) return err(lack)
  const start = parseDay(startLocal)
  if (!start.ok) return err('bad-date')
  const axis = makeAxis(studio, start.value, startMinute)
  if (!growAxis(axis)) return err('no-working-time')
  const notBefore = tasks.map((task) => {
    const utc = limits.notBefore?.get(task.id)
    return utc === undefined ? 0 : workAfter(axis, utc)
  })
  const peopleOn = limits.peopleOn
  return ok(
    makeModel(tasks, linked.value, axis, notBefore, (day) =>
      peopleOn ? peopleOn(axis.dayNo[day]!) : studio.people,
    ),
  )
}

/**
 * Plan of one car in real working hours. `startLocal` 'YYYY-MM-DD', `startMinute` minute of that
 * local day. One car takes one bay and at most one lift, whatever number of its tasks need them.
 * Errors: see PlanError; 'no-working-time' when the hours never suffice.
 */
export const planJob = (
  tasks: readonly Task[],
  studio: Studio,
  startLocal: string,
  startMinute = 0,
  limits: PlanLimits = {},
): Result<JobPlan, PlanError> => {
  try {
    const model = modelJob(tasks, studio, startLocal, startMinute, limits)
    if (!model.ok) return model
    const people = Math.min(studio.people, PEOPLE_PER_CAR)
    const found = searchCourse(model.value, people, limits.starts ?? STARTS)
    return ok(dayPlan(model.value, found.placed))
  } catch (problem) {
    if (problem instanceof NoWorkingTime) return err('no-working-time')
    throw problem
  }
}
