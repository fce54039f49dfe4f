import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'

const base = '/api/v1/dockets'
const CONTACT = { name: 'Orla Example', phone: '+353 1 555 0177' }
const CAR = {
  body: { value: 'hatchback' },
  dangers: { value: [] },
  year: { value: 2019 },
  services: { value: ['paint'] },
  colour: { value: 'mid' },
  wish: { value: 'improve' },
}

describe.each(RUNTIMES)('the desk, on %s', (runtime) => {
  let world: World
  let call: Caller
  let key: string
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
    key = world.ownerKey
  })
  afterAll(() => world.close())

  const open = async (more: Json = {}): Promise<Json> =>
    (
      await call('POST', base, {
        key,
        json: { answers: { ...CAR, contact: { value: CONTACT } }, consent: true, ...more },
      })
    ).json
  const read = async (id: string): Promise<Json> =>
    (await call('GET', `${base}/${id}`, { key })).json

  it('opens a docket from a few answers; what was not said is unknown, not made up', async () => {
    const made = await open({ plate: '21-D 9876' })
    expect(made.state).toBe('received')
    const docket = await read(made.id)
    const answer = (id: string) => docket.answers.find((a: Json) => a.question === id)
    expect(answer('size').unsure).toBe(true)
    expect(answer('year').value).toBe(2019)
    expect(docket.estimate.offer.total).toBeGreaterThan(0)
    const { dockets } = (await call('GET', `${base}?q=21d987`, { key })).json
    expect(dockets.map((d: Json) => [d.id, d.plate])).toEqual([[made.id, '21D9876']])
    // Without their word nothing is sent; without what must be known it stays open.
    const silent = await open({ consent: undefined })
    expect(silent.state).toBe('answering')
    const { colour: _, ...less } = CAR
    const partly = await open({ answers: { ...less, contact: { value: CONTACT } } })
    expect([partly.state, partly.question.id]).toEqual(['answering', 'colour'])
  })

  it('starts from the last visit, and says which answers come from it', async () => {
    const first = await open({ plate: '08 G 1' })
    const again = await open({
      like: first.id,
      answers: { contact: { value: CONTACT }, year: { value: 2018 } },
    })
    expect(again.state).toBe('received')
    const { lines } = (await call('GET', `${base}/${again.id}/lines`, { key })).json
    expect(lines[0].body.like).toBe(first.id)
    const from = (question: string): boolean | undefined =>
      lines.find((l: Json) => l.kind === 'answered' && l.body.question === question)?.body.lastTime
    expect([from('body'), from('year'), from('contact')]).toEqual([true, undefined, undefined])
    const { dockets } = (await call('GET', `${base}?q=08G1`, { key })).json
    expect(dockets.map((d: Json) => d.id).sort()).toEqual([again.id, first.id].sort())
    const unknown = await call('POST', base, { key, json: { like: 'nobody', consent: true } })
    expect([unknown.status, unknown.json.errors[0].pointer]).toEqual([422, '/like'])
  })

  it('keeps an answer changed for the customer with its reason, and refuses one without', async () => {
    const { id, rev } = await open()
    const put = (match: number, json: Json) =>
      call('PUT', `${base}/${id}/answers/size`, { key, match, json })
    expect((await put(rev, { value: 'large' })).status).toBe(422)
    const before = (await read(id)).estimate.offer.total
    const done = await put(rev, { value: 'large', why: 'Seen at the door' })
    expect(done.status).toBe(200)
    expect((await read(id)).estimate.offer.total).not.toBe(before)
    // Who saw the state before is told what was written since.
    const late = await put(rev, { value: 'small', why: 'From memory' })
    expect(late.status).toBe(412)
    expect(late.json.changed).toMatchObject([{ kind: 'answered', by: 'owner' }])
    expect(late.json.changed[0].text).toMatch(/^Changed for the customer/)
  })

  it('waits for what it asked again, and hears when it comes', async () => {
    const made = await open()
    const turn = async () =>
      (await call('GET', `${base}?q=${(await read(made.id)).reference}`, { key })).json.dockets[0]
        .turn
    const customer = { key: made.key }
    const answer = `/api/v1/enquiries/${made.id}/answers/size`
    expect((await call('PUT', answer, { ...customer, json: { value: 'small' } })).status).toBe(409)
    const asked = await call('POST', `${base}/${made.id}/asking`, {
      key,
      match: made.rev,
      json: { question: 'size', text: 'Which of the two?' },
    })
    expect([asked.status, await turn()]).toEqual([201, 'theirs'])
    expect(asked.json.message).toContain(asked.json.link)
    const put = await call('PUT', answer, { ...customer, json: { value: 'small' } })
    expect([put.status, await turn()]).toEqual([200, 'ours'])
    expect((await call('PUT', answer, { ...customer, json: { value: 'large' } })).status).toBe(409)
  })

  it('tries beside what is in force, asks another deposit, and pages through the list by place', async () => {
    const made = await open()
    const revise = (json: Json, rev: number) =>
      call('POST', `${base}/${made.id}/revisions`, { key, match: rev, json })
    const why = 'Asked for'
    const first = await revise(
      { adjustments: [{ kind: 'surcharge', amount: 5000, why }] },
      made.rev,
    )
    const trial = await call('POST', `${base}/${made.id}/trial`, {
      key,
      json: { adjustments: [{ kind: 'level', panel: 'bonnet', level: 'none', why }] },
    })
    expect(trial.json.before.offer.total).toBe(first.json.offer.total)
    expect(trial.json.offer.net).toBeLessThan(trial.json.before.offer.net)
    const tooMuch = await revise({ deposit: first.json.offer.total + 1 }, first.json.rev)
    expect(tooMuch.status).toBe(422)
    const second = await revise({ deposit: 1234, validDays: 3 }, first.json.rev)
    expect(second.json.offer.deposit).toBe(1234)
    const all: string[] = []
    let after = ''
    do {
      const page = await call('GET', `${base}?limit=2${after}`, { key })
      all.push(...page.json.dockets.map((d: Json) => d.id))
      after = page.json.next === null ? '' : `&after=${encodeURIComponent(page.json.next)}`
    } while (after !== '')
    const whole = (await call('GET', `${base}?limit=100`, { key })).json.dockets
    expect(all).toEqual(whole.map((d: Json) => d.id))
    expect(new Set(all).size).toBe(all.length)
  })
})
