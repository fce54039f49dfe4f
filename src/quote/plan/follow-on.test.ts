import { describe, expect, it } from 'vitest'
import { conflictsOf, firstFree, leftBy } from './beside'
import { type Booking, takenBy } from './bookings'
import { type DatedJob, followOn } from './follow-on'
import { planJob } from './plan-job'
import type { Studio, Task } from './task'

const OPEN = [
  { from: 480, to: 720 },
  { from: 780, to: 1020 },
]
const studio: Studio = {
  people: 1,
  bays: 1,
  lifts: 1,
  week: [OPEN, OPEN, OPEN, OPEN, OPEN, [], []],
  daysOff: [],
  machineMinutesPerPersonDay: 330,
  dayCapMinutes: 480,
  setUpMinutesPerDay: 30,
  zone: [],
}
const task = (id: string, minutes: number, more: Partial<Task> = {}): Task => ({
  id,
  minutes,
  crewMax: 1,
  machine: false,
  needs: { bay: true, lift: false },
  after: [],
  pausable: true,
  ...more,
})
/** Coating for so many minutes, and what waits twelve hours for it in the bay. */
const coated = (minutes: number): readonly Task[] => [
  task('coat', minutes),
  task('look', 30, { after: [{ id: 'coat', lag: 720, lagKind: 'elapsed', block: 'bay' }] }),
]
const MONDAY = '2026-11-23'
const TUESDAY = '2026-11-24'
const all = () => 1

const booked = (job: string, tasks: readonly Task[], start: string, startMinute = 0) => {
  const plan = planJob(tasks, studio, start, startMinute)
  if (!plan.ok) throw new Error(plan.error)
  return { job, plan: takenBy(plan.value), ready: plan.value.readyAt }
}
const dated = (
  job: string,
  tasks: readonly Task[],
  start: string,
  more: Partial<DatedJob> = {},
): DatedJob => {
  const { plan, ready } = booked(job, tasks, start, more.startMinute)
  return {
    job,
    tasks,
    people: 1,
    start,
    startMinute: 0,
    booked: plan,
    ready: { date: ready.date, minute: ready.minute },
    stage: 'waiting',
    done: [],
    ...more,
  }
}

// Every expected time below is counted out by hand on a clock: open 8-12 and 13-17, half an hour to
// set up each day.
describe('beside other jobs', () => {
  it('takes the bay while a coat cures, but nobody’s hands', () => {
    const { plan } = booked('a', coated(120), MONDAY)
    // Coated until 10:30, dry at 22:30, looked at on Tuesday after setting up.
    expect(plan.bay).toEqual([
      { from: { date: MONDAY, minute: 510 }, until: { date: MONDAY, minute: 1350 } },
      { from: { date: TUESDAY, minute: 510 }, until: { date: TUESDAY, minute: 540 } },
    ])
    expect(plan.work).toEqual([
      { date: MONDAY, from: 480, to: 630, people: 1 },
      { date: TUESDAY, from: 480, to: 540, people: 1 },
    ])
    const left = leftBy([plan], studio, all)
    const day = 20_780 // 2026-11-23, days since 1970
    expect(left.hoursOn?.(day)).toEqual([
      { from: 630, to: 720 },
      { from: 780, to: 1020 },
    ])
  })

  it('has a second car in a second bay while the first one cures', () => {
    const first: Booking = booked('a', coated(120), MONDAY)
    const two = { ...studio, bays: 2 }
    const begin = { start: MONDAY, startMinute: 0 }
    const found = firstFree('b', [task('wash', 120)], two, 1, begin, [first], all)
    expect(found?.begin).toEqual({ start: MONDAY, startMinute: 630 })
    // From 10:30: half an hour to set up, an hour before the break, the rest after it.
    expect(found?.taken.work).toEqual([
      { date: MONDAY, from: 630, to: 720, people: 1 },
      { date: MONDAY, from: 780, to: 840, people: 1 },
    ])
    expect(conflictsOf({ job: 'b', plan: found!.taken }, [first], two, all)).toEqual([])
  })

  it('waits for the only bay until the coat is dry and looked at', () => {
    const first: Booking = booked('a', coated(120), MONDAY)
    const begin = { start: MONDAY, startMinute: 0 }
    const found = firstFree('b', [task('wash', 60)], studio, 1, begin, [first], all)
    expect(found?.begin.start).toBe(TUESDAY)
    expect(found?.taken.bay[0]?.from).toEqual({ date: TUESDAY, minute: 570 })
  })

  it('plans nothing on a day on which everybody is away, or the studio is closed', () => {
    const away = (date: string) => (date === MONDAY ? 0 : 1)
    const begin = { start: MONDAY, startMinute: 0 }
    const wash = [task('wash', 60)]
    expect(firstFree('b', wash, studio, 1, begin, [], away)?.begin.start).toBe(TUESDAY)
    const closed = { ...studio, daysOff: [MONDAY] }
    expect(firstFree('b', wash, closed, 1, begin, [], all)?.begin.start).toBe(TUESDAY)
  })

  it('gives up where the only lift is never free', () => {
    const lifted = [task('under', 60, { needs: { bay: true, lift: true } })]
    const begin = { start: MONDAY, startMinute: 0 }
    expect(firstFree('b', lifted, { ...studio, lifts: 0 }, 1, begin, [], all)).toBeNull()
  })
})

describe('followOn', () => {
  const a = (more: Partial<DatedJob> = {}) => dated('a', [task('polish', 360)], MONDAY, more)
  const b = dated('b', [task('wash', 300)], TUESDAY)
  const c = dated('c', [task('wash', 300)], '2026-11-25')

  it('leaves everything where it is while all goes as planned', () => {
    const now = followOn([a({ stage: 'begun' }), b, c], studio, { date: MONDAY, minute: 480 }, all)
    expect(now.map((j) => [j.job, j.kind, j.start])).toEqual([
      ['a', 'kept', MONDAY],
      ['b', 'kept', TUESDAY],
      ['c', 'kept', '2026-11-25'],
    ])
  })

  it('moves what waits for the bay when the car before takes longer, and says what for', () => {
    // Nothing of a's six hours is done when it is begun at noon on Monday: 13:30-17:00, and Tuesday
    // from 8:30 to 11:00. b finds the bay free at 11:00.
    const late = a({ stage: 'begun' })
    const now = followOn([late, b, c], studio, { date: MONDAY, minute: 780 }, all)
    expect(now.map((j) => [j.job, j.kind, j.start, j.startMinute])).toEqual([
      ['a', 'late', MONDAY, 0],
      ['b', 'moved', TUESDAY, 660],
      ['c', 'moved', '2026-11-25', expect.any(Number)],
    ])
    expect(now[0]).toMatchObject({ ready: { date: TUESDAY, minute: 660 } })
    expect(now[1]?.because).toContainEqual({ job: 'a', resource: 'bay' })
    // b in turn: 11:30-12:00, 13:00-17:00, half an hour on Wednesday morning; c waits for that.
    expect(now[1]?.ready).toEqual({ date: '2026-11-25', minute: 540 })
    expect(now[2]).toMatchObject({ startMinute: 540 })
    expect(now[2]?.because.map((x) => x.job)).toEqual(expect.arrayContaining(['b']))
  })

  it('moves nothing that has a bay and a person of its own', () => {
    const roomy = { ...studio, bays: 2, people: 2 }
    const late = a({ stage: 'begun' })
    const now = followOn([late, b], roomy, { date: MONDAY, minute: 780 }, () => 2)
    expect(now.map((j) => j.kind)).toEqual(['late', 'kept'])
  })

  it('leaves two jobs that were dated against each other on purpose', () => {
    const beside = dated('b', [task('wash', 60)], MONDAY, { startMinute: 840 })
    const now = followOn(
      [a({ stage: 'begun' }), beside],
      studio,
      { date: MONDAY, minute: 600 },
      all,
    )
    expect(now.map((j) => j.kind)).toEqual(['late', 'kept'])
  })

  it('takes a car whose day went by as beginning now', () => {
    const now = followOn([a()], studio, { date: TUESDAY, minute: 480 }, all)
    expect(now[0]).toMatchObject({ kind: 'late', ready: { date: TUESDAY, minute: 930 } })
  })

  it('counts what was done, and a finished car takes nothing', () => {
    const half = a({ stage: 'begun', done: [{ id: 'polish', minutes: 300 }] })
    const at = { date: MONDAY, minute: 900 }
    expect(followOn([half, b], studio, at, all).map((j) => j.kind)).toEqual(['kept', 'kept'])
    const over = followOn([a({ stage: 'over' }), b], studio, at, all)
    expect(over.map((j) => j.kind)).toEqual(['kept', 'kept'])
    expect(over[0]?.taken.work).toEqual([])
  })
})
