import type * as z from 'zod'
import type { StudioSettings } from '../quote/context'
import type { Query, Stmt } from '../store/db'
import type { Words } from '../words/render'
import type { Deps } from './deps'

export const RIGHTS = ['public', 'customer', 'bench', 'owner'] as const
export type Rights = (typeof RIGHTS)[number]

export type Who =
  | { readonly kind: 'nobody' }
  | { readonly kind: 'customer'; readonly docket: string; readonly access: string }
  | {
      readonly kind: 'bench' | 'owner'
      readonly label: string
      readonly session?: string
      readonly access?: string
    }

export type Method = 'GET' | 'POST' | 'PUT' | 'DELETE'

/** What a handler asks the database for before it decides; all in the one read of the request. */
export type Load = Readonly<Record<string, Query<unknown>>>
export type Loaded<L extends Load> = { readonly [K in keyof L]: ReturnType<L[K]['map']> }

export type Input<B, Q> = {
  readonly params: Readonly<Record<string, string>>
  readonly query: Q
  readonly body: B
  readonly who: Who
  /** The address's own words, for a page that reads what was linked with it. */
  readonly search: URLSearchParams
  /** Keys of dockets in this browser, where the route lists them. */
  readonly held: readonly string[]
  readonly now: number
}

/** The studio at this moment: its settings as the engine sees them, and its words. */
export type Studio = {
  readonly rev: number
  readonly profile: import('../quote/studio-profile').StudioProfile
  readonly engine: StudioSettings
  readonly words: Words
}

export type Call<B, Q, L extends Load> = Input<B, Q> & {
  readonly loaded: Loaded<L>
  readonly studio: Studio
  readonly now: number
  readonly origin: string
  readonly secure: boolean
  readonly match: number | null
  readonly deps: Deps
  readonly newId: () => string
}

/** What a request comes to. Everything it changes goes into one batch with its own bookkeeping. */
export type Outcome = {
  readonly status: number
  readonly json?: unknown
  /** A whole page, or the fragment an enhanced page asked for. */
  readonly html?: string
  readonly text?: { readonly body: string; readonly mime: string }
  readonly bytes?: { readonly body: Uint8Array; readonly mime: string }
  /** A file to keep, made while it is sent. */
  readonly stream?: {
    readonly body: ReadableStream<Uint8Array>
    readonly mime: string
    readonly name: string
  }
  readonly to?: string
  readonly cookies?: readonly string[]
  readonly headers?: Readonly<Record<string, string>>
  readonly writes?: readonly Stmt[]
  /** Runs before the batch (a photo's bytes); nothing may depend on it having happened. */
  readonly before?: () => Promise<void>
  /** Takes back what `before` did, when the batch was refused. */
  readonly undo?: () => Promise<void>
  /** What was deleted must not be found in the database's files either. */
  readonly scrub?: boolean
  /** Runs after the batch is through; a failure is logged, not shown. */
  readonly after?: () => Promise<void>
}

export type RateRule = { readonly name: string; readonly perMinute: number }

export type Route<B = unknown, Q = unknown, L extends Load = Load> = {
  readonly id: string
  readonly face: 'api' | 'page'
  readonly method: Method
  readonly path: string
  readonly rights: Rights
  readonly summary: string
  /** JSON body (api), 'form' / 'multipart' where the handler reads fields, 'picture' for its bytes. */
  readonly body?: z.ZodType<B> | 'form' | 'multipart' | 'picture'
  /** The body as the description shows it, where the checking is done by the act. */
  readonly described?: z.ZodType
  readonly query?: z.ZodType<Q>
  /** Longest JSON body in bytes; absent: the usual. */
  readonly mostBytes?: number
  /** Success answers by status; null: no body. */
  readonly answers: Readonly<Record<number, z.ZodType | null | 'other'>>
  /** If-Match: 'required' for studio edits of a docket, 'optional' for customers. */
  readonly match?: 'required' | 'optional'
  /** Collisions are tried again on the new state when the caller did not say which one they saw. */
  readonly again?: boolean
  readonly rate?: RateRule
  /** Lists the dockets this browser holds keys of; it may do nothing to them. */
  readonly lists?: boolean
  readonly load?: (input: Input<B, Q>) => L | Promise<L>
  readonly act: (call: Call<B, Q, L>) => Promise<Outcome> | Outcome
}

/** Defines a route; the types of body, query and loads follow from what is given. */
export const route = <B = undefined, Q = undefined, L extends Load = Record<never, never>>(
  given: Route<B, Q, L>,
): Route => given as unknown as Route

/** Posted fields of a form, multipart or not. */
export type Form = {
  readonly get: (name: string) => string | null
  readonly all: (name: string) => readonly string[]
  readonly file: (name: string) => File | null
  /** Every typed field in order; files left out. */
  readonly entries: readonly (readonly [name: string, value: string])[]
}
