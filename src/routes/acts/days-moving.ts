import type { JobNow } from '../../quote/plan'
import { leftBy } from '../../quote/plan'
import { staffOn } from '../../quote/studio-profile'
import type { Stmt } from '../../store/db'
import { Problem } from '../http/problem'
import type { Call, Load } from '../route'
import { datedBody, planAt } from './dating'
import { type DatedCar, jobsNow } from './days'
import { appendLines, stamp } from './desk'

export type MoveSeen = {
  readonly docket: string
  readonly start: string
  readonly startMinute: number
}

/** The jobs that move because another is late. */
export const movesOf = (jobs: readonly JobNow[]): readonly MoveSeen[] =>
  jobs
    .filter((j) => j.kind === 'moved')
    .map((j) => ({ docket: j.job, start: j.start, startMinute: j.startMinute }))

const same = (a: readonly MoveSeen[], b: readonly MoveSeen[]): boolean => {
  const text = (all: readonly MoveSeen[]) =>
    all.map((m) => `${m.docket} ${m.start} ${m.startMinute}`).sort()
  return JSON.stringify(text(a)) === JSON.stringify(text(b))
}

/**
 * Gives every job that a late one pushes its new day, all at once. `seen` are the moves as they were
 * read; where they have changed meanwhile nothing is moved: 409 with those of now.
 */
export const moveAll = (
  call: Call<unknown, unknown, Load>,
  cars: readonly DatedCar[],
  seen: readonly MoveSeen[],
): { readonly moved: readonly MoveSeen[]; readonly writes: readonly Stmt[] } => {
  const { studio } = call
  const jobs = jobsNow(cars, studio, call.now)
  const moves = movesOf(jobs)
  if (moves.length === 0 || !same(moves, seen))
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.moves' },
      more: { moves },
    })
  const writes = jobs
    .filter((j) => j.kind === 'moved')
    .flatMap((now) => {
      const car = cars.find((c) => c.head.docket === now.job)
      const planned = car?.docket.dated?.planned
      if (!car?.job || !planned) return []
      const others = jobs.filter((j) => j.job !== now.job).map((j) => j.taken)
      const left = leftBy(others, studio.engine, staffOn(studio.profile))
      const { tasks, people } = car.job
      const ready = planAt(studio, tasks, planned.labour, people, now, left)
      const minute = now.startMinute > 0 ? now.startMinute : undefined
      const body = {
        ...datedBody({ ...planned, tasks }, ready, people, minute),
        follows: [...new Set(now.because.map((b) => b.job))],
      }
      const lines = stamp(call, [{ kind: 'dated', body }])
      return appendLines(car.head.docket, car.lines, car.head, lines).writes
    })
  return { moved: moves, writes }
}
