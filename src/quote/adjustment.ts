import { noMarks } from '../intake/marks'
import type { PolishLevel } from './context'
import type { RunStep } from './needs'

/** A change the studio makes to an estimate, always with a reason. Money in net minor units. */
export type Adjustment =
  | {
      readonly kind: 'minutes'
      readonly step: string
      readonly minutes: number
      readonly why: string
    }
  | { readonly kind: 'price'; readonly step: string; readonly amount: number; readonly why: string }
  | { readonly kind: 'remove'; readonly step: string; readonly why: string }
  | {
      readonly kind: 'add'
      readonly step: string
      readonly name: string
      readonly minutes: number
      readonly amount?: number
      readonly why: string
    }
  | { readonly kind: 'discount'; readonly amount: number; readonly why: string }
  /** A discount as a share of the work before charges, in basis points (1500 is 15 %). */
  | { readonly kind: 'discount-share'; readonly basisPoints: number; readonly why: string }
  | { readonly kind: 'surcharge'; readonly amount: number; readonly why: string }
  /** To the car and back: metres of one way, at the studio's rate beyond its free radius. */
  | { readonly kind: 'travel'; readonly metres: number; readonly why: string }
  /** Days the car stays in the bay; those beyond the included ones are charged at the studio's rate. */
  | { readonly kind: 'bay-days'; readonly days: number; readonly why: string }
  /** Work by an outside trade: its net cost, with the studio's margin on top unless one is given. */
  | {
      readonly kind: 'sublet'
      readonly step: string
      readonly name: string
      readonly cost: number
      readonly marginMillionths?: number
      readonly why: string
    }
  /** The step is done by time, up to so many minutes before we ask. */
  | {
      readonly kind: 'by-time'
      readonly step: string
      readonly capMinutes: number
      readonly why: string
    }
  | { readonly kind: 'people'; readonly people: number; readonly why: string }
  | { readonly kind: 'waive-note'; readonly note: string; readonly why: string }
  /** How deep a panel (absent: the whole car) is polished; never deeper than its readings allow. */
  | {
      readonly kind: 'level'
      readonly panel?: string
      readonly level: PolishLevel
      readonly why: string
    }
  /** The day work would begin, YYYY-MM-DD, instead of the next one. */
  | { readonly kind: 'start'; readonly day: string; readonly why: string }

export type Adjusted = {
  readonly runs: readonly RunStep[]
  readonly applied: readonly Adjustment[]
  /** Adjustments whose step or note is not there any more. */
  readonly dropped: readonly Adjustment[]
}

/** Minutes the studio has set are taken as its own likely value, with a little to both sides. */
const SET = { optimistic: 0.9, pessimistic: 1.15 } as const

const fixed = (run: RunStep, minutes: number): RunStep => {
  const first = run.worlds.find((w) => w.result !== null)?.result
  if (!first) return run
  const need = {
    ...first.need,
    chance: 1,
    minutes: {
      optimistic: Math.round(minutes * SET.optimistic),
      mode: minutes,
      pessimistic: Math.round(minutes * SET.pessimistic),
    },
  }
  return { ...run, chance: 1, worlds: [{ weight: 1, when: [], result: { ...first, need } }] }
}

const byTime = (run: RunStep, capMinutes: number): RunStep => ({
  ...run,
  worlds: run.worlds.map((w) => ({
    ...w,
    result: w.result === null ? null : { ...w.result, byTime: { capMinutes } },
  })),
})

const ownStep = (id: string, minutes: number): RunStep =>
  fixed(
    {
      rule: {
        id,
        track: 'finish',
        order: 700,
        after: [],
        crewMax: 1,
        machine: false,
        bay: true,
        lift: false,
        pausable: true,
        kit: [],
        need: () => null,
        cautions: () => [],
        source: 'set by the studio',
      },
      because: [],
      reads: noMarks(),
      chance: 1,
      worlds: [
        {
          weight: 1,
          when: [],
          result: {
            need: {
              quantity: { amount: 1, unit: 'car' },
              minutes: { optimistic: minutes, mode: minutes, pessimistic: minutes },
            },
            lag: null,
            cautions: [],
            byTime: null,
          },
        },
      ],
    },
    minutes,
  )

/** What a change is held against besides the steps: the car's panels, the studio's day. */
export type Car = { readonly panels: readonly string[]; readonly today: string }
const NO_CAR: Car = { panels: [], today: '' }
/** Steps that polish paint, by machine or by hand. */
export const POLISHING = /^(polish-|glaze-)/

/** What a change is about: a step that must be there, a new line that must not, or neither. */
const fits = (
  a: Adjustment,
  runs: readonly RunStep[],
  applied: readonly Adjustment[],
  car: Car,
): boolean => {
  const there = 'step' in a && runs.some((r) => r.rule.id === a.step && r.chance > 0)
  switch (a.kind) {
    case 'minutes':
    case 'price':
    case 'by-time':
      return there
    case 'remove':
      return there || a.step === 'minimum-charge'
    case 'add':
    case 'sublet':
      return !(
        runs.some((r) => r.rule.id === a.step) ||
        applied.some((b) => b.kind === 'sublet' && b.step === a.step)
      )
    case 'level':
      return (
        (a.panel === undefined || car.panels.includes(a.panel)) &&
        (a.level === 'none' || runs.some((r) => POLISHING.test(r.rule.id)))
      )
    case 'start':
      return a.day >= car.today
    default:
      return true
  }
}

/** Adjusts the steps in order; money, people and notes are looked at where they are computed. */
export const adjustSteps = (
  runs: readonly RunStep[],
  adjustments: readonly Adjustment[],
  car: Car = NO_CAR,
): Adjusted => {
  let now = [...runs]
  const applied: Adjustment[] = []
  const dropped: Adjustment[] = []
  for (const a of adjustments) {
    if (!fits(a, now, applied, car)) {
      dropped.push(a)
      continue
    }
    applied.push(a)
    if (a.kind === 'minutes') now = now.map((r) => (r.rule.id === a.step ? fixed(r, a.minutes) : r))
    if (a.kind === 'by-time')
      now = now.map((r) => (r.rule.id === a.step ? byTime(r, a.capMinutes) : r))
    if (a.kind === 'remove') now = now.filter((r) => r.rule.id !== a.step)
    if (a.kind === 'add') now.splice(Math.max(0, now.length - 1), 0, ownStep(a.step, a.minutes))
  }
  return { runs: now, applied, dropped }
}
