/** What kind of part came off: it decides which checks follow and whether the car may leave without it. */
export const REMOVED_SORTS = ['wheel', 'seat', 'battery', 'trim', 'other'] as const
export type RemovedSort = (typeof REMOVED_SORTS)[number]

export type Removal = {
  readonly id: string
  readonly item: string
  readonly refitted: boolean
  readonly sort?: RemovedSort
  readonly before?: 'wheel' | 'trim'
}

/** Checks each kind of part raises when it came off, whatever the plan said. */
const RAISES: Readonly<Record<RemovedSort, readonly string[]>> = {
  wheel: ['torque', 'recheck-distance', 'brakes'],
  seat: ['belts', 'battery'],
  battery: ['battery'],
  trim: ['clips'],
  other: [],
}

/** Check ids with the parts that raised them. */
export const checksRaised = (
  removals: readonly Removal[],
): readonly { readonly id: string; readonly item: string }[] =>
  removals.flatMap((r) =>
    [...RAISES[r.sort ?? 'other'], ...(r.before === 'wheel' ? RAISES.wheel : [])].map((id) => ({
      id,
      item: r.item,
    })),
  )

/** Steps at which a wheel or a piece of trim goes back on. */
const GOES_ON: Readonly<Record<string, readonly ('wheel' | 'trim')[]>> = {
  'wheels-on': ['wheel'],
  'carpet-refit': ['trim'],
  'refit-checks': ['wheel', 'trim'],
}

/** What must be back before the wheel or trim of this step goes on; none: go on. */
export const refitHolds = <R extends Removal>(
  step: string,
  removals: readonly R[],
): readonly R[] => {
  const on = GOES_ON[step] ?? []
  return removals.filter((r) => !r.refitted && r.before !== undefined && on.includes(r.before))
}

/** A car does not leave without what it rolls, stops and holds people with; trim may follow later. */
export const mayNotLeaveWithout = (r: Removal): boolean =>
  !r.refitted &&
  (r.before === 'wheel' || r.sort === 'wheel' || r.sort === 'seat' || r.sort === 'battery')
