import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf } from '../support/caller'
import { openWorld, type World } from '../support/world'
import { type Prepared, prepared, type Stage } from './stages'

/** Every form of a page with words of one's own: where it goes, its box, and how much it takes. */
type Case = {
  readonly path: string
  readonly box: string
  readonly most: number
  readonly stage: Stage
  readonly more?: Readonly<Record<string, string>>
}

const FORMS: readonly Case[] = [
  { path: '/e/:id/answers/best-thing', box: 'value', most: 2000, stage: 'ready' },
  {
    path: '/e/:id/quote/decision',
    box: 'text',
    most: 2000,
    stage: 'quoted',
    more: { decision: 'ask', revision: '1' },
  },
  {
    path: '/e/:id/quote/decision',
    box: 'name',
    most: 200,
    stage: 'quoted',
    more: { decision: 'accept', revision: '1' },
  },
  { path: '/studio/d/:id/own', box: 'own:plate', most: 500, stage: 'quoted' },
  {
    path: '/studio/d/:id/move',
    box: 'why',
    most: 1000,
    stage: 'quoted',
    more: { to: 'turned-down' },
  },
  {
    path: '/studio/d/:id/revisions',
    box: 'message',
    most: 2000,
    stage: 'quoted',
    more: { act: 'save' },
  },
  {
    path: '/studio/d/:id/revisions',
    box: 'add-name',
    most: 200,
    stage: 'quoted',
    more: { act: 'save', 'add-minutes': '10', 'add-why': 'asked for' },
  },
  {
    path: '/studio/d/:id/asking',
    box: 'text',
    most: 500,
    stage: 'quoted',
    more: { question: 'size' },
  },
  { path: '/studio/devices', box: 'label', most: 60, stage: 'quoted' },
  { path: '/studio/new', box: 'plate', most: 20, stage: 'quoted', more: { consent: '1' } },
  { path: '/bench/:id/handover', box: 'open', most: 200, stage: 'dated' },
]

describe('words longer than there is room for', () => {
  let p: Prepared
  let world: World
  let call: Caller
  beforeAll(async () => {
    p = await prepared()
    world = await openWorld({ runtime: 'node', from: p.from })
    call = callerOf(world)
  }, 60_000)
  afterAll(() => world.close())

  const post = (path: string, stage: Stage, fields: Readonly<Record<string, string>>) => {
    const { id, key, rev } = p.dockets[stage]
    return call('POST', path.replace(':id', id), {
      headers: {
        'content-type': 'application/x-www-form-urlencoded',
        'sec-fetch-site': 'same-origin',
        cookie: path.startsWith('/e/') ? `jd-${id}=${key}` : p.owner,
      },
      body: new URLSearchParams({ rev: String(rev), once: `${path}-${stage}`, ...fields }),
    })
  }

  it.each(FORMS)(
    '$path: $box past $most is refused beside its box, nothing cut off',
    async (form) => {
      const { path, box, most, stage, more = {} } = form
      const typed = `${'long word '.repeat(most / 10 + 1)}end`
      const { status, text } = await post(path, stage, { ...more, [box]: typed })
      expect(status).toBe(422)
      expect(text).toMatch(/room for|longer than we can keep/)
      expect(text).toContain(typed)
      // The summary leads to the box, and the box says it as well.
      const id = /<a href="#([^"]+)">[^<]*(?:room for|longer than we can keep)/.exec(text)?.[1]
      expect(text).toMatch(new RegExp(`<(?:input|textarea)[^>]* id="${id}"`))
      expect(text).toContain(`id="f-${box.replace(/[^a-z]/g, '-')}-fault"`)
    },
  )

  it('refuses a line of the bench past its length, as the API and as a page', async () => {
    const { id, rev } = p.dockets.dated
    const text = 'x'.repeat(4001)
    const line = { id: 'line-too-long', kind: 'noted', body: { text } }
    const sent = await call('POST', `/api/v1/dockets/${id}/lines`, {
      headers: { cookie: p.owner, 'sec-fetch-site': 'same-origin' },
      json: { lines: [line] },
    })
    expect(sent.status).toBe(422)
    expect(sent.json.errors).toMatchObject([
      { pointer: '/lines/0/body/text', code: 'ERR_TOO_LONG' },
    ])
    const page = await post('/bench/:id/lines', 'dated', { kind: 'noted', text, rev: String(rev) })
    expect(page.status).toBe(422)
    expect(page.text).toContain('There is room for 4,000 characters; this has 4,001.')
  })

  it('says how a time is written instead of leaving it out', async () => {
    const { status, text } = await post('/studio/d/:id/date', 'dated', {
      start: '2027-05-10',
      startTime: 'half nine',
    })
    expect(status).toBe(422)
    expect(text).toContain('Write the time as 08:30.')
    expect(text).toContain('value="half nine"')
    expect(text).toContain('value="2027-05-10"')
  })

  it('names the box that was not ticked, and says why it is needed', async () => {
    const sent = await post('/e/:id/submission', 'ready', {})
    expect([sent.status, sent.text.includes('href="#f-consent"')]).toEqual([422, true])
    expect(sent.text).toContain('lets us keep your answers')
    const { text } = await call('GET', `/e/${p.dockets.quoted.id}/quote`, {
      headers: { cookie: `jd-${p.dockets.quoted.id}=${p.dockets.quoted.key}` },
    })
    const notes = [...text.matchAll(/name="acknowledged\[\]" value="([^"]+)"/g)].map((m) => m[1])
    expect(notes.length).toBeGreaterThan(1)
    const said = { decision: 'accept', revision: '1', name: 'Ines Example' }
    const yes = await post('/e/:id/quote/decision', 'quoted', {
      ...said,
      'acknowledged[]': notes[0] ?? '',
    })
    expect(yes.status).toBe(422)
    expect(yes.text).not.toContain(`f-acknowledged-${notes[0]}-fault`)
    for (const note of notes.slice(1)) {
      expect(yes.text).toContain(`href="#f-acknowledged-${note}"`)
      expect(yes.text).toContain(`id="f-acknowledged-${note}-fault"`)
    }
  })
})
