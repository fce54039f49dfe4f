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
  /** All pipelines meet this fault until `clear`. */
  always(fault: Fault): void
  clear(): void
}

/** The switches, and the way the server asks what the pipeline at hand shall meet. */
export const createFaults = (): { readonly switches: FaultSwitches; take(): Fault | undefined } => {
  let current: { readonly fault: Fault; left: number } | undefined
  return {
    switches: {
      next: (n, fault) => {
        current = { fault, left: n }
      },
      always: (fault) => {
        current = { fault, left: Number.POSITIVE_INFINITY }
      },
      clear: () => {
        current = undefined
      },
    },
    take: () => {
      if (current === undefined || current.left <= 0) return undefined
      current.left -= 1
      return current.fault
    },
  }
}
