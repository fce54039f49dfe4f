import * as fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Answer, Answers } from '../../src/intake/answers'
import { parseValue } from '../../src/intake/parse'
import { replay } from '../../src/intake/replay'
import { script } from '../../src/intake/script'
import { answerWith, levelsOf } from '../corpus/levels'
import { draws } from '../corpus/random'
import { openWorld, RUNTIMES, type World } from '../support/world'

const YEAR = 2026

/** What the conversation should be: the answers alone; everything else follows by replay. */
type Model = { answers: Record<string, Answer>; sent: boolean }
type Command = fc.AsyncCommand<Model, Real>
type Real = {
  readonly world: World
  readonly id: string
  readonly key: string
  /** Revision and question as the page that stands open in another tab saw them. */
  seen: number
  tab: string | null
  /** Cookies of the browsers that opened it by a private link. */
  readonly cookies: string[]
}

const stands = (m: Model) =>
  replay(script, { ...m.answers, 'begun-year': { value: YEAR } } as Answers)

const ask = async (r: Real, method: string, path: string, body?: unknown, match?: number) => {
  const response = await r.world.fetch(`/api/v1/enquiries/${r.id}${path}`, {
    method,
    headers: {
      authorization: `Bearer ${r.key}`,
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      ...(match === undefined ? {} : { 'if-match': `"${match}"` }),
    },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  })
  const text = await response.text()
  return { status: response.status, body: text === '' ? null : JSON.parse(text) }
}

/** The server shows exactly what the replay of the model says. */
const agrees = async (m: Model, r: Real): Promise<void> => {
  const { status, body } = await ask(r, 'GET', '')
  const now = stands(m)
  expect(status).toBe(200)
  expect(body.question?.id ?? null).toBe(now.current?.id ?? null)
  expect(body.answers.map((a: { question: string }) => a.question)).toEqual(
    now.answered.map((a) => a.question.id),
  )
  expect(body.setAside.map((a: { question: string }) => a.question)).toEqual(now.setAside)
  expect(body.progress).toEqual(now.progress)
  expect(body.state).toBe(m.sent ? 'received' : 'answering')
  r.seen = body.rev
}

/** A question at a place of the script, counted round, and one of its levels. */
const picked = (at: number, level: number) => {
  const q = script.questions[at % script.questions.length]
  if (!q) throw new Error('an empty script')
  const levels = levelsOf(q).filter((l) => l !== 'unsure')
  return { q, answer: answerWith(q, levels[level % levels.length] ?? '', draws(level + 1)) }
}

const mayAnswer = (m: Model, id: string): boolean => {
  const now = stands(m)
  const q = script.questions.find((each) => each.id === id)
  return (
    !m.sent &&
    (now.missing.includes(id) ||
      now.answered.some((a) => a.question.id === id) ||
      q?.stage === 'send')
  )
}

const answerNext = (level: number): Command => ({
  check: (m: Readonly<Model>) => !m.sent && stands(m).current !== null,
  run: async (m, r) => {
    const current = stands(m).current
    const at = script.questions.findIndex((q) => q.id === current?.id)
    await answer(m, r, at, level)
    await agrees(m, r)
  },
  toString: () => `answer what is asked (${level})`,
})

const answer = async (m: Model, r: Real, at: number, level: number): Promise<void> => {
  const { q, answer: given } = picked(at, level)
  const value = 'value' in given ? given.value : null
  const parsed = parseValue(q, value)
  const allowed = mayAnswer(m, q.id)
  const { status } = await ask(r, 'PUT', `/answers/${q.id}`, { value })
  expect(status, `${q.id} ${JSON.stringify(value)}`).toBe(!allowed ? 409 : parsed.ok ? 200 : 422)
  if (allowed && parsed.ok) m.answers[q.id] = { value: parsed.value }
}

const answerAny = (at: number, level: number): Command => ({
  check: () => true,
  run: async (m, r) => {
    await answer(m, r, at, level)
    await agrees(m, r)
  },
  toString: () => `answer ${picked(at, level).q.id} whether asked or not`,
})

const sayUnsure = (at: number): Command => ({
  check: () => true,
  run: async (m, r) => {
    const { q } = picked(at, 0)
    const allowed = mayAnswer(m, q.id)
    const { status } = await ask(r, 'PUT', `/answers/${q.id}`, { unsure: true })
    expect(status).toBe(!allowed ? 409 : q.unsureAllowed ? 200 : 422)
    if (allowed && q.unsureAllowed) m.answers[q.id] = { unsure: true }
    await agrees(m, r)
  },
  toString: () => `not sure of ${picked(at, 0).q.id}`,
})

const takeBack = (at: number): Command => ({
  check: () => true,
  run: async (m, r) => {
    const { q } = picked(at, 0)
    const { status } = await ask(r, 'DELETE', `/answers/${q.id}`)
    expect(status).toBe(m.sent ? 409 : m.answers[q.id] === undefined ? 404 : 200)
    if (status === 200) delete m.answers[q.id]
    await agrees(m, r)
  },
  toString: () => `take back ${picked(at, 0).q.id}`,
})

/** Another tab answers the question it still shows, whatever was done meanwhile. */
const secondTab = (level: number): Command => ({
  check: (_m) => true,
  run: async (m, r) => {
    const shown = r.tab
    if (shown !== null) {
      const at = script.questions.findIndex((q) => q.id === shown)
      await answer(m, r, at, level)
    }
    await agrees(m, r)
    r.tab = stands(m).current?.id ?? null
  },
  toString: () => `the second tab answers what it shows (${level})`,
})

/** The page a browser gets: the question it asks, and whether it was led on to what was sent. */
const page = async (r: Real, cookie: string) => {
  const found = await r.world.fetch(`/e/${r.id}`, { headers: { cookie } })
  const html = await found.text()
  const asked = /action="[^"]*\/answers\/([^"]+)"/.exec(html)?.[1] ?? null
  return { status: found.status, asked, to: found.headers.get('location') }
}

const shows = async (m: Model, r: Real, cookie: string): Promise<void> => {
  const shown = await page(r, cookie)
  if (m.sent) expect([shown.status, shown.to]).toEqual([303, `/e/${r.id}/range`])
  else expect([shown.status, shown.asked]).toEqual([200, stands(m).current?.id ?? null])
}

/** Pressing reload as often as one likes changes nothing. */
const refresh = (): Command => ({
  check: () => true,
  run: async (m, r) => {
    await agrees(m, r)
    const before = r.seen
    for (const cookie of r.cookies) await shows(m, r, cookie)
    await agrees(m, r)
    expect(r.seen).toBe(before)
  },
  toString: () => 'refresh',
})

/** Leaves with a private link and opens it in another browser. */
const resume = (): Command => ({
  check: () => true,
  run: async (m, r) => {
    const made = await ask(r, 'POST', '/links', {})
    expect(made.status).toBe(201)
    const { pathname } = new URL(made.body.link)
    const opened = await r.world.fetch(pathname, {
      method: 'POST',
      headers: {
        'content-type': 'application/x-www-form-urlencoded',
        'sec-fetch-site': 'same-origin',
      },
      body: '',
    })
    expect(opened.status).toBe(303)
    const cookie = opened.headers.get('set-cookie')?.split(';')[0] ?? ''
    r.cookies.push(cookie)
    await shows(m, r, cookie)
    await agrees(m, r)
  },
  toString: () => 'resume on another device',
})

const oldTab = (): Command => ({
  check: (m: Readonly<Model>) => !m.sent,
  run: async (m, r) => {
    const { status } = await ask(r, 'PUT', '/answers/body', { value: 'van' }, r.seen + 40)
    expect(status).toBe(412)
    await agrees(m, r)
  },
  toString: () => 'a page that saw another state',
})

const submit = (): Command => ({
  check: () => true,
  run: async (m, r) => {
    const { status } = await ask(r, 'POST', '/submission', { consent: true })
    const ready = !m.sent && stands(m).needed.length === 0
    expect(status).toBe(ready ? 201 : 409)
    if (ready) m.sent = true
    await agrees(m, r)
  },
  toString: () => 'send',
})

describe.each(RUNTIMES)('a conversation over HTTP on %s', (runtime) => {
  let world: World
  beforeAll(async () => {
    world = await openWorld({ runtime })
  })
  afterAll(() => world.close())

  it('always stands where the answers say, whatever is done in whatever order', async () => {
    const level = fc.nat(7)
    const place = fc.nat(script.questions.length - 1)
    const commands = fc.commands(
      [
        level.map((l) => answerNext(l)),
        level.map((l) => answerNext(l)),
        level.map((l) => answerNext(l)),
        fc.tuple(place, level).map(([at, l]) => answerAny(at, l)),
        place.map((at) => sayUnsure(at)),
        place.map((at) => takeBack(at)),
        fc.constant(oldTab()),
        level.map((l) => secondTab(l)),
        fc.constant(refresh()),
        fc.constant(resume()),
        fc.constant(submit()),
      ],
      { maxCommands: 40, size: 'max' },
    )
    await fc.assert(
      fc.asyncProperty(commands, async (cmds) => {
        const opened = await world.fetch('/api/v1/enquiries', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: '{}',
        })
        const { id, key, rev } = (await opened.json()) as { id: string; key: string; rev: number }
        await fc.asyncModelRun(
          () => ({
            model: { answers: {}, sent: false },
            real: { world, id, key, seen: rev, tab: 'dangers', cookies: [] },
          }),
          cmds,
        )
      }),
      { numRuns: runtime === 'node' ? 12 : 4, seed: 20260601 },
    )
  })
})
