import { parseDay } from '../../kernel/calendar'
import { err, ok, type Result } from '../../kernel/result'
import { dayPlan } from './day-plan'
import type { JobPlan } from './job-plan'
import { type JobModel, makeModel } from './model'
import { linkTasks, type NetworkError } from './network'
import { type Course, type Searched, searchCourse } from './search-course'
import { PEOPLE_PER_CAR, STARTS, type Studio, type Task } from './task'
import { growAxis, type HoursOn, makeAxis, orNoTime, workAfter } from './working-axis'

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
  /** Hours of a day number; the studio's week when left out. */
  readonly hoursOn?: HoursOn
  /** The set-up of the first day lies behind already. */
  readonly setUpDone?: boolean
  /** Randomised starts; STARTS when left out. */
  readonly starts?: number
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
  const setUp = limits.setUpDone ? 0 : undefined
  const axis = makeAxis(studio, start.value, startMinute, setUp, limits.hoursOn)
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

export type SolvedJob = { readonly model: JobModel; readonly found: Searched }

/** The best placing of a modelled job for the people of its studio. */
export const solveModel = (model: JobModel, starts: number, known?: Course): SolvedJob => {
  const people = Math.min(model.axis.studio.people, PEOPLE_PER_CAR)
  return { model, found: searchCourse(model, people, starts, known) }
}

/** The best placing of a job, before it is turned into days. */
export const solveJob = (
  tasks: readonly Task[],
  studio: Studio,
  startLocal: string,
  startMinute = 0,
  limits: PlanLimits = {},
): Result<SolvedJob, PlanError> =>
  orNoTime(() => {
    const model = modelJob(tasks, studio, startLocal, startMinute, limits)
    return model.ok ? ok(solveModel(model.value, limits.starts ?? STARTS)) : model
  })

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
  const solved = solveJob(tasks, studio, startLocal, startMinute, limits)
  return solved.ok ? ok(dayPlan(solved.value.model, solved.value.found.placed)) : solved
}
