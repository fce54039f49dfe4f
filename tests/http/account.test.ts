import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { agreedCar } from './agreed-car'

const sum = (amounts: readonly number[]): number => amounts.reduce((s, a) => s + a, 0)

describe.each(RUNTIMES)('the account, on %s', (runtime) => {
  let world: World
  let call: Caller
  let key: string
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
    key = world.ownerKey
  })
  afterAll(() => world.close())

  /** What holds of every account, whatever happened to the car. */
  const lawful = (a: Json): void => {
    expect(a.net).toBe(
      sum(a.lines.map((l: Json) => l.charged)) +
        sum(a.extras.map((e: Json) => e.amount)) +
        a.corrected +
        a.smaller,
    )
    expect(a.total).toBe(a.net + a.tax)
    expect(a.offered.net).toBe(sum(a.lines.map((l: Json) => l.offered)))
    expect(a.offered.total).toBe(a.offered.net + a.offered.tax)
    expect(a.paidTotal).toBe(sum(a.paid.map((p: Json) => p.amount)))
    expect(a.balance).toBe(a.total - a.paidTotal)
    for (const n of [a.net, a.tax, a.total, a.balance, ...a.lines.map((l: Json) => l.charged)])
      expect(Number.isSafeInteger(n)).toBe(true)
  }

  const bench = async (car: { docket: string }, kind: string, body: Json) => {
    const id = `account-${kind}-${JSON.stringify(body).length}-${Math.abs(hash(JSON.stringify(body)))}`
    const json = { lines: [{ id, kind, body }] }
    const answer = await call('POST', `${car.docket}/lines`, { key, json })
    expect(answer.status, answer.text).toBe(200)
    return answer.json.rev as number
  }
  const hash = (text: string): number =>
    [...text].reduce((h, c) => (Math.imul(h, 31) + c.charCodeAt(0)) | 0, 7)
  const read = async (car: { docket: string }): Promise<Json> => {
    const answer = await call('GET', `${car.docket}/account`, { key })
    expect(answer.status, answer.text).toBe(200)
    lawful(answer.json)
    return answer.json
  }
  const revOf = async (car: { docket: string }): Promise<number> =>
    (await call('GET', car.docket, { key })).json.rev

  it('stands as offered, takes extras with their tax, and counts what was received', async () => {
    const car = await agreedCar({ call, ownerKey: key })
    const quote = (await call('GET', `${car.own}/quote`, { key: car.customer })).json
    const first = await read(car)
    expect([first.state, first.net, first.tax, first.total]).toEqual([
      'open',
      quote.offer.net,
      quote.offer.tax,
      quote.offer.total,
    ])
    expect(first.balance).toBe(first.total)

    const paid = await call('POST', `${car.docket}/paid`, {
      key,
      match: await revOf(car),
      json: { what: 'deposit', amount: first.deposit || 1 },
    })
    expect(paid.status, paid.text).toBe(201)
    const stale = await call('POST', `${car.docket}/paid`, {
      key,
      match: 1,
      json: { what: 'rest', amount: 1 },
    })
    expect(stale.status).toBe(412)
    expect((await read(car)).balance).toBe(first.total - (first.deposit || 1))

    const start = { start: '2027-05-10' }
    await call('POST', `${car.docket}/date`, { key, match: await revOf(car), json: start })
    const extra = await call('POST', `${car.docket}/extras`, {
      key,
      json: { text: '=SUM(A1:A9)', minutes: 90 },
    })
    expect(extra.status, extra.text).toBe(201)
    if (!extra.json.within)
      await call('POST', `${car.own}/extras/${extra.json.extra}/decision`, {
        key: car.customer,
        json: { decision: 'agree', name: 'Orla Example' },
      })
    const more = await read(car)
    expect(more.total - first.total).toBe(extra.json.amount + extra.json.tax)

    // What a person typed is no formula in a spreadsheet.
    const file = await call('GET', `/studio/d/${car.id}/account.csv`, { key })
    expect(file.headers.get('content-type')).toContain('text/csv')
    expect(file.text).toContain("'=SUM(A1:A9)")
    expect(file.text).not.toMatch(/(^|,|")=SUM/m)
    const rows = file.text.trim().split('\r\n')
    expect(rows.at(-1)).toContain('balance')
  })

  it('charges of half a job what was done, and keeps that when the car goes home', async () => {
    const car = await agreedCar({ call, ownerKey: key })
    const start = { start: '2027-09-06' }
    await call('POST', `${car.docket}/date`, { key, match: await revOf(car), json: start })
    const { lines } = await read(car)
    const works = lines.filter((l: Json) => l.done === 'not')
    const done = works[0]
    await bench(car, 'done', { step: done.step, minutes: 60 })
    const whole = await read(car)
    expect(whole.total).toBe(whole.offered.total)
    const move = await call('POST', `${car.docket}/move`, {
      key,
      match: await revOf(car),
      json: { to: 'part-done', why: 'A part does not come.' },
    })
    expect(move.status, move.text).toBe(200)
    const part = await read(car)
    expect(part.state).toBe('part')
    expect(part.lines.find((l: Json) => l.step === done.step).charged).toBe(done.offered)
    expect(
      part.lines.filter((l: Json) => l.done === 'not').every((l: Json) => l.charged === 0),
    ).toBe(true)
    const { checks } = (await call('GET', `${car.docket}/sheet`, { key })).json
    for (const check of checks) await bench(car, 'checked', { check: check.id })
    const handed = await call('POST', `${car.docket}/handover`, {
      key,
      match: await revOf(car),
      json: { paid: part.total },
    })
    expect(handed.status, handed.text).toBe(200)
    expect(handed.json.account).toMatchObject({ net: part.net, tax: part.tax, total: part.total })
    const final = await read(car)
    expect([final.state, final.total, final.balance]).toEqual(['final', part.total, 0])
    const { account } = (await call('GET', `${car.own}/record`, { key: car.customer })).json
    expect(account).toMatchObject({ net: part.net, tax: part.tax, total: part.total })
  })

  it('answers 409 while nothing was agreed, and 422 for money that is none', async () => {
    const json = { answers: { year: { value: 2019 } } }
    const { id } = (await call('POST', '/api/v1/dockets', { key, json })).json
    expect((await call('GET', `/api/v1/dockets/${id}/account`, { key })).status).toBe(409)
    const car = await agreedCar({ call, ownerKey: key })
    const bad = await call('POST', `${car.docket}/paid`, {
      key,
      match: car.rev,
      json: { what: 'rest', amount: -5 },
    })
    expect([bad.status, bad.json.errors[0].pointer]).toEqual([422, '/amount'])
  })
})
