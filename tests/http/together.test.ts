import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { routeOf } from '../support/checked'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'
import { wholeWay } from './stranger'

const base = '/api/v1/enquiries'

describe.each(RUNTIMES)('many at once, on %s', (runtime) => {
  let world: World
  let call: Caller
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
  })
  afterAll(() => world.close())

  const linesOf = async (id: string): Promise<Json[]> =>
    (await call('GET', `/api/v1/dockets/${id}/lines`, { key: world.ownerKey })).json.lines

  it('answers given side by side are all kept', async () => {
    const { id, key } = (await call('POST', base, { json: {} })).json
    const own = `${base}/${id}`
    const { questions } = (await call('GET', '/api/v1/script', { key: world.ownerKey })).json
    const now = (await call('GET', own, { key })).json.needed
    const asked = questions.filter((q: Json) => now.includes(q.id)).slice(0, 5)
    expect(asked.length).toBe(5)
    const put = async (q: Json) => {
      // Others may win the race more often than one request tries again; then the caller does.
      for (;;) {
        const sent = await call('PUT', `${own}/answers/${q.id}`, { key, json: answerByKind(q) })
        if (sent.status !== 412) return sent.status
      }
    }
    expect(await Promise.all(asked.map(put))).toEqual(asked.map(() => 200))
    const kept = (await linesOf(id))
      .filter((l) => l.kind === 'answered')
      .map((l) => l.body.question)
    expect(kept.sort()).toEqual(asked.map((q: Json) => q.id).sort())
  })

  it('of two who saw the same state, one is told that it is stale', async () => {
    const { id, key, question, rev } = (await call('POST', base, { json: {} })).json
    const put = () =>
      call('PUT', `${base}/${id}/answers/${question.id}`, {
        key,
        match: rev,
        json: answerByKind(question),
      })
    const statuses = (await Promise.all([put(), put(), put(), put()])).map((a) => a.status)
    expect(statuses.sort()).toEqual([200, 412, 412, 412])
    expect((await linesOf(id)).length).toBe(rev + 1)
  })

  it('two benches writing in turn, sending again and overlapping: every line once', async () => {
    const { id } = (await call('POST', base, { json: {} })).json
    const line = (device: string, n: number) => ({
      id: `${device}-line-${n}`,
      kind: 'noted',
      body: { text: `${device} ${n}` },
      device,
      n,
      at: n * 1000,
    })
    const send = async (device: string, from: number, to: number): Promise<number> => {
      const lines = Array.from({ length: to - from }, (_, i) => line(device, from + i))
      for (;;) {
        const sent = await call('POST', `/api/v1/dockets/${id}/lines`, {
          key: world.ownerKey,
          json: { lines },
        })
        if (sent.status !== 412) return sent.status
      }
    }
    const batches = ['phone', 'tablet'].flatMap((device) =>
      [0, 3, 6].flatMap((from) => [send(device, from, from + 4), send(device, from, from + 4)]),
    )
    expect(new Set(await Promise.all(batches))).toEqual(new Set([200]))
    const noted = (await linesOf(id)).filter((l) => l.kind === 'noted')
    const wanted = ['phone', 'tablet'].flatMap((d) =>
      Array.from({ length: 10 }, (_, n) => line(d, n).id),
    )
    expect(noted.map((l) => l.id).sort()).toEqual(wanted.sort())
    const seqs = noted.map((l) => l.seq)
    expect(new Set(seqs).size).toBe(seqs.length)
  })

  it('each request of the whole way costs one read and one write of the database at most', async () => {
    const costs: string[] = []
    let walked = 0
    const counted: Caller = async (method, path, sent) => {
      world.resetTrips()
      const answer = await call(method, path, sent)
      const { reads, writes } = world.trips()
      walked += 1
      // Looking changes nothing; only how often is counted, where there is a limit.
      const still = method === 'GET' && routeOf(method, path)?.rate === undefined
      if (reads > 1 || writes > 1 || (still && writes > 0))
        costs.push(`${method} ${path}: ${reads} + ${writes}`)
      if (answer.status < 300 && reads !== 1) costs.push(`${method} ${path} did not read once`)
      return answer
    }
    await wholeWay({ call: counted, ownerKey: world.ownerKey })
    expect(costs).toEqual([])
    expect(walked).toBeGreaterThan(40)
  })
})
