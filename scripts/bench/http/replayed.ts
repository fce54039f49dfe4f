import type { Stmt } from '../../../src/store/db'
import type { Recorded } from './record'

/** What a bare server needs: texts of statements once, and per request which of them with which arguments. */
export type Replay = {
  readonly sql: readonly string[]
  readonly routes: Readonly<Record<string, ReplayRoute>>
}
type Step = readonly [sql: number, args: Stmt['args']]
export type ReplayRoute = {
  readonly status: number
  readonly headers: readonly (readonly [string, string])[]
  readonly body: string
  readonly requests: readonly {
    readonly reads: readonly Step[]
    readonly writes: readonly Step[]
  }[]
}

/** Recorded traffic without its repetitions; each route answers with the bytes of its first request. */
export const replayOf = (all: Readonly<Record<string, readonly Recorded[]>>): Replay => {
  const known = new Map<string, number>()
  const step = ({ sql, args }: Stmt): Step => {
    if (!known.has(sql)) known.set(sql, known.size)
    const plain = args.map((a) => {
      if (a instanceof Uint8Array) throw new Error('a blob cannot be replayed')
      return a
    })
    return [known.get(sql) ?? 0, plain]
  }
  const routes = Object.fromEntries(
    Object.entries(all).map(([id, list]) => {
      const { status, headers, body } = list[0]!
      const requests = list.map((r) => ({ reads: r.reads.map(step), writes: r.writes.map(step) }))
      return [id, { status, headers, body, requests }]
    }),
  )
  return { sql: [...known.keys()], routes }
}
