import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'
import { accept } from './stranger'

const base = '/api/v1/dockets'
const CAR: Json = {
  body: { value: 'hatchback' },
  dangers: { value: [] },
  year: { value: 2019 },
  services: { value: ['paint'] },
  colour: { value: 'mid' },
  wish: { value: 'improve' },
  'paint-history': { value: 'original' },
}

describe.each(RUNTIMES)('a result that measuring made smaller, on %s', (runtime) => {
  let world: World
  let call: Caller
  let key: string
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
    key = world.ownerKey
  })
  afterAll(() => world.close())

  /** A dated job that polishes, with the customer's own key. */
  const dated = async () => {
    const opened = (await call('POST', '/api/v1/enquiries', { json: {} })).json
    const { id, key: customer } = opened
    const own = `/api/v1/enquiries/${id}`
    for (let { question } = opened; question !== null; ) {
      const json = CAR[question.id] ?? answerByKind(question)
      const path = `${own}/answers/${question.id}`
      question = (await call('PUT', path, { key: customer, json })).json.question
    }
    const sent = await call('POST', `${own}/submission`, { key: customer, json: { consent: true } })
    const docket = `${base}/${id}`
    const made = await call('POST', `${docket}/revisions`, {
      key,
      match: sent.json.rev,
      json: { adjustments: [{ kind: 'level', level: 'two-step', why: 'as wished' }] },
    })
    await call('POST', `${docket}/revisions/1/sending`, { key, match: made.json.rev, json: {} })
    const { agreed, quote } = await accept({ call, ownerKey: key }, own, customer)
    await call('POST', `${docket}/date`, {
      key,
      match: agreed.rev,
      json: { start: '2027-05-10' },
    })
    const sheet = async (): Promise<Json> => (await call('GET', `${docket}/sheet`, { key })).json
    const ask = (json: Json) => call('POST', `${docket}/re-issues`, { key, json })
    const say = (issue: string, json: Json) =>
      call('POST', `${own}/re-issues/${issue}/decision`, { key: customer, json })
    const read = (panels: readonly string[], um: number) =>
      call('POST', `${docket}/lines`, {
        key,
        json: {
          lines: panels.map((panel, i) => ({
            id: `${id}-${panel}`,
            kind: 'reading',
            body: { panel, kind: 'panel', values: [um, um + 1, um] },
            device: 'd1',
            n: i + 1,
            at: Date.UTC(2027, 4, 10, 8) + i,
          })),
        },
      })
    return { id, own, customer, docket, quote, sheet, ask, say, read }
  }
  const polishing = (sheet: Json): Json[] =>
    sheet.steps.filter((s: Json) => s.id.startsWith('polish-'))
  const heldBy = (sheet: Json): readonly string[] => polishing(sheet).map((s) => s.heldBy)

  it('follows from the readings, holds the polishing, and a yes lets go with the new price', async () => {
    const job = await dated()
    const early = await job.ask({})
    expect([early.status, early.json.errors[0].code]).toEqual([422, 'ERR_NOTHING_SHRANK'])
    const before = await job.sheet()
    const cut = polishing(before).find((s) => s.id === 'polish-cut')
    expect(cut.places.length).toBeGreaterThan(2)
    const thin = cut.places.slice(0, 2)
    await job.read(thin, 84)
    const dear = await job.ask({ net: job.quote.offer.net + 1 })
    expect([dear.status, dear.json.errors[0]]).toMatchObject([
      422,
      { pointer: '/net', code: 'ERR_NOT_DEARER' },
    ])
    const net = job.quote.offer.net - 10_000
    const asked = await job.ask({ net, text: 'The bonnet was sanded once.' })
    expect(asked.status, asked.text).toBe(201)
    expect(asked.json.panels.map((p: Json) => p.panel)).toEqual(thin)
    expect(asked.json.now.low).toBeLessThanOrEqual(asked.json.promised.low)
    for (const p of asked.json.panels) expect(p.promised).toBe('two-step')
    expect(new Set(heldBy(await job.sheet()))).toEqual(new Set(['smaller-result']))
    const day = (await call('GET', `${job.own}/day`, { key: job.customer })).json
    expect(day.waiting).toBe(1)

    const { issue } = asked.json
    const question = await call('POST', `${job.own}/quote/decision`, {
      key: job.customer,
      json: { decision: 'ask', revision: 1, text: 'Would a repaint help?' },
    })
    expect(question.status, question.text).toBe(200)
    expect(heldBy(await job.sheet())).toContain('smaller-result')
    expect(
      (await job.say(issue, { decision: 'no', name: 'Robin Ash' })).json.errors[0],
    ).toMatchObject({ pointer: '/instead' })
    expect((await job.say(issue, { decision: 'go-on', name: 'Robin Ash' })).status).toBe(200)
    expect((await job.say(issue, { decision: 'go-on', name: 'Robin Ash' })).status).toBe(409)
    expect(heldBy(await job.sheet())).not.toContain('smaller-result')
    const page = (await call('GET', `/bench/${job.id}/handover`, { key })).text
    const total = (asked.json.price.total / 100).toLocaleString('en-IE', {
      minimumFractionDigits: 2,
    })
    expect(page).toContain(total)
    expect(asked.json.price.net).toBe(net)
  })

  it.each([
    { instead: 'finish-only', polish: 0, stopped: false },
    { instead: 'leave', polish: 2, stopped: false },
    { instead: 'stop', polish: 2, stopped: true },
  ])('a no with $instead is followed on the sheet, taken down on the phone', async (row) => {
    const job = await dated()
    const cut = polishing(await job.sheet()).find((s) => s.id === 'polish-cut')
    const [panel] = cut.places
    await job.read([panel], 84)
    const asked = await job.ask({})
    expect(asked.status, asked.text).toBe(201)
    const { issue } = asked.json
    const said = await call('POST', `${job.docket}/re-issues/${issue}/decision`, {
      key,
      json: { decision: 'no', instead: row.instead, name: 'Robin Ash' },
    })
    expect(said.status, said.text).toBe(200)
    const sheet = await job.sheet()
    expect(polishing(sheet).length).toBe(row.polish)
    expect(sheet.leftPanels).toEqual(row.instead === 'leave' ? [panel] : [])
    expect(sheet.steps.some((s: Json) => s.heldBy === 'stop')).toBe(row.stopped)
    const { reIssues } = (await call('GET', `${job.own}/re-issues`, { key: job.customer })).json
    expect(reIssues[0].decision).toEqual({ decision: 'no', instead: row.instead, how: 'phone' })
  })
})
