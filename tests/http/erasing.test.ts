import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Database from 'libsql'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answered, type Prepared, prepared, preparedWorld } from './stages'

let p: Prepared
const opened: World[] = []
const open = async (world: Promise<World>): Promise<World> => {
  opened.push(await world)
  return world
}
beforeAll(async () => {
  p = await prepared()
})
afterAll(async () => {
  for (const world of opened) await world.close()
})

/** Every byte under the folder of the database: the file, its log, the pictures. */
const bytesOf = (world: World): string =>
  readdirSync(dirname(world.file), { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile())
    .map((f) => readFileSync(join(f.parentPath, f.name)).toString('latin1'))
    .join('\n')

const raw = <T>(world: World, work: (db: InstanceType<typeof Database>) => T): T => {
  const db = new Database(world.file, { timeout: 5000 } as Database.Options)
  try {
    return work(db)
  } finally {
    db.close()
  }
}

const age = (world: World, docket: string, days: number): void => {
  const now = world.clock?.now ?? Date.now()
  const at = now - days * 86_400_000
  raw(world, (db) => db.prepare('UPDATE head SET updated_at = ? WHERE docket = ?').run(at, docket))
}

const rowsOf = (world: World, docket: string): Readonly<Record<string, number>> =>
  raw(world, (db) =>
    Object.fromEntries(
      ['head', 'line', 'person', 'free_text', 'photo'].map((table) => {
        const sql = `SELECT count(*) AS n FROM ${table} WHERE docket = ?`
        return [table, Number((db.prepare(sql).get(docket) as { n: number }).n)]
      }),
    ),
  )

describe('an erasure', () => {
  it('leaves no word anybody typed: not in a line, an estimate, a kept answer or the outbox', async () => {
    const world = await open(preparedWorld(p))
    const call = callerOf(world)
    const key = world.ownerKey
    const { id, key: customer } = p.dockets.quoted
    const docket = `/api/v1/dockets/${id}`
    const again = { 'idempotency-key': '"told-once"' }
    const said: string[] = []
    const canary = (where: string): string => {
      said.push(`canary-${where}-robin-ash`)
      return said.at(-1) ?? ''
    }
    const adjustments = [
      {
        kind: 'add',
        step: 'own-1',
        name: canary('name'),
        minutes: 30,
        amount: 2_000,
        why: canary('why'),
      },
      {
        kind: 'sublet',
        step: 'own-2',
        name: canary('sublet'),
        cost: 5_000,
        why: canary('sublet-why'),
      },
      { kind: 'discount', amount: 500, why: canary('discount') },
    ]
    const { rev } = (await call('GET', docket, { key })).json
    const json = { adjustments, message: canary('message') }
    const made = await call('POST', `${docket}/revisions`, {
      key,
      match: rev,
      json,
      headers: again,
    })
    expect(made.status, made.text).toBe(201)
    const asked = { decision: 'ask', revision: 1, text: canary('question') }
    await call('POST', `/api/v1/enquiries/${id}/quote/decision`, {
      key: customer,
      json: asked,
      headers: again,
    })
    const write = async (to: string, bodies: Readonly<Record<string, Json>>) => {
      for (const [i, [kind, body]] of Object.entries(bodies).entries()) {
        const line = { id: `typed-${kind}`, kind, body, device: 'd', n: i + 1, at: i + 1 }
        const answer = await call('POST', `${to}/lines`, { key, json: { lines: [line] } })
        expect(answer.status, `${kind}: ${answer.text}`).toBe(200)
      }
    }
    await write(docket, {
      reading: { panel: 'roof', kind: 'panel', values: [110], spot: canary('spot') },
      unreadable: { panel: 'bonnet', why: canary('unreadable') },
      struck: { line: 'typed-reading', why: canary('struck') },
    })
    const benched = `/api/v1/dockets/${p.dockets.dated.id}`
    await write(benched, {
      found: { place: canary('place'), text: canary('found') },
      removed: { item: canary('item'), place: canary('from'), stored: canary('stored') },
      wanted: { item: 'own', what: 'product', thing: canary('thing') },
    })
    const before = bytesOf(world)
    for (const each of said) expect(before, each).toContain(each)

    const report = (await call('GET', `${docket}/personal-data`, { key })).json
    const other = (await call('GET', `${benched}/personal-data`, { key })).json
    for (const each of said) expect(JSON.stringify([report, other]), each).toContain(each)
    expect(report.contact[0].name).toBe('Robin Ash')
    expect(report.kept.map((k: Json) => k.table)).toContain('line')

    const now = (await call('GET', docket, { key })).json.rev
    expect((await call('DELETE', `${docket}/personal-data`, { key, match: now })).status).toBe(204)
    const called = { to: 'called-off', why: canary('called-off') }
    const then = (await call('GET', benched, { key })).json.rev
    const off = await call('POST', `${benched}/move`, { key, match: then, json: called })
    expect(off.status, off.text).toBe(200)
    const last = (await call('GET', benched, { key })).json.rev
    const second = await call('DELETE', `${benched}/personal-data`, { key, match: last })
    expect(second.status, second.text).toBe(204)
    const after = bytesOf(world)
    for (const each of said) expect(after, each).not.toContain(each)
    for (const each of said) expect(world.logs().join('\n')).not.toContain(each)
    const counts = raw(world, (db) => ({
      keys: db.prepare('SELECT count(*) AS n FROM idempotency WHERE instr(scope, ?) > 0').get(id),
      outbox: db.prepare('SELECT count(*) AS n FROM outbox WHERE docket = ?').get(id),
    }))
    expect(counts).toMatchObject({ keys: { n: 0 }, outbox: { n: 0 } })
    expect(readdirSync(join(world.photos ?? '', id))).toEqual([])
    // The figures stay, and the docket can still be read.
    const left = (await call('GET', docket, { key })).json
    expect(left.state).toBe('withdrawn')
    expect((await call('GET', `${docket}/lines`, { key })).json.lines.length).toBeGreaterThan(20)
    expect((await call('GET', `${docket}/personal-data`, { key })).json).toMatchObject({
      contact: [],
      texts: [],
      inLines: [],
      photos: [],
    })
  })
})

describe.each(RUNTIMES)('what happens by itself, on %s', (runtime) => {
  let world: World
  let call: Caller
  beforeAll(async () => {
    world = await open(openWorld({ runtime, seed: 'kept' }))
    call = callerOf(world)
  })

  it('removes an enquiry nobody sent, whole, once it is old enough', async () => {
    const { id, key, own } = await answered(call)
    age(world, id, 59)
    await world.tend()
    expect((await call('GET', own, { key })).status).toBe(200)
    age(world, id, 61)
    await world.tend()
    expect((await call('GET', own, { key })).status).toBe(404)
    expect(rowsOf(world, id)).toEqual({ head: 0, line: 0, person: 0, free_text: 0, photo: 0 })
    expect(world.logs().join('\n')).toMatch(/"route":"upkeep".*"count":1/)
  })

  it('keeps the figures of one that came to nothing, without whose it was', async () => {
    const { id, key, own } = await answered(call)
    const json = { consent: true }
    expect((await call('POST', `${own}/submission`, { key, json })).status).toBe(201)
    expect((await call('POST', `${own}/withdrawal`, { key, json: {} })).status).toBe(200)
    const had = rowsOf(world, id)
    expect(had.person).toBe(1)
    age(world, id, 371)
    await world.tend()
    expect(rowsOf(world, id)).toEqual(had)
    age(world, id, 373)
    await world.tend()
    expect(rowsOf(world, id)).toEqual({ ...had, person: 0, free_text: 0, photo: 0 })
    const docket = await call('GET', `/api/v1/dockets/${id}`, { key: world.ownerKey })
    expect(docket.json.state).toBe('withdrawn')
  })

  it('keeps as long as the studio says, and is silent where nothing is due', async () => {
    const { id } = await answered(call)
    const { rev: _, ...profile } = (await call('GET', '/api/v1/settings', { key: world.ownerKey }))
      .json
    const retention = { unsentDays: 7, noJobMonths: null, jobMonths: null }
    const saved = await call('PUT', '/api/v1/settings', {
      key: world.ownerKey,
      json: { ...profile, retention },
    })
    expect(saved.status).toBe(200)
    age(world, id, 8)
    await world.tend()
    expect(rowsOf(world, id).head).toBe(0)
    await world.tend()
    expect(
      world
        .logs()
        .filter((l) => l.includes('upkeep'))
        .at(-1),
    ).toContain('"count":0')
  })
})

describe('the studio’s own form', () => {
  it('deletes only with the tick beside it, and stands on the docket', async () => {
    const world = await open(preparedWorld(p))
    const { id } = p.dockets.quoted
    const headers = { authorization: `Bearer ${world.ownerKey}`, origin: world.baseUrl }
    const page = await (await world.fetch(`/studio/d/${id}`, { headers })).text()
    expect(page).toContain(`action="/studio/d/${id}/erasure"`)
    const send = async (fields: Record<string, string>) =>
      world.fetch(`/studio/d/${id}/erasure`, {
        method: 'POST',
        headers: { ...headers, 'content-type': 'application/x-www-form-urlencoded' },
        body: new URLSearchParams(fields),
      })
    const rev = String(
      (await callerOf(world)('GET', `/api/v1/dockets/${id}`, { key: world.ownerKey })).json.rev,
    )
    expect((await send({ rev })).status).toBe(303)
    expect(rowsOf(world, id).person).toBe(1)
    expect((await send({ rev, sure: '1' })).status).toBe(303)
    expect(rowsOf(world, id).person).toBe(0)
    expect(rowsOf(world, id).line).toBeGreaterThan(3)
  })
})
