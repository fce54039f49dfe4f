/**
 * One line of the docket: written once, never changed. `v` is the version of the body's shape,
 * `by` who wrote it (customer, owner, bench, system), `at` UTC milliseconds. Bench lines carry the
 * device and its own running number, since they may be written without a signal.
 */
export type Line = {
  readonly docket: string
  readonly seq: number
  readonly id: string
  readonly v: number
  readonly kind: string
  readonly body: unknown
  readonly by: string
  readonly device?: string
  readonly n?: number
  readonly at: number
}

/** A line before the store has given it its place. */
export type NewLine = Omit<Line, 'docket' | 'seq'>
