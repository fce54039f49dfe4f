import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { registry } from '../../src/routes/registry'
import type { Route } from '../../src/routes/route'
import { callerOf } from '../support/caller'
import type { World } from '../support/world'
import { ACTORS, type Actor, least, RIGHTS_TABLE, showing } from './actors'
import { sampleOf, statusOf } from './samples'
import { type Prepared, prepared, preparedWorld } from './stages'

let p: Prepared
/** For routes that change nothing, and requests that are turned away. */
let shared: World
const opened: World[] = []

const fresh = async (): Promise<World> => {
  const world = await preparedWorld(p)
  opened.push(world)
  return world
}
beforeAll(async () => {
  p = await prepared()
  shared = await fresh()
})
afterAll(async () => {
  for (const world of opened) await world.close()
})

const send = (world: World, route: Route, actor: Actor, swap?: Record<string, string>) => {
  const { method, path, sent } = sampleOf(route, p, swap)
  const headers = { ...sent.headers, ...showing(actor, route, p) }
  return callerOf(world)(method, path, { ...sent, headers })
}

const named = registry.map((route) => [route.id, route] as const)

describe.each(named)('%s', (_id, route) => {
  const safe = route.method === 'GET'
  const table = RIGHTS_TABLE[route.rights]

  it('turns away who may not, however good the request', async () => {
    for (const actor of ACTORS.filter((a) => table[a] !== 'may'))
      expect((await send(shared, route, actor)).status, actor).toBe(table[actor])
    expect(ACTORS.some((a) => table[a] === 'may')).toBe(true)
  })

  it('lets in who may', async () => {
    for (const actor of ACTORS.filter((a) => table[a] === 'may')) {
      const answer = await send(safe ? shared : await fresh(), route, actor)
      expect(answer.status, `${actor}: ${answer.text.slice(0, 300)}`).toBe(statusOf(route))
    }
  })
})

const behindKey = named.filter(([, r]) => r.path.includes(':') && r.rights !== 'public')

describe.each(behindKey)('%s with ids swapped', (_id, route) => {
  const parts = [...route.path.matchAll(/:(\w+)/g)].map(([, name]) => name ?? '')

  it('does not know what nobody has, nor what somebody else has', async () => {
    const { other } = p.dockets
    const elsewhere: Record<string, string> = { photo: other.photo, extra: other.extra }
    for (const part of parts) {
      const swaps = ['an-id-nobody-has', ...(part in elsewhere ? [elsewhere[part] ?? ''] : [])]
      // A key opens one docket: with another id in the path it is a stranger's.
      if (part === 'id' && route.rights === 'customer') swaps.push(other.id)
      for (const swap of swaps) {
        const { status } = await send(shared, route, least(route), { [part]: swap })
        expect(status, `${part} as ${swap}`).toBe(404)
      }
    }
    expect(parts.length).toBeGreaterThan(0)
  })
})
