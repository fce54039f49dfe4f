import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answered } from './stages'

/** Every number that stands anywhere in an answer. */
const numbers = (of: Json): readonly number[] =>
  typeof of === 'number'
    ? [of]
    : of !== null && typeof of === 'object'
      ? Object.values(of).flatMap(numbers)
      : []

describe.each(RUNTIMES)('what a customer sees on %s', (runtime) => {
  let world: World
  let call: Caller
  let docket: Awaited<ReturnType<typeof answered>>
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
    docket = await answered(call)
  })
  afterAll(() => world.close())

  const shows = async (mode: string): Promise<void> => {
    const key = world.ownerKey
    const { json } = await call('GET', '/api/v1/settings', { key })
    const { rev, ...profile } = json.profile ? { ...json.profile, rev: json.rev } : json
    const body = { ...profile, shows: mode }
    expect((await call('PUT', '/api/v1/settings', { key, match: rev, json: body })).status).toBe(
      200,
    )
  }
  const cookie = (): Record<string, string> => ({ cookie: `jd-${docket.id}=${docket.key}` })
  const pageOf = async (path: string): Promise<string> =>
    (await call('GET', path, { headers: cookie() })).text

  it('is all, one figure or none, as the studio chose, on the page and over the API', async () => {
    const { id, key, own } = docket
    const whole = (await call('GET', `${own}/estimate`, { key })).json
    expect(whole.shows).toBe('range')
    const { low, likely, high } = whole.offer
    const secret = [low, likely, high, whole.offer.total, whole.price.likely, whole.price.mean]
    const round = (minor: number): string => Math.round(minor / 100).toLocaleString('en-IE')

    await shows('from')
    const from = (await call('GET', `${own}/estimate`, { key })).json
    expect(from.offer).toEqual({ low })
    for (const figure of secret.slice(1)) expect(numbers(from)).not.toContain(figure)
    const fromPage = await pageOf(`/e/${id}/range`)
    expect(fromPage).toContain(`From about €${round(low)}`)
    expect(fromPage).not.toContain(`€${round(high)}`)

    await shows('after-review')
    const none = (await call('GET', `${own}/estimate`, { key })).json
    for (const figure of secret) expect(numbers(none)).not.toContain(figure)
    expect(JSON.stringify(none)).not.toMatch(/"(minutes|price|offer|plan|budget|labourMinutes)":/)
    const nonePage = await pageOf(`/e/${id}/range`)
    expect(nonePage).toContain('We name a price once a person has read this')
    // The limit the customer named themselves is the only amount that may stand there.
    expect(nonePage.match(/€[\d,]+/g) ?? []).toEqual([])

    const sent = await call('POST', `${own}/submission`, { key, json: { consent: true } })
    expect(sent.status).toBe(201)
    for (const figure of secret) expect(numbers(sent.json.estimate)).not.toContain(figure)
    const mine = (await call('GET', `${own}/data`, { key })).json
    for (const figure of secret) expect(numbers(mine)).not.toContain(figure)
    for (const path of ['range', 'sent', 'data'])
      expect(
        (await pageOf(`/e/${id}/${path}`)).match(/€[\d,]+/g)?.filter((m) => m !== '€1,000') ?? [],
      ).toEqual([])
    await shows('range')
  })

  it('is looked at without a key being made; one is made when asked for, and opens it', async () => {
    const { id, key, own } = docket
    for (const path of ['leave', 'sent'])
      expect(await pageOf(`/e/${id}/${path}`)).not.toContain(`/l/${id}/`)
    const made = await call('POST', `${own}/links`, { key, json: {} })
    expect(made.status).toBe(201)
    expect(made.json.until).toMatch(/^\d{4}-\d\d-\d\d$/)
    const { pathname } = new URL(made.json.link)
    for (const _ of [1, 2]) expect((await call('GET', pathname)).status).toBe(200)
    const form = {
      body: new URLSearchParams(),
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
    }
    for (const _ of [1, 2]) {
      const opened = await call('POST', pathname, form)
      expect(opened.status).toBe(303)
      expect(opened.headers.get('location')).toBe(`/e/${id}`)
      expect(opened.headers.get('set-cookie')).toMatch(/HttpOnly/)
    }
    const old = await call('POST', `${pathname.slice(0, -4)}AAAA`, form)
    expect(old.status).toBe(404)
    expect(old.text).toContain('Ask the studio for a new one')
    expect(world.logs().join('\n')).not.toContain(pathname.split('/').at(-1))
  })
})
