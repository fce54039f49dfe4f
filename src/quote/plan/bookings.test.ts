import { describe, expect, it } from 'vitest'
import { bookings, takenBy } from './bookings'
import { planJob } from './plan-job'
import type { Studio, Task } from './task'

const OPEN = [
  { from: 480, to: 720 },
  { from: 780, to: 1020 },
]
const studio: Studio = {
  people: 2,
  bays: 1,
  lifts: 1,
  week: [OPEN, OPEN, OPEN, OPEN, OPEN, [], []],
  daysOff: [],
  machineMinutesPerPersonDay: 330,
  dayCapMinutes: 480,
  setUpMinutesPerDay: 30,
  zone: [],
}
const job = (name: string, date: string, tasks: readonly Partial<Task>[]) => {
  const full = tasks.map(
    (task, i): Task => ({
      id: `t${i}`,
      minutes: 60,
      crewMax: 1,
      machine: false,
      needs: { bay: true, lift: false },
      after: [],
      pausable: true,
      ...task,
    }),
  )
  const plan = planJob(full, studio, date)
  if (!plan.ok) throw new Error(plan.error)
  return { job: name, plan: takenBy(plan.value) }
}
const CURED: Partial<Task> = {
  minutes: 30,
  after: [{ id: 't0', lag: 720, lagKind: 'elapsed', block: 'bay' }],
}

describe('bookings', () => {
  it('finds the bay taken twice and says when', () => {
    const first = job('a', '2026-11-23', [{ minutes: 120 }])
    const second = job('b', '2026-11-23', [{ minutes: 90 }])
    expect(bookings([first, second], studio)).toEqual([
      {
        date: '2026-11-23',
        resource: 'bay',
        from: 510,
        to: 600,
        needed: 2,
        available: 1,
        jobs: ['a', 'b'],
      },
    ])
    expect(bookings([first, second], { ...studio, bays: 2 })).toEqual([])
    expect(bookings([first], studio)).toEqual([])
  })

  it('keeps the bay over night while a coating sets', () => {
    const coated = job('a', '2026-11-23', [{ minutes: 420 }, CURED])
    const next = job('b', '2026-11-24', [{ minutes: 60 }])
    expect(bookings([coated, next], studio)).toMatchObject([
      { date: '2026-11-24', resource: 'bay', from: 510, to: 540, jobs: ['a', 'b'] },
    ])
    const late = job('b', '2026-11-25', [{ minutes: 60 }])
    expect(bookings([coated, late], studio)).toEqual([])
  })

  it('counts people over all cars, and follows their number by date', () => {
    const list = ['a', 'b', 'c'].map((name) => job(name, '2026-11-24', [{ minutes: 100 }]))
    const roomy = { ...studio, bays: 3 }
    expect(bookings(list, roomy)).toMatchObject([
      { date: '2026-11-24', resource: 'people', needed: 3, available: 2, jobs: ['a', 'b', 'c'] },
    ])
    expect(bookings(list, roomy, () => 3)).toEqual([])
    expect(bookings(list.slice(0, 2), roomy, () => 1)).toMatchObject([{ needed: 2, available: 1 }])
  })

  it('counts lifts and does not mind cars that only touch', () => {
    const lifted = { needs: { bay: false, lift: true }, minutes: 60 }
    const list = ['a', 'b'].map((name) => job(name, '2026-11-24', [lifted]))
    expect(bookings(list, studio)).toMatchObject([{ resource: 'lift', needed: 2, available: 1 }])
    const waits = { id: 'late', minutes: 60, needs: { bay: false, lift: true } }
    const after = [{ id: 't0', lag: 0, lagKind: 'elapsed', block: 'car' }] as const
    const second = job('b', '2026-11-24', [
      { needs: { bay: false, lift: false } },
      { ...waits, after },
    ])
    expect(bookings([list[0]!, second], studio)).toEqual([])
  })
})
