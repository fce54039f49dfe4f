import type { Config } from '../config'
import type { Manifest } from '../pages/assets'
import type { Db } from '../store/db'
import type { PhotoStore } from '../store/photos-port'
import type { Catalogue } from '../words/render'
import type { Gate } from './http/gate'

/** One allow-listed line of the log: nothing a person typed, no key, no address of a page with one. */
export type LogRecord = {
  readonly requestId: string
  readonly route: string
  readonly method: string
  readonly status: number
  readonly code?: string
  /** How many there were, where a run counts something. */
  readonly count?: number
}

/** Everything the routes need from outside; the entries choose, tests pass their own. */
export type Deps = {
  readonly config: Config
  /** A database for one request; closed when the request is answered. */
  readonly openDb: () => Db
  readonly photos: PhotoStore
  /** UTC milliseconds. */
  readonly now: () => number
  readonly random: (bytes: number) => Uint8Array
  /** Counts in memory before anything is read; absent: nobody is turned away by it. */
  readonly gate?: Gate
  readonly log: (record: LogRecord) => void
  /** Sentences by key, the first that has one wins; absent: English. */
  readonly catalogues?: readonly Catalogue[]
  /** Built files by plain name. */
  readonly manifest: Manifest
  /** Where an unexpected error goes; never into an answer. */
  readonly fault: (requestId: string, error: unknown) => void
}
