import fc from 'fast-check'
import type * as z from 'zod'
import { registry } from '../../src/routes/registry'
import type { Route } from '../../src/routes/route'
import { callerOf } from '../support/caller'
import { least, showing } from './actors'
import { bodyOf, ECHO } from './arbitrary'
import { pathOf, sampleOf, stageOf } from './samples'
import type { Prepared } from './stages'
import { preparedWorld } from './stages'

/** What a run of the fuzz came to; every fault names its route. */
export type Fuzzed = {
  readonly requests: number
  readonly statuses: Readonly<Record<string, number>>
  readonly faults: readonly string[]
}

/** These end what the rest of the run needs. */
const ENDING = new Set(['docket.erase-personal', 'data.erase', 'devices.remove-others', 'import'])

const isShape = (body: Route['body']): body is z.ZodType =>
  typeof body === 'object' && body !== null

const fuzzable = registry.filter(
  (r) => r.face === 'api' && r.method !== 'GET' && isShape(r.body) && !ENDING.has(r.id),
)

/**
 * Sends `requests` bodies made from the shapes in the registry, each to one of its routes with the
 * rights it needs; a fault is an answer the registry does not promise (any 500 among them) or a
 * refusal that repeats what was sent. Then looks at every page for text that would run.
 */
export const fuzz = async (p: Prepared, requests: number, seed: number): Promise<Fuzzed> => {
  const world = await preparedWorld(p)
  const call = callerOf(world)
  const statuses: Record<string, number> = {}
  const faults: string[] = []
  const each = Math.ceil(requests / fuzzable.length)
  let sent = 0
  try {
    for (const [i, route] of fuzzable.entries()) {
      const shape = (route.described ?? route.body) as z.ZodType
      const bodies = fc.sample(bodyOf(shape), { numRuns: each, seed: seed + i })
      for (const json of bodies) {
        // Counts of a minute are not what is looked at here.
        if (world.clock) world.clock.now += 1_000
        const { method, path, sent: given } = sampleOf(route, p)
        const rev = stageOf(route) ? await revOf(call, world.ownerKey, p, route) : undefined
        const { body: _, ...rest } = given
        const headers = { ...rest.headers, ...showing(least(route), route, p) }
        sent += 1
        try {
          const match = route.match === 'required' ? { match: rev } : {}
          const answer = await call(method, path, { ...rest, ...match, headers, json })
          statuses[answer.status] = (statuses[answer.status] ?? 0) + 1
          if (answer.status >= 400 && answer.text.includes(ECHO))
            faults.push(`${route.id} repeats what was sent: ${answer.text.slice(0, 300)}`)
        } catch (error) {
          faults.push(
            `${route.id}: ${String(error).slice(0, 600)} for ${JSON.stringify(json).slice(0, 400)}`,
          )
        }
      }
    }
    faults.push(...(await runningText(world, p)))
  } finally {
    await world.close()
  }
  return { requests: sent, statuses, faults }
}

const revOf = async (
  call: ReturnType<typeof callerOf>,
  key: string,
  p: Prepared,
  route: Route,
): Promise<number | undefined> => {
  if (route.match !== 'required') return undefined
  const { id } = p.dockets[stageOf(route)]
  return (await call('GET', `/api/v1/dockets/${id}`, { key })).json.rev
}

/** Pages on which something sent would run, or which can no longer be shown. */
const runningText = async (
  world: Awaited<ReturnType<typeof preparedWorld>>,
  p: Prepared,
): Promise<readonly string[]> => {
  const found: string[] = []
  const pages = registry.filter(
    (r) => r.face === 'page' && r.method === 'GET' && r.rights !== 'public',
  )
  for (const route of pages)
    for (const d of Object.values(p.dockets)) {
      const parts = {
        id: d.id,
        question: d.question,
        photo: d.photo,
        extra: d.extra,
        n: '1',
        key: d.key,
        code: p.code,
        device: p.device,
      }
      const cookie = `jd-${d.id}=${d.key}`
      const shown = route.rights === 'customer' ? { cookie } : showing(least(route), route, p)
      const answer = await world.fetch(pathOf(route, parts), { headers: shown })
      const text = await answer.text()
      if (answer.status >= 500)
        found.push(`${route.id} answers ${answer.status} after the fuzz: ${world.logs().at(-2)}`)
      const html = answer.headers.get('content-type')?.startsWith('text/html')
      if (html && new RegExp(`<script>${ECHO}|<img src=x|href="javascript:`, 'i').test(text))
        found.push(`${route.id} shows text that runs`)
    }
  return found
}
