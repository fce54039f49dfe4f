import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { grey } from '../support/picture'
import { openWorld, type World } from '../support/world'
import { accept, enquire, quoteIt } from './stranger'

let world: World
let call: Caller
beforeEach(async () => {
  world = await openWorld({ runtime: 'node' })
  call = callerOf(world)
})
afterEach(() => world.close())

const owner = (): string => world.ownerKey
const sent = async () => {
  const made = await enquire({ call, ownerKey: owner() })
  return { ...made, docket: `/api/v1/dockets/${made.id}` }
}
const agreed = async () => {
  const made = await sent()
  await quoteIt({ call, ownerKey: owner() }, made.id, made.sent.estimate)
  await accept({ call, ownerKey: owner() }, made.own, made.key)
  return made
}
const cookieOf = (headers: Headers): string => headers.get('set-cookie')?.split(';')[0] ?? ''
const signIn = async (rights: 'bench' | 'owner') => {
  const { code } = (await call('POST', '/api/v1/devices', { key: owner(), json: { rights } })).json
  const tries = await Promise.all(
    [1, 2, 3].map(() =>
      world.fetch('/api/v1/session', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ code }),
      }),
    ),
  )
  const done = tries.find((t) => t.status === 204)
  return {
    statuses: tries.map((t) => t.status).sort(),
    headers: { cookie: cookieOf(done?.headers ?? new Headers()), 'sec-fetch-site': 'same-origin' },
  }
}
const line = (id: string, kind: string, body: Json, at = 1) => ({
  id: `line-${id}`,
  kind,
  body,
  device: 'a',
  n: at,
  at,
})
const photo = async (path: string, key: string, bytes: Uint8Array<ArrayBuffer>, headers = {}) => {
  const body = new FormData()
  body.set('file', new File([bytes], 'a.png'))
  body.set('subject', 'other')
  return call('POST', path, { key, body, headers })
}

describe('whoever has no right', () => {
  it.each([
    ['POST', '/api/v1/dockets/x/lines', 401],
    ['POST', '/api/v1/dockets/x/revisions', 401],
    ['PUT', '/api/v1/settings', 401],
    ['POST', '/api/v1/import', 401],
    ['PUT', '/api/v1/enquiries/x/answers/body', 404],
  ])('hears that before %s %s is read', async (method, path, status) => {
    for (const key of [undefined, 'k'.repeat(43)]) {
      const answer = await world.fetch(path, {
        method,
        headers: key === undefined ? {} : { authorization: `Bearer ${key}` },
        body: '{"nonsense',
      })
      expect(answer.status, String(key)).toBe(status)
    }
  })

  it('gets no other caller’s docket by naming the same request', async () => {
    const headers = { 'content-type': 'application/json', 'idempotency-key': 'first' }
    const trusting = await openWorld({ runtime: 'node', trustProxy: true })
    const open = async (from: string): Promise<Json> => {
      const init = { method: 'POST', body: '{}', headers: { ...headers, 'x-forwarded-for': from } }
      return (await trusting.fetch('/api/v1/enquiries', init)).json()
    }
    const [mine, again, theirs] = [
      await open('192.0.2.1'),
      await open('192.0.2.1'),
      await open('192.0.2.2'),
    ]
    await trusting.close()
    expect(again.key).toBe(mine.key)
    expect(theirs.key).not.toBe(mine.key)
    expect(theirs.id).not.toBe(mine.id)
  })

  it('may guess sign-in codes only so often, whatever address it claims', async () => {
    const seen: number[] = []
    for (let i = 0; i < 31; i += 1) {
      const answer = await world.fetch('/api/v1/session', {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'x-forwarded-for': `198.51.100.${i}` },
        body: JSON.stringify({ code: 'A'.repeat(43) }),
      })
      seen.push(answer.status)
    }
    expect(seen).toEqual([...new Array(30).fill(401), 429])
  })
})

describe('sessions', () => {
  it('are made once of a link traded three times at once, and end at sign-out', async () => {
    const { statuses, headers } = await signIn('owner')
    expect(statuses).toEqual([204, 401, 401])
    expect((await call('GET', '/api/v1/settings', { headers })).status).toBe(200)
    await call('DELETE', '/api/v1/session', { headers })
    expect((await call('GET', '/api/v1/settings', { headers })).status).toBe(401)
  })

  it('end by idleness, not by use', async () => {
    const { headers } = await signIn('owner')
    const clock = world.clock ?? { now: 0 }
    const day = 86_400_000
    for (let i = 0; i < 3; i += 1) {
      clock.now += 10 * day
      expect((await call('GET', '/api/v1/settings', { headers })).status).toBe(200)
    }
    clock.now += 15 * day
    expect((await call('GET', '/api/v1/settings', { headers })).status).toBe(401)
  })
})

describe('settings', () => {
  it.each([
    { timeZone: 'Nowhere/Never' },
    { locale: 'en-US-US' },
    { week: [[], [], [], [], [], [], []] },
  ])('that would close the studio are refused: %o', async (change) => {
    const { rev: _, ...profile } = (await call('GET', '/api/v1/settings', { key: owner() })).json
    const json = { ...profile, ...change }
    const answer = await call('PUT', '/api/v1/settings', { key: owner(), json })
    expect(answer.status).toBe(422)
    expect(answer.json.errors[0].pointer).toBe(`/${Object.keys(change)[0]}`)
    expect((await call('GET', '/api/v1/version')).status).toBe(200)
  })
})

describe('a bench device', () => {
  it('writes no work on a job nobody agreed to', async () => {
    const { docket } = await sent()
    const lines = (...all: Json[]) =>
      call('POST', `${docket}/lines`, { key: owner(), json: { lines: all } })
    const values = { panel: 'bonnet', kind: 'panel', values: [110] }
    expect((await lines(line('looked', 'reading', values))).status).toBe(200)
    expect((await lines(line('worked', 'began', { step: 'wash' }))).status).toBe(409)
  })

  it('cannot bring a docket or the list down', async () => {
    const { docket } = await agreed()
    const lines = (...all: Json[]) =>
      call('POST', `${docket}/lines`, { key: owner(), json: { lines: all } })
    const values = { panel: 'nowhere', kind: 'panel', values: [110] }
    const refused = await lines(line('panel', 'reading', values))
    expect(refused.json.errors[0].pointer).toBe('/lines/0/body/panel')
    const late = line('late', 'noted', { text: 'x' }, Number.MAX_SAFE_INTEGER)
    expect((await lines(late)).status).toBe(200)
    const odd = ['__proto__', 'constructor', 'nowhere'].flatMap((step, i) => [
      line(`began-${i}`, 'began', { step }),
      line(`check-${i}`, 'checked', { check: step }),
    ])
    expect((await lines(...odd)).status).toBe(200)
    for (const path of ['/api/v1/dockets', docket, `${docket}/sheet`, `${docket}/lines`])
      expect((await call('GET', path, { key: owner() })).status, path).toBe(200)
    const other = await agreed()
    const taken = await call('POST', `${other.docket}/lines`, {
      key: owner(),
      json: { lines: [late] },
    })
    expect(taken.status).toBe(422)
  })

  it('cannot strike a customer’s yes', async () => {
    const { docket } = await agreed()
    const { headers } = await signIn('bench')
    const { lines } = (await call('GET', `${docket}/lines`, { headers })).json
    for (const kind of ['opened', 'sent', 'decided']) {
      const of = lines.find((l: Json) => l.kind === kind).id
      const json = { lines: [line(kind, 'struck', { line: of, why: 'because' })] }
      expect((await call('POST', `${docket}/lines`, { headers, json })).status, kind).toBe(422)
    }
  })
})

describe('pictures', () => {
  it('of the studio are not the customer’s to remove, nor its own once sent', async () => {
    const { id, key, own, docket } = await sent()
    const ours = (await photo(`${docket}/photos`, owner(), grey())).json.photo
    expect((await call('DELETE', `${own}/photos/${ours}`, { key })).status).toBe(404)
    const theirs = (await photo(`${own}/photos`, key, grey())).json.photo
    expect((await call('DELETE', `${own}/photos/${theirs}`, { key })).status).toBe(409)
    expect(readdirSync(join(world.photos ?? '', id))).toHaveLength(2)
  })

  it('are never taken for one another under one key', async () => {
    const { key, own } = await sent()
    const same = { 'idempotency-key': 'one' }
    const first = await photo(`${own}/photos`, key, grey(4), same)
    expect((await photo(`${own}/photos`, key, grey(4), same)).json).toEqual(first.json)
    expect((await photo(`${own}/photos`, key, grey(5), same)).status).toBe(422)
  })

  it('leave no file behind when they meet each other', async () => {
    const { id, key, own } = await sent()
    const all = await Promise.all([3, 4, 5, 6].map((n) => photo(`${own}/photos`, key, grey(n))))
    expect(all.map((a) => a.status)).toEqual([201, 201, 201, 201])
    const files = readdirSync(join(world.photos ?? '', id)).map((f) => f.split('.')[0])
    expect(files.sort()).toEqual(all.map((a) => a.json.photo).sort())
  })
})

describe('erasing', () => {
  it('leaves nothing that tells who it was in the database’s files, nor a picture', async () => {
    const { id, key, own, docket } = await agreed()
    await photo(`${own}/photos`, key, grey())
    const folder = dirname(world.file)
    const all = (): string =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((f) => f.isFile())
        .map((f) => readFileSync(join(f.parentPath, f.name)).toString('latin1'))
        .join('\n')
    const told = [/robin/i, /robin\.ash@example\.org/i, /More mud than told/]
    for (const each of told.slice(0, 2)) expect(all()).toMatch(each)
    expect((await call('DELETE', `${own}/data`, { key })).status).toBe(204)
    for (const each of told) expect(all(), String(each)).not.toMatch(each)
    expect(readdirSync(join(world.photos ?? '', id))).toEqual([])
    expect((await call('GET', own, { key })).status).toBe(404)
    expect((await call('GET', docket, { key: owner() })).status).toBe(200)
  })
})

describe('what is typed', () => {
  it('comes back on a page as text, whatever its field is called', async () => {
    const answers = { dangers: { value: [] } }
    const { json } = await call('POST', '/api/v1/enquiries', { json: { answers } })
    const cookie = `jd-${json.id}=${json.key}`
    for (const name of ['__proto__', 'constructor', 'toString']) {
      const answer = await world.fetch(`/e/${json.id}/answers/${json.question.id}`, {
        method: 'POST',
        headers: {
          cookie,
          origin: world.baseUrl,
          'content-type': 'application/x-www-form-urlencoded',
        },
        body: new URLSearchParams({ [name]: '<script>x</script>' }),
      })
      expect(answer.status, name).toBe(422)
      expect(await answer.text()).not.toContain('<script>x')
    }
  })

  it('stays out of the log, as do keys', async () => {
    const { key } = await agreed()
    const log = world.logs().join('\n')
    expect(log).toContain('quote.decide')
    for (const secret of [key, owner(), createHash('sha256').update(key).digest('hex'), 'Robin'])
      expect(log).not.toContain(secret)
  })
})

describe('served keys and counts', () => {
  it('do not pile up', async () => {
    const clock = world.clock ?? { now: 0 }
    const day = 86_400_000
    const count = async (): Promise<number> => {
      const { createClient } = await import('@libsql/client/sqlite3')
      const db = createClient({ url: `file:${world.file}` })
      const rows = await db.execute(
        'select (select count(*) from rate) + (select count(*) from idempotency) as n',
      )
      db.close()
      return Number(rows.rows[0]?.n)
    }
    for (let i = 0; i < 4; i += 1) {
      clock.now += 2 * day
      const headers = { 'idempotency-key': `k${i}` }
      await call('POST', '/api/v1/enquiries', { json: {}, headers })
    }
    expect(await count()).toBe(2)
  })
})
