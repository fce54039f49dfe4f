import type { HranaServer } from '../../dev/hrana'
import type { SERVER_LIMITS } from '../../src/node-fetch'
import type { GateLimits } from '../../src/routes/http/gate'
import { openNodeWorld } from './node-world'

export const RUNTIMES = ['node', 'worker'] as const
export type Runtime = (typeof RUNTIMES)[number]

export type Trips = { readonly reads: number; readonly writes: number }

/** The whole program, served at a port of its own over an empty database. */
export type World = {
  readonly runtime: Runtime
  readonly baseUrl: string
  readonly ownerKey: string
  /** A request by path; redirects are not followed. */
  readonly fetch: (path: string, init?: RequestInit) => Promise<Response>
  /** Every line the program logged so far. */
  readonly logs: () => readonly string[]
  /** Where the database stands, and the folder of the pictures on Node. */
  readonly file: string
  readonly photos?: string
  /** Round trips to the database since the last call of `resetTrips`. */
  readonly trips: () => Trips
  readonly resetTrips: () => void
  /** The database endpoint where the program reaches it over HTTP. */
  readonly hrana?: HranaServer
  /** UTC ms of the program's clock; on the Worker the clock is the machine's. */
  readonly clock?: { now: number }
  /** Runs what happens by itself about once an hour. */
  readonly tend: () => Promise<void>
  readonly close: () => Promise<void>
}

export type WorldOptions = {
  readonly runtime: Runtime
  readonly trustProxy?: boolean
  readonly publicUrl?: string
  /** Begin with a copy of this database instead of an empty one; on Node with its pictures, too. */
  readonly from?: { readonly file: string; readonly photos: string }
  /** Node only: another run of chance, so that ids do not meet those of `from`. */
  readonly seed?: string
  /** Node only: other time limits of the server. */
  readonly server?: Readonly<Partial<Record<keyof typeof SERVER_LIMITS, number>>>
  /** Node only: with the gate in memory, which the tests' many requests would fill. */
  readonly gate?: GateLimits
  /** Node only: reach the database over HTTP instead of as a file. */
  readonly http?: boolean
}

export const OWNER_KEY = 'owner-key-of-the-tests-owner-key-of-the-tests-0'

/** Opens a world; the edge runtime is only loaded where it is wanted. */
export const openWorld = async (options: WorldOptions): Promise<World> =>
  options.runtime === 'node'
    ? openNodeWorld(options)
    : (await import('./worker-world')).openWorkerWorld(options)
