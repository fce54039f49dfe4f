import { describe, expect, it } from 'vitest'
import { parseDay } from '../../kernel/calendar'
import type { JobPlan } from './job-plan'
import { planJob } from './plan-job'
import type { After, Studio, Task } from './task'

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
const link = (id: string, lag = 0, lagKind: After['lagKind'] = 'elapsed'): After => ({
  id,
  lag,
  lagKind,
  block: 'car',
})
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
// 2026-11-23 is a Monday.
const planned = (
  tasks: readonly Task[],
  with_: Partial<Studio> = {},
  at = 0,
  on = '2026-11-23',
) => {
  const result = planJob(tasks, { ...studio, ...with_ }, on, at)
  if (!result.ok) throw new Error(result.error)
  return result.value
}
const rows = (plan: JobPlan) =>
  plan.days.flatMap((day) =>
    day.blocks.map((b) => `${day.date} ${b.from}-${b.to} ${b.task} ${b.people.join('+')}`),
  )

describe('planJob', () => {
  // Counted out by hand on a clock: hours 8-12 and 13-17, half an hour of set-up.
  it('fills days around set-up, breaks and nights', () => {
    const plan = planned([task('a', 300), task('b', 200, { after: [link('a')] })])
    expect(rows(plan)).toEqual([
      '2026-11-23 510-720 a 0',
      '2026-11-23 780-870 a 0',
      '2026-11-23 870-1020 b 0',
      '2026-11-24 510-560 b 0',
    ])
    expect(plan.readyAt).toEqual({ date: '2026-11-24', minute: 560, utc: '2026-11-24T09:20:00Z' })
    expect(plan.personMinutes).toBe(300 + 200 + 2 * 30)
    expect(plan.elapsedMinutes).toBe(1440 + 560 - 480)
    expect(plan.idleMinutes).toBe(0)
    expect(plan.critical).toEqual(['a', 'b'])
    expect(plan.days[0]?.blocks[0]?.part).toEqual({ n: 1, of: 2 })
  })

  it('lets an elapsed lag run at night and over the weekend, a working one in hours only', () => {
    const friday = '2026-11-27'
    const over = (lag: number, kind: After['lagKind']) =>
      planned([task('a', 60), task('b', 30, { after: [link('a', lag, kind)] })], {}, 900, friday)
    expect(over(1440, 'elapsed').readyAt).toMatchObject({ date: '2026-11-30', minute: 540 })
    expect(over(120, 'elapsed').days[0]?.drying).toEqual([
      {
        task: 'a',
        from: { date: friday, minute: 990 },
        until: { date: friday, minute: 1110 },
        block: 'car',
      },
    ])
    // 30 working minutes are left on Friday, the other 90 pass on Monday from 8:30 on.
    expect(over(120, 'working').readyAt).toMatchObject({ date: '2026-11-30', minute: 630 })
    expect(over(1440, 'elapsed').idleMinutes).toBe(30)
  })

  it('begins a task that must not pause only where it can end, a longer one with the day', () => {
    const whole = { pausable: false, after: [link('a')] }
    expect(rows(planned([task('a', 300), task('b', 160, whole)])).at(-1)).toBe(
      '2026-11-24 510-670 b 0',
    )
    expect(rows(planned([task('a', 300), task('b', 150, whole)])).at(-1)).toBe(
      '2026-11-23 870-1020 b 0',
    )
    expect(rows(planned([task('a', 30), task('b', 500, whole)]))).toEqual([
      '2026-11-23 510-540 a 0',
      '2026-11-24 510-720 b 0',
      '2026-11-24 780-1020 b 0',
      '2026-11-25 510-560 b 0',
    ])
  })

  it('keeps the machine limit per person and day', () => {
    const polish = [task('polish', 400, { machine: true })]
    expect(rows(planned(polish))).toEqual([
      '2026-11-23 510-720 polish 0',
      '2026-11-23 780-900 polish 0',
      '2026-11-24 510-580 polish 0',
    ])
    expect(rows(planned(polish, { people: 2 })).at(-1)).toBe('2026-11-23 900-970 polish 1')
  })

  it('sends two people to one task at 1.75 times the speed of one', () => {
    const plan = planned([task('wash', 175, { crewMax: 2 })], { people: 2 })
    expect(rows(plan)).toEqual(['2026-11-23 510-610 wash 0+1'])
    expect(plan.personMinutes).toBe(200 + 60)
  })

  it('gives the second person other work rather than the same', () => {
    const two = planned([task('a', 175, { crewMax: 2 }), task('b', 175)], { people: 2 })
    expect(two.readyAt.minute).toBe(510 + 175)
    expect(two.personMinutes).toBe(350 + 60)
  })

  it('skips days off and lets an outside trade work without a person', () => {
    const plan = planned([task('trim', 60, { outside: true }), task('a', 60)], {
      daysOff: ['2026-11-23', '2026-11-24'],
    })
    expect(rows(plan)).toEqual(['2026-11-25 510-570 trim ', '2026-11-25 510-570 a 0'])
    expect(plan.personMinutes).toBe(60 + 30)
  })

  it('cuts the day at its cap', () => {
    expect(planned([task('a', 300)], { dayCapMinutes: 240 }).readyAt).toMatchObject({
      date: '2026-11-24',
      minute: 600,
    })
  })

  // Directive 2000/84/EC: clocks go forward on 29 March 2026 and back on 25 October 2026, 01:00 UTC.
  it.each([
    ['forward', '2026-03-28', 60, 120, '2026-03-29', 18 * 60],
    ['back', '2026-10-24', 120, 60, '2026-10-25', 16 * 60],
  ])('counts 24 hours over a change %s', (_, start, before, later, end, minute) => {
    const day = parseDay(end)
    if (!day.ok) throw new Error(day.error)
    const zone = [
      { fromUtcMinute: 0, offsetMinutes: before },
      { fromUtcMinute: day.value * 1440 + 60, offsetMinutes: later },
    ]
    const always = Array.from({ length: 7 }, () => [{ from: 0, to: 1440 }])
    const plan = planned(
      [task('a', 60), task('b', 0, { after: [link('a', 1440)] })],
      { zone, week: always, setUpMinutesPerDay: 0, dayCapMinutes: 1440 },
      16 * 60,
      start,
    )
    expect(plan.days[0]?.drying[0]?.until).toEqual({ date: end, minute: minute })
    expect(plan.readyAt.date).toBe(end)
  })

  it.each([
    ['no-people', [task('a', 1)], { people: 0 }, '2026-11-23'],
    ['no-bay', [task('a', 1)], { bays: 0 }, '2026-11-23'],
    ['no-lift', [task('a', 1, { needs: { bay: false, lift: true } })], { lifts: 0 }, '2026-11-23'],
    ['bad-date', [task('a', 1)], {}, '2026-11-31'],
    ['no-working-time', [task('a', 1)], { week: [[], [], [], [], [], [], []] }, '2026-11-23'],
    ['no-working-time', [task('a', 60)], { dayCapMinutes: 30 }, '2026-11-23'],
    [
      'no-working-time',
      [task('a', 60, { machine: true })],
      { machineMinutesPerPersonDay: 0 },
      '2026-11-23',
    ],
    ['cycle', [task('a', 1, { after: [link('a')] })], {}, '2026-11-23'],
    ['unknown-task', [task('a', 1, { after: [link('b')] })], {}, '2026-11-23'],
  ] as const)('answers %s', (error, tasks, more, date) => {
    expect(planJob(tasks, { ...studio, ...more }, date)).toEqual({ ok: false, error })
  })

  it('of no tasks is ready when it starts', () => {
    expect(planned([])).toMatchObject({ days: [], elapsedMinutes: 0, critical: [] })
  })
})
