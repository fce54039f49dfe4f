import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { agreedCar } from './agreed-car'

/** A Monday, far enough ahead on both clocks. */
const MONDAY = '2027-05-10'

describe.each(RUNTIMES)('the days, on %s', (runtime) => {
  let world: World
  let call: Caller
  let key: string
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
    key = world.ownerKey
  })
  afterAll(() => world.close())

  const dateIt = (car: { docket: string; rev: number }, json: Json) =>
    call('POST', `${car.docket}/date`, { key, match: car.rev, json })

  it('says what stands against a second car, names the first free day, and dates it there', async () => {
    const stranger = { call, ownerKey: key }
    const first = await agreedCar(stranger)
    const second = await agreedCar(stranger)
    const one = await dateIt(first, { start: MONDAY })
    expect([one.status, one.json.against]).toEqual([200, null])
    expect(one.json.plan.days[0].date).toBe(MONDAY)

    const refused = await dateIt(second, { start: MONDAY, onlyIfFree: true })
    expect(refused.status).toBe(409)
    const { conflicts, firstFree } = refused.json.against
    expect(conflicts.join(' ')).toContain(first.reference)
    expect(conflicts.join(' ')).toMatch(/bay/)
    expect(firstFree.start > MONDAY).toBe(true)
    // The refusal wrote nothing; the day it named has nothing against it.
    const there = await dateIt(second, { ...firstFree, onlyIfFree: true })
    expect([there.status, there.json.against]).toEqual([200, null])

    const { days } = (await call('GET', '/api/v1/days', { key })).json
    const monday = days.find((d: Json) => d.date === MONDAY)
    const kinds = (car: { id: string }, date: string): string[] =>
      days
        .find((d: Json) => d.date === date)
        ?.items.filter((i: Json) => i.docket === car.id)
        .map((i: Json) => i.kind) ?? []
    // Days further off than the list looks are named by their docket only.
    if (monday) {
      expect(kinds(first, MONDAY)).toEqual(expect.arrayContaining(['comes', 'work']))
      expect(days.flatMap((d: Json) => d.items).some((i: Json) => i.kind === 'conflict')).toBe(
        false,
      )
    }
  })

  it('dates against another car when that is wanted, and keeps saying so', async () => {
    const stranger = { call, ownerKey: key }
    const first = await agreedCar(stranger)
    const second = await agreedCar(stranger)
    const start = '2027-06-14'
    await dateIt(first, { start })
    const both = await dateIt(second, { start })
    expect(both.status).toBe(200)
    expect(both.json.against.conflicts.length).toBeGreaterThan(0)
    expect((await call('GET', second.docket, { key })).json.state).toBe('dated')
  })

  it('plans no work on days on which everybody is away', async () => {
    const car = await agreedCar({ call, ownerKey: key })
    const { rev, ...profile } = (await call('GET', '/api/v1/settings', { key })).json
    const away = { name: 'Ada Example', from: '2027-07-05', to: '2027-07-07' }
    const put = await call('PUT', '/api/v1/settings', {
      key,
      match: rev,
      json: { ...profile, people: 1, absences: [away] },
    })
    expect(put.status, put.text).toBe(200)
    const dated = await dateIt(car, { start: '2027-07-05' })
    expect(dated.status).toBe(200)
    expect(dated.json.plan.days[0].date).toBe('2027-07-08')
  })

  it('gives a calendar the days at an address that a new one ends', async () => {
    const make = async (): Promise<string> => {
      const shown = await call('POST', '/studio/days/feed', {
        key,
        body: new URLSearchParams(),
      })
      expect(shown.status).toBe(200)
      return /\/calendar\/[\w-]+/.exec(shown.text)?.[0] ?? ''
    }
    const car = await agreedCar({ call, ownerKey: key })
    await dateIt(car, { start: '2027-08-09' })
    const old = await make()
    const feed = await call('GET', old)
    expect(feed.headers.get('content-type')).toContain('text/calendar')
    expect(feed.text).toContain(car.reference)
    expect(feed.text).toContain('BEGIN:VEVENT')
    // No name, no number: a reference and the make-up of the car is all a calendar is told.
    expect(feed.text).not.toMatch(/Orla|Example|353 1/)
    const fresh = await make()
    expect((await call('GET', old)).status).toBe(404)
    expect((await call('GET', fresh)).status).toBe(200)
    expect(world.logs().join('\n')).not.toContain(fresh.split('/').at(-1))
  })
})

describe('a late job', () => {
  let world: World
  let call: Caller
  let key: string
  beforeAll(async () => {
    world = await openWorld({ runtime: 'node' })
    call = callerOf(world)
    key = world.ownerKey
  })
  afterAll(() => world.close())

  it('moves the car behind it with one press, which is refused once the moves have changed', async () => {
    const stranger = { call, ownerKey: key }
    const first = await agreedCar(stranger)
    const second = await agreedCar(stranger)
    const date = (car: { docket: string; rev: number }, json: Json) =>
      call('POST', `${car.docket}/date`, { key, match: car.rev, json })
    const one = await date(first, { start: '2026-03-03' })
    const tried = await date(second, { start: '2026-03-03', onlyIfFree: true })
    const { firstFree } = tried.json.against
    await date(second, firstFree)
    const quiet = (await call('GET', '/api/v1/days', { key })).json
    expect([quiet.late, quiet.moves]).toEqual([[], []])
    expect(one.json.plan.days[0].date).toBe('2026-03-03')

    // A day after it was to come, the first car is not there: whatever hangs on it moves.
    if (!world.clock) throw new Error('no clock')
    world.clock.now = Date.parse(`${firstFree.start}T09:00:00Z`)
    const days = (await call('GET', '/api/v1/days', { key })).json
    const late = days.late.map((l: Json) => [l.docket, l.kind])
    expect(late).toEqual([
      [first.id, 'late'],
      [second.id, 'moved'],
    ])
    expect(days.late[1].text).toContain(first.reference)
    const [move] = days.moves
    expect(move.docket).toBe(second.id)
    expect(
      `${move.start} ${move.startMinute}` > `${firstFree.start} ${firstFree.startMinute}`,
    ).toBe(true)
    const other = [{ ...move, start: '2026-12-24' }]
    const refused = await call('POST', '/api/v1/days/moves', { key, json: { moves: other } })
    expect([refused.status, refused.json.moves]).toEqual([409, days.moves])

    const moved = await call('POST', '/api/v1/days/moves', { key, json: { moves: days.moves } })
    expect(moved.status, moved.text).toBe(200)
    const { lines } = (await call('GET', `${second.docket}/lines`, { key })).json
    const dated = lines.filter((l: Json) => l.kind === 'dated').at(-1)
    expect(dated.body).toMatchObject({ start: move.start, follows: [first.id] })
    const after = (await call('GET', '/api/v1/days', { key })).json
    expect(after.moves).toEqual([])
    expect(after.late.map((l: Json) => l.docket)).toEqual([first.id])
  })
})
