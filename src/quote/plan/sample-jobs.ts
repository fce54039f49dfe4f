import { smallRandom } from './small-random'
import { MACHINE_MINUTES, SET_UP_MINUTES, type Studio, type Task } from './task'

/** Invented minutes of a task: optimistic, likely, pessimistic. */
export type ThreePoint = { readonly low: number; readonly mode: number; readonly high: number }
export type SampleJob = {
  readonly tasks: readonly Task[]
  readonly points: readonly ThreePoint[]
  readonly studio: Studio
  readonly start: string
  readonly startMinute: number
  /** Spread of the factor common to all tasks: standard deviation of its logarithm. */
  readonly commonSd: number
}

type Kind = {
  minutes: number
  crew?: 1 | 2
  machine?: true
  whole?: true
  lift?: true
  outside?: true
}

const OPEN = [
  { from: 480, to: 720 },
  { from: 765, to: 1020 },
] as const
const SHORT = [{ from: 540, to: 780 }] as const

/**
 * An invented job of 25-40 tasks in the order of a bench (arrival, wash, panels, cabin, wheels,
 * protection, hand-over), the same for the same seed. For tests and proofs only.
 */
export const sampleJob = (seed: number): SampleJob => {
  const random = smallRandom(seed * 2_654_435_761 + 97)
  for (let k = 0; k < 8; k++) random()
  const between = (low: number, high: number) => low + random() * (high - low)
  const tasks: Task[] = []
  const points: ThreePoint[] = []
  const add = (id: string, kind: Kind, after: Task['after']) => {
    const mode = Math.round(kind.minutes * between(0.7, 1.4))
    const point = { low: mode * between(0.6, 0.85), mode, high: mode * between(1.3, 2.4) }
    points.push(point)
    tasks.push({
      id,
      minutes: (point.low + 4 * point.mode + point.high) / 6,
      crewMax: kind.crew ?? 1,
      machine: kind.machine === true,
      needs: { bay: kind.outside !== true, lift: kind.lift === true },
      after,
      pausable: kind.whole !== true,
      ...(kind.outside ? { outside: true } : {}),
    })
    return id
  }
  const on = (
    id: string,
    lag = 0,
    lagKind: 'elapsed' | 'working' = 'elapsed',
    block: 'bay' | 'car' = 'car',
  ) => ({ id, lag, lagKind, block }) as const
  add('check-in', { minutes: 45 }, [])
  add('wash', { minutes: 50, crew: 2 }, [on('check-in')])
  let before = 'wash'
  if (random() < 0.3) before = add('film', { minutes: 240, crew: 2 }, [on(before)])
  if (before === 'film') before = add('adhesive', { minutes: 90 }, [on('film', 10, 'working')])
  before = add('decontaminate', { minutes: 40 }, [on(before)])
  before = add('clay', { minutes: 50 }, [on(before)])
  before = add('readings', { minutes: 45 }, [on(before, 30)])
  before = add('mask', { minutes: 40, crew: 2 }, [on(before)])
  before = add('test-spot', { minutes: 40 }, [on(before)])
  const polished: string[] = []
  const panels = 6 + Math.floor(random() * 10)
  for (let k = 0; k < panels; k++) {
    polished.push(add(`polish-${k}`, { minutes: 28, machine: true }, [on('test-spot')]))
  }
  add(
    'rinse',
    { minutes: 30 },
    polished.map((id) => on(id)),
  )
  add('wipe', { minutes: 45, crew: 2 }, [on('rinse', 30)])
  before = 'wipe'
  if (random() < 0.3) {
    add('touch-up', { minutes: 60 }, [on('wipe')])
    before = add('level', { minutes: 30 }, [on('touch-up', 1440)])
  }
  add('coat', { minutes: 120, whole: true }, [on(before)])
  add('coat-check', { minutes: 15 }, [on('coat', 60, 'elapsed', 'bay')])
  const last = [on('coat', 720, 'elapsed', 'bay'), on('coat-check')]
  if (random() < 0.6) {
    add('vacuum', { minutes: 40 }, [on('check-in')])
    add('plastics', { minutes: 60 }, [on('vacuum')])
    add('seats', { minutes: 80 }, [on('vacuum')])
    last.push(on('plastics'), on('seats', random() < 0.5 ? 480 : 0))
    if (random() < 0.3) last.push(on(add('carpet', { minutes: 70 }, [on('vacuum')]), 1080))
  }
  if (random() < 0.5) {
    add('wheels-off', { minutes: 30, lift: true, whole: true }, [on('wash')])
    for (const wheel of ['fl', 'fr', 'rl', 'rr']) {
      add(`wheel-${wheel}`, { minutes: 35 }, [on('wheels-off')])
    }
    const wheels = ['fl', 'fr', 'rl', 'rr'].map((wheel) => on(`wheel-${wheel}`, 120))
    last.push(on(add('wheels-on', { minutes: 40, lift: true, whole: true }, wheels)))
  }
  if (random() < 0.2)
    last.push(on(add('trimmer', { minutes: 180, outside: true }, [on('check-in')])))
  last.push(on(add('glass', { minutes: 30 }, [on('rinse')])))
  add('photographs', { minutes: 25 }, last)
  add('hand-over', { minutes: 30, whole: true }, [on('photographs')])
  const people = random() < 0.6 ? 1 : 2
  const saturday = random() < 0.3 ? SHORT : []
  const day = 1 + Math.floor(random() * 28)
  return {
    tasks,
    points,
    studio: {
      people,
      bays: 1,
      lifts: 1,
      week: [OPEN, OPEN, OPEN, OPEN, OPEN, saturday, []],
      daysOff: ['2026-05-14'],
      machineMinutesPerPersonDay: MACHINE_MINUTES,
      dayCapMinutes: 540,
      setUpMinutesPerDay: SET_UP_MINUTES,
      zone: [{ fromUtcMinute: 0, offsetMinutes: 60 }],
    },
    start: `2026-05-${String(day).padStart(2, '0')}`,
    startMinute: random() < 0.3 ? 780 : 480,
    commonSd: between(0.1, 0.3),
  }
}
