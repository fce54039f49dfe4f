import ICAL from 'ical.js'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { grey } from '../support/picture'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { accept, enquire, quoteIt, workIt } from './stranger'

describe.each(RUNTIMES)('the day of the job on %s', (runtime) => {
  let world: World
  let call: Caller
  let id: string
  let own: string
  let key: string
  let rev: number
  const owner = (path: string, json: Json) =>
    call('POST', `/api/v1/dockets/${id}${path}`, { key: world.ownerKey, match: rev, json })
  const day = async (): Promise<Json> => (await call('GET', `${own}/day`, { key })).json
  const file = async () => {
    const answer = await call('GET', `/e/${id}/day.ics`, { key })
    expect(answer.headers.get('content-type')).toContain('text/calendar')
    const all = new ICAL.Component(ICAL.parse(answer.text))
    const events = all.getAllSubcomponents('vevent').map((c) => new ICAL.Event(c))
    return { method: all.getFirstPropertyValue('method'), events }
  }
  const page = async (path = '/day') =>
    (await call('GET', `/e/${id}${path}`, { headers: { cookie: `jd-${id}=${key}` } })).text
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
  })
  beforeEach(async () => {
    const stranger = { call, ownerKey: world.ownerKey }
    const made = await enquire(stranger)
    ;({ id, own, key } = made)
    await quoteIt(stranger, id, made.sent.estimate)
    rev = (await accept(stranger, own, key)).agreed.rev
  })
  afterAll(() => world.close())

  it('is told as it goes, with a calendar file that keeps its names', async () => {
    expect(await day()).toMatchObject({ state: 'agreed', dated: null, told: [] })
    expect((await call('GET', `/e/${id}/day.ics`, { key })).status).toBe(404)
    rev = (await owner('/date', { start: '2027-05-10', startMinute: 510 })).json.rev
    expect((await day()).dated).toMatchObject({ start: '2027-05-10', startMinute: 510 })
    expect(await page()).toContain('Booked')
    const first = await file()
    // Dublin is an hour ahead of UTC in May.
    expect(first.events[0]?.startDate.toJSDate().toISOString()).toBe('2027-05-10T07:30:00.000Z')
    expect(first.events[1]?.startDate.isDate).toBe(true)

    rev = (await owner('/date', { start: '2027-05-12' })).json.rev
    const moved = await file()
    expect(moved.events.map((e) => e.uid)).toEqual(first.events.map((e) => e.uid))
    expect(moved.events.map((e) => e.sequence)).toEqual(first.events.map((e) => e.sequence + 1))
    expect(moved.events[0]?.startDate.toString()).toBe('2027-05-12')

    rev = (await owner('/move', { to: 'called-off', why: 'The bay is flooded.' })).json.rev
    const off = await file()
    expect(off.method).toBe('CANCEL')
    expect(off.events.map((e) => e.sequence)).toEqual(moved.events.map((e) => e.sequence + 1))
    expect(await page()).toContain('Called off')
    rev = (await owner('/date', { start: '2027-05-17' })).json.rev
    const again = await file()
    expect(again.method).toBe('PUBLISH')
    expect(again.events[0]?.sequence).toBeGreaterThan(off.events[0]?.sequence ?? 99)

    rev = (await owner('/move', { to: 'on-bench' })).json.rev
    rev = (await owner('/move', { to: 'held', why: 'The seal comes on Thursday <b>.' })).json.rev
    expect(await day()).toMatchObject({ state: 'held', why: 'The seal comes on Thursday <b>.' })
    const held = await page()
    expect(held).toContain('The seal comes on Thursday &lt;b&gt;.')
    expect(held).not.toContain('Bring the car on')
    rev = (await owner('/move', { to: 'on-bench' })).json.rev
    expect(await day()).toMatchObject({ state: 'on-bench', why: null })
  })

  it('is asked after, and what is wrong comes to the studio with its picture', async () => {
    const early = await call('POST', `${own}/told`, { key, json: { well: true } })
    expect(early.status).toBe(409)
    await workIt({ call, ownerKey: world.ownerKey }, { id, own, customer: key, rev })
    expect((await day()).lookAgain.map((l: Json) => l.after)).toEqual([3, 14])
    const { json } = await call('GET', `${own}/day`, { key })
    const days = json.lookAgain.map((l: Json) => Date.parse(`${l.date}T00:00:00Z`) / 86_400_000)
    expect(days[1] - days[0]).toBe(11)

    const silent = await call('POST', `${own}/told`, { key, json: { well: false } })
    expect(silent.status).toBe(422)
    expect((await call('POST', `${own}/told`, { key, json: { well: true } })).status).toBe(201)
    const turn = async () =>
      (await call('GET', '/api/v1/dockets?turn=ours', { key: world.ownerKey })).json.dockets.filter(
        (d: Json) => d.id === id,
      ).length
    expect(await turn()).toBe(0)

    const form = new FormData()
    form.set('well', 'no')
    form.set('text', 'The edge lifts <b>.')
    form.set('subject', 'told')
    form.set('file', new Blob([grey()], { type: 'image/png' }), 'edge.png')
    const headers = { cookie: `jd-${id}=${key}`, 'sec-fetch-site': 'same-origin' }
    const told = await call('POST', `/e/${id}/told`, { headers, body: form })
    expect(told.status, told.text).toBe(303)
    expect(await turn()).toBe(1)
    expect((await day()).told.map((t: Json) => [t.well, t.text])).toEqual([
      [true, null],
      [false, 'The edge lifts <b>.'],
    ])
    expect(await page()).toContain('The edge lifts &lt;b&gt;.')
    const mine = (await call('GET', `${own}/data`, { key })).json
    expect(mine.photos.some((p: Json) => p.subject === 'told')).toBe(true)

    const { rev: now } = (await day()) as { rev: number }
    rev = now
    expect((await owner('/reply', { text: 'Bring it on Friday.' })).status).toBe(200)
    expect(await turn()).toBe(0)
    expect(await page()).toContain('Bring it on Friday.')
  })
})
