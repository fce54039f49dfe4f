/**
 * What may go wrong on the way: `drop-before` cuts the line before anything ran, `drop-after` once
 * it took effect; `half-body` sends half of the answer and cuts; `not-json` answers with a page.
 */
export type Fault =
  | { readonly kind: 'delay'; readonly ms: number }
  | { readonly kind: 'status'; readonly status: 429 | 500 | 502 | 503 }
  | { readonly kind: 'drop-before' | 'drop-after' | 'half-body' | 'not-json' }

export type FaultSwitches = {
  /** The next `n` pipelines meet this fault. */
  next(n: number, fault: Fault): void
  /** After `skip` more pipelines, the next `n` meet this fault. */
  later(skip: number, n: number, fault: Fault): void
  /** All pipelines meet this fault until `clear`. */
  always(fault: Fault): void
  clear(): void
}

/** The switches, and the way the server asks what the pipeline at hand shall meet. */
export const createFaults = (): { readonly switches: FaultSwitches; take(): Fault | undefined } => {
  let current: { readonly fault: Fault; skip: number; left: number } | undefined
  return {
    switches: {
      next: (n, fault) => {
        current = { fault, skip: 0, left: n }
      },
      later: (skip, n, fault) => {
        current = { fault, skip, left: n }
      },
      always: (fault) => {
        current = { fault, skip: 0, left: Number.POSITIVE_INFINITY }
      },
      clear: () => {
        current = undefined
      },
    },
    take: () => {
      if (current === undefined || current.left <= 0) return undefined
      if (current.skip > 0) {
        current.skip -= 1
        return undefined
      }
      current.left -= 1
      return current.fault
    },
  }
}
