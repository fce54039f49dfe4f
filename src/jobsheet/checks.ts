import type { EstimateStep } from '../quote/estimate-types'
import { checksRaised, mayNotLeaveWithout, type Removal } from './refit'

/** What must be settled before the car leaves; everything else may be handed over open. */
export const BLOCKING = ['torque', 'brakes', 'belts', 'battery', 'leak', 'dry'] as const

export type Check = {
  readonly id: string
  readonly blocks: boolean
  readonly state: 'open' | 'done' | 'waived'
  /** Steps that raised it. */
  readonly from: readonly string[]
  /** Parts that raised it by coming off. */
  readonly items: readonly string[]
}

export type CheckRecord = { readonly waived?: boolean }

/**
 * Checks owed at refit and hand-over: those the steps raised, in the order of the steps, then those
 * of parts that came off besides. A waived one counts as settled; its reason stands in the docket.
 */
export const checksOf = (
  steps: readonly Pick<EstimateStep, 'id' | 'duties'>[],
  done: Readonly<Record<string, CheckRecord>>,
  removals: readonly Removal[] = [],
): readonly Check[] => {
  const from = new Map<string, string[]>()
  for (const step of steps)
    for (const duty of step.duties) {
      const known = from.get(duty)
      if (known) known.push(step.id)
      else from.set(duty, [step.id])
    }
  const items = new Map<string, string[]>()
  for (const { id, item } of checksRaised(removals)) {
    if (!from.has(id)) from.set(id, [])
    items.set(id, [...new Set([...(items.get(id) ?? []), item])])
  }
  return [...from].map(([id, raised]) => {
    const record = done[id]
    return {
      id,
      blocks: (BLOCKING as readonly string[]).includes(id),
      state: record === undefined ? 'open' : record.waived ? 'waived' : 'done',
      from: raised,
      items: items.get(id) ?? [],
    }
  })
}

export type Blocker =
  | { readonly kind: 'check'; readonly id: string }
  | { readonly kind: 'extra'; readonly id: string }
  | { readonly kind: 'refit'; readonly id: string; readonly item: string }

/**
 * What still stands between the car and its owner: only wheels, brakes, belts, battery, leak, drying
 * and an extra nobody decided. Trim that is not back on may follow another day.
 */
export const blockersOf = (
  checks: readonly Check[],
  extras: readonly { readonly extra: string; readonly decision: unknown }[],
  removals: readonly Removal[],
): readonly Blocker[] => [
  ...checks
    .filter((c) => c.blocks && c.state === 'open')
    .map((c) => ({ kind: 'check' as const, id: c.id })),
  ...extras
    .filter((e) => e.decision === null)
    .map((e) => ({ kind: 'extra' as const, id: e.extra })),
  ...removals
    .filter(mayNotLeaveWithout)
    .map((r) => ({ kind: 'refit' as const, id: r.id, item: r.item })),
]
