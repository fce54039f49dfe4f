import type { EstimateStep } from '../quote/estimate-types'

/** What must be settled before the car leaves; everything else may be handed over open. */
export const BLOCKING = ['torque', 'brakes', 'belts', 'battery', 'leak', 'dry'] as const
export type BlockingCheck = (typeof BLOCKING)[number]

export type Check = {
  readonly id: string
  readonly blocks: boolean
  readonly state: 'open' | 'done' | 'waived'
  /** Steps that raised it. */
  readonly from: readonly string[]
}

export type CheckRecord = { readonly waived?: boolean }

/**
 * Checks owed at refit and hand-over: those the steps raised, in the order of the steps. A waived
 * one counts as settled; its reason stands in the docket.
 */
export const checksOf = (
  steps: readonly Pick<EstimateStep, 'id' | 'duties'>[],
  done: Readonly<Record<string, CheckRecord>>,
): readonly Check[] => {
  const from = new Map<string, string[]>()
  for (const step of steps)
    for (const duty of step.duties) {
      const known = from.get(duty)
      if (known) known.push(step.id)
      else from.set(duty, [step.id])
    }
  return [...from].map(([id, raised]) => {
    const record = done[id]
    return {
      id,
      blocks: (BLOCKING as readonly string[]).includes(id),
      state: record === undefined ? 'open' : record.waived ? 'waived' : 'done',
      from: raised,
    }
  })
}

export type Blocker =
  | { readonly kind: 'check'; readonly id: string }
  | { readonly kind: 'extra'; readonly id: string }
  | { readonly kind: 'refit'; readonly id: string; readonly item: string }

/** What still stands between the car and its owner. */
export const blockersOf = (
  checks: readonly Check[],
  extras: readonly { readonly extra: string; readonly decision: unknown }[],
  removals: readonly { readonly id: string; readonly item: string; readonly refitted: boolean }[],
): readonly Blocker[] => [
  ...checks
    .filter((c) => c.blocks && c.state === 'open')
    .map((c) => ({ kind: 'check' as const, id: c.id })),
  ...extras
    .filter((e) => e.decision === null)
    .map((e) => ({ kind: 'extra' as const, id: e.extra })),
  ...removals
    .filter((r) => !r.refitted)
    .map((r) => ({ kind: 'refit' as const, id: r.id, item: r.item })),
]
