import { Problem } from './problem'

/**
 * The cheap outer gate: counts in memory, before anything is read or asked. It is as exact as one
 * process is; the exact counts stand in the database. `now` in UTC ms, addresses as `addressOf` gives them.
 */
export type Gate = {
  /** Counts a request that changes something. Throws 429 past what one address may send in a minute. */
  readonly enter: (address: string, now: number) => void
  /** Counts the bytes of a body. Throws 429 past what one address may send in a minute. */
  readonly spend: (address: string, bytes: number, now: number) => void
  /** Runs one request. Throws 503 where as many run already as there is room for. */
  readonly inside: <T>(work: () => Promise<T>, large: boolean) => Promise<T>
}

export type GateLimits = {
  readonly perMinute: number
  readonly bytesPerMinute: number
  readonly atOnce: number
  /** Of these, how many may bring a body of megabytes. */
  readonly largeAtOnce: number
}

const MINUTE = 60_000
const MOST_ADDRESSES = 20_000
const CROWD = 'everybody else'

export const createGate = (limits: GateLimits): Gate => {
  let window = 0
  let counts = new Map<string, { requests: number; bytes: number }>()
  let running = 0
  let large = 0
  const of = (address: string, now: number) => {
    const at = Math.floor(now / MINUTE)
    if (at !== window) {
      window = at
      counts = new Map()
    }
    // A crowd of addresses shares one count rather than filling the memory.
    const name = counts.size < MOST_ADDRESSES || counts.has(address) ? address : CROWD
    const known = counts.get(name) ?? { requests: 0, bytes: 0 }
    counts.set(name, known)
    return known
  }
  const full = (now: number): Problem =>
    new Problem('too-many', { retryAfter: 60 - Math.floor((now % MINUTE) / 1000) })
  return {
    enter: (address, now) => {
      const count = of(address, now)
      count.requests += 1
      if (count.requests > limits.perMinute) throw full(now)
    },
    spend: (address, bytes, now) => {
      const count = of(address, now)
      count.bytes += bytes
      if (count.bytes > limits.bytesPerMinute) throw full(now)
    },
    inside: async (work, isLarge) => {
      if (running >= limits.atOnce || (isLarge && large >= limits.largeAtOnce))
        throw new Problem('away', { retryAfter: 5 })
      running += 1
      large += isLarge ? 1 : 0
      try {
        return await work()
      } finally {
        running -= 1
        large -= isLarge ? 1 : 0
      }
    },
  }
}

/** One process of a machine. */
export const MACHINE_GATE: GateLimits = {
  perMinute: 3_000,
  bytesPerMinute: 268_435_456,
  atOnce: 400,
  largeAtOnce: 16,
}

/** One isolate of the edge: its 128 MB are shared by all the requests it runs. */
export const EDGE_GATE: GateLimits = { ...MACHINE_GATE, largeAtOnce: 3 }
