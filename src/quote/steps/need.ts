import type { ThreePoint } from '../context'
import type { Need, RowUse, StepRule, Unit } from '../rules'
import { type MinutesKey, minutes } from './minutes'

const whole = (minutes: number): number => Math.max(1, Math.round(minutes))

/** Whole minutes of `t` times `factor`, one at least; optimistic ≤ mode ≤ pessimistic is kept. */
export const times = (t: ThreePoint, factor: number): ThreePoint => ({
  optimistic: whole(t.optimistic * factor),
  mode: whole(t.mode * factor),
  pessimistic: whole(t.pessimistic * factor),
})

/** The sum of three-point minutes; end points add, as for parts done by one hand on one day. */
export const plus = (...parts: readonly ThreePoint[]): ThreePoint => ({
  optimistic: parts.reduce((s, p) => s + p.optimistic, 0),
  mode: parts.reduce((s, p) => s + p.mode, 0),
  pessimistic: parts.reduce((s, p) => s + p.pessimistic, 0),
})

/** Three-point minutes of a table row. */
export const row = (key: MinutesKey): ThreePoint => {
  const [optimistic, mode, pessimistic] = minutes[key].per
  return { optimistic, mode, pessimistic }
}

/** Where a table row comes from. */
export const sourceOf = (key: MinutesKey): string => minutes[key].source

const use = (key: MinutesKey, times: number): RowUse => ({ row: key, ...minutes[key], times })

/** A need with a further table row, times its factor, on top. */
export const withRow = (n: Need, key: MinutesKey, factor = 1): Need => ({
  ...n,
  minutes: plus(n.minutes, factor === 1 ? row(key) : times(row(key), factor)),
  rows: [...(n.rows ?? []), use(key, factor)],
})

/** What a step needs: its table row times amount times factor; null when the amount is nothing. */
export const need = (
  key: MinutesKey,
  amount: number,
  unit: Unit,
  factor = 1,
  extra: Partial<Omit<Need, 'quantity' | 'minutes'>> = {},
): Need | null =>
  amount <= 0
    ? null
    : {
        quantity: { amount: Math.round(amount * 10) / 10, unit },
        minutes: times(row(key), amount * factor),
        rows: [use(key, amount * factor)],
        ...extra,
      }

/** A stop-and-ask cap between likely and pessimistic, up to the next half hour. */
export const capOf = (n: Need): { readonly capMinutes: number } => ({
  capMinutes: Math.ceil((n.minutes.mode + n.minutes.pessimistic) / 60) * 30,
})

/** `byTime` of a step that is offered by time when `when` holds. */
export const byTimeWhen =
  (
    when: (r: Parameters<StepRule['need']>[0]) => boolean,
    of: StepRule['need'],
  ): NonNullable<StepRule['byTime']> =>
  (r, c) => {
    if (!when(r)) return null
    const n = of(r, c)
    return n ? capOf(n) : null
  }
