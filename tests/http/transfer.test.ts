import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { exportTo } from '../../scripts/export'
import { importFrom } from '../../scripts/import'
import { studioAt } from '../../scripts/transfer/api'
import { unzipBytes, unzipFile } from '../../scripts/transfer/unzip'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, type World } from '../support/world'
import { answered, type Prepared, prepared, preparedWorld } from './stages'

const opened: World[] = []
let folder: string
let p: Prepared
let from: World
let call: Caller
const open = async (world: Promise<World>): Promise<World> => {
  opened.push(await world)
  return world
}
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'jambside-transfer-'))
  p = await prepared()
  from = await open(preparedWorld(p))
  call = callerOf(from)
})
afterAll(async () => {
  for (const world of opened) await world.close()
  rmSync(folder, { recursive: true, force: true })
})

const everything = async (of: Caller, key: string): Promise<Json> => {
  const pages: Json[] = []
  for (let after: string | null = null, more = true; more; more = after !== null) {
    const page: Json = await of('GET', `/api/v1/export${after ? `?after=${after}` : ''}`, { key })
    pages.push(page.json)
    after = page.json.next
  }
  return pages
}

/** Each docket as the API shows it, and each picture's bytes. */
const shown = async (of: World, ids: readonly string[]) => {
  const ask = callerOf(of)
  const key = of.ownerKey
  return Promise.all(
    ids.map(async (id) => {
      const docket = (await ask('GET', `/api/v1/dockets/${id}`, { key })).json
      const lines = (await ask('GET', `/api/v1/dockets/${id}/lines`, { key })).json
      const sheet = await ask('GET', `/api/v1/dockets/${id}/sheet`, { key })
      return { docket, lines, sheet: sheet.status === 200 ? sheet.json : sheet.status }
    }),
  )
}

const pictureOf = async (of: World, id: string, photo: string, key: string): Promise<string> => {
  const answer = await of.fetch(`/api/v1/enquiries/${id}/photos/${photo}`, {
    headers: { authorization: `Bearer ${key}` },
  })
  expect(answer.status).toBe(200)
  return Buffer.from(await answer.arrayBuffer()).toString('base64')
}

describe('everything taken out and put into an empty studio', () => {
  let to: World
  beforeAll(async () => {
    const out = join(folder, 'all')
    const files = await exportTo(studioAt(from.baseUrl, from.ownerKey), out)
    to = await open(openWorld({ runtime: 'node', seed: 'elsewhere' }))
    const done = await importFrom(
      studioAt(to.baseUrl, to.ownerKey),
      files.map((name) => join(out, name)),
    )
    expect(done).toEqual({ dockets: 5, known: 0, pictures: 5 })
  })

  it('is the same data, row for row', async () => {
    const here = await everything(call, from.ownerKey)
    expect(here[0].heads).toHaveLength(5)
    expect(here[0].accesses.length).toBeGreaterThanOrEqual(5)
    expect(await everything(callerOf(to), to.ownerKey)).toEqual(here)
  })

  it('folds to the same dockets, and the pictures are the same bytes', async () => {
    const ids = Object.values(p.dockets).map((d) => d.id)
    expect(await shown(to, ids)).toEqual(await shown(from, ids))
    for (const { id, photo, key } of Object.values(p.dockets))
      expect(await pictureOf(to, id, photo, key)).toBe(await pictureOf(from, id, photo, key))
  })

  it('lets customers in by the links they have, and nobody into the studio', async () => {
    const { id, key } = p.dockets.quoted
    const own = await callerOf(to)('GET', `/api/v1/enquiries/${id}`, { key })
    expect(own.status).toBe(200)
    const headers = { cookie: p.owner, 'sec-fetch-site': 'same-origin' }
    expect((await callerOf(to)('GET', '/api/v1/dockets', { headers })).status).toBe(401)
  })

  it('may be put in a second time: what is there stays', async () => {
    const out = join(folder, 'all')
    const files = readdirSync(out).map((name) => join(out, name))
    const again = await importFrom(studioAt(to.baseUrl, to.ownerKey), files)
    expect(again).toEqual({ dockets: 0, known: 5, pictures: 5 })
  })

  it('has tables in which no cell begins a formula', async () => {
    const files = new Map<string, string>()
    for await (const { name, bytes } of unzipFile(join(folder, 'all', 'part-0001.zip')))
      files.set(name, Buffer.from(bytes).toString('utf8'))
    for (const view of ['dockets', 'offers', 'work']) {
      const one = await from.fetch(`/api/v1/export/views/${view}`, {
        headers: { authorization: `Bearer ${from.ownerKey}` },
      })
      const text = Buffer.from(await one.arrayBuffer()).toString('utf8')
      expect(text).toBe(files.get(`views/${view}.csv`))
      expect(text.split('\r\n').length, view).toBeGreaterThan(view === 'work' ? 1 : 2)
      expect(text).not.toMatch(/(^|,|\n)"?[=+@]/)
    }
    expect(files.get('views/dockets.csv')).toContain('Robin Ash')
  })
})

describe('an import that cannot be right', () => {
  const page = async (): Promise<Json> => (await everything(call, from.ownerKey))[0]
  const refused = async (spoil: (page: Json) => void): Promise<readonly string[]> => {
    const to = await open(openWorld({ runtime: 'node', seed: 'spoilt' }))
    const json = await page()
    spoil(json)
    const answer = await callerOf(to)('POST', '/api/v1/import', { key: to.ownerKey, json })
    expect(answer.status).toBe(422)
    const left = await everything(callerOf(to), to.ownerKey)
    expect(left[0].heads).toEqual([])
    return answer.json.errors.map((e: Json) => e.pointer)
  }

  it.each<[string, (page: Json) => void, string]>([
    ['a line of an unknown kind', (q) => (q.lines[3].kind = 'parked'), '/lines/3/kind'],
    ['a line with another body', (q) => (q.lines[0].body.script = 7), '/lines/0/body/script'],
    ['a gap in the lines', (q) => q.lines.splice(3, 1), '/heads/0/docket'],
    ['a head that says another state', (q) => (q.heads[0].state = 'lapsed'), '/heads/0/state'],
    ['a picture of somebody else', (q) => (q.photos[0].key = 'other/x.png'), '/photos/0/key'],
    ['a key to the studio', (q) => (q.accesses[0].kind = 'owner'), '/accesses/0/kind'],
    ['a column nobody knows', (q) => (q.people[0].mood = 'good'), '/people/0/mood'],
    ['a number where words belong', (q) => (q.texts[0].text = 5), '/texts/0/text'],
    ['a missing column', (q) => delete q.heads[0].title, '/heads/0/title'],
    ['a row of no docket', (q) => (q.texts[0].docket = 'nobody'), '/texts/0/docket'],
    [
      'settings that cannot be used',
      (q) => q.settings.push({ rev: 1, body: {}, by: 'x', at: 1 }),
      '/settings/0/body/name',
    ],
  ])('%s is refused with where it stands, and nothing is kept', async (_n, spoil, pointer) => {
    expect(await refused(spoil)).toContain(pointer)
  })

  it('another picture, or none, is not put in the place of one', async () => {
    const { id, photo } = p.dockets.ready
    const put = (body: Uint8Array<ArrayBuffer>, of = photo) =>
      call('PUT', `/api/v1/import/${id}/photos/${of}`, {
        key: from.ownerKey,
        body,
        headers: { 'content-type': 'image/png' },
      })
    expect((await put(new Uint8Array([1, 2, 3]))).status).toBe(422)
    expect((await put(new Uint8Array([1, 2, 3]), 'no-such-photo')).status).toBe(404)
  })
})

describe('from the edge', () => {
  it('everything comes out of the built Worker as a whole file, pictures included', async () => {
    const edge = await open(openWorld({ runtime: 'worker' }))
    const made = await answered(callerOf(edge))
    const zip = await edge.fetch('/api/v1/export/zip', {
      headers: { authorization: `Bearer ${edge.ownerKey}` },
    })
    expect(zip.headers.get('content-type')).toBe('application/zip')
    const names: string[] = []
    for await (const { name } of unzipBytes(new Uint8Array(await zip.arrayBuffer())))
      names.push(name)
    expect(names).toContain('pages/0001.json')
    expect(names).toContain(`photos/${made.id}/${made.photo}.png`)
    const out = join(folder, 'edge')
    const files = await exportTo(studioAt(edge.baseUrl, edge.ownerKey), out)
    const to = await open(openWorld({ runtime: 'node', seed: 'from-edge' }))
    const paths = files.map((name) => join(out, name))
    const done = await importFrom(studioAt(to.baseUrl, to.ownerKey), paths)
    expect(done).toEqual({ dockets: 1, known: 0, pictures: 1 })
    const kept = await everything(callerOf(edge), edge.ownerKey)
    expect(await everything(callerOf(to), to.ownerKey)).toEqual(kept)
    const there = await pictureOf(to, made.id, made.photo, made.key)
    expect(there).toBe(await pictureOf(edge, made.id, made.photo, made.key))
  })
})
