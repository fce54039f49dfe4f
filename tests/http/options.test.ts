import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, callerOf, type Json } from '../support/caller'
import { openWorld, RUNTIMES, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'

const base = '/api/v1/dockets'
const CAR: Json = {
  body: { value: 'hatchback' },
  dangers: { value: [] },
  year: { value: 2019 },
  services: { value: ['paint'] },
  colour: { value: 'mid' },
  wish: { value: 'improve' },
  'paint-history': { value: 'original' },
  contact: { value: { name: 'Orla Example', phone: '+353 1 555 0177' } },
}
const WAYS = [
  { treatment: 'light' },
  { treatment: 'two-step', text: 'For the brightest result.' },
  { treatment: 'leave' },
]

describe.each(RUNTIMES)('a quote with options, on %s', (runtime) => {
  let world: World
  let call: Caller
  let key: string
  beforeAll(async () => {
    world = await openWorld({ runtime })
    call = callerOf(world)
    key = world.ownerKey
  })
  afterAll(() => world.close())

  /** An enquiry about this car, sent, with the customer's own key. */
  const enquired = async () => {
    const {
      id,
      key: customer,
      question: first,
    } = (await call('POST', '/api/v1/enquiries', { json: {} })).json
    const own = `/api/v1/enquiries/${id}`
    for (let question = first; question !== null; ) {
      const json = CAR[question.id] ?? answerByKind(question)
      const path = `${own}/answers/${question.id}`
      const said = await call('PUT', path, { key: customer, json })
      expect(said.status, said.text).toBe(200)
      question = said.json.question
    }
    const sent = await call('POST', `${own}/submission`, { key: customer, json: { consent: true } })
    return { id, own, customer, rev: sent.json.rev }
  }
  type Enquired = Awaited<ReturnType<typeof enquired>>

  const revise = ({ id, rev }: Enquired, json: Json) =>
    call('POST', `${base}/${id}/revisions`, { key, match: rev, json })

  const quoted = async (options: Json = WAYS) => {
    const from = await enquired()
    const made = await revise(from, { options })
    expect(made.status, made.text).toBe(201)
    const sent = await call('POST', `${base}/${from.id}/revisions/1/sending`, {
      key,
      match: made.json.rev,
      json: {},
    })
    const quote = (await call('GET', `${from.own}/quote`, { key: from.customer })).json
    const yes = {
      decision: 'accept',
      revision: 1,
      name: 'Orla Example',
      acknowledged: quote.options.flatMap((o: Json) => o.decide),
    }
    const decide = (json: Json) =>
      call('POST', `${from.own}/quote/decision`, { key: from.customer, json })
    return { ...from, made: made.json, sent: sent.json, quote, yes, decide }
  }

  it('reckons each by itself, names a message from and to, and refuses what is no choice', async () => {
    const from = await enquired()
    const one = await revise(from, { options: [WAYS[0]] })
    expect(one.status).toBe(422)
    const twice = await revise(from, { options: [WAYS[0], WAYS[0]] })
    expect([twice.status, twice.json.errors[0]]).toMatchObject([
      422,
      { pointer: '/options/1', code: 'ERR_SAME_OPTION' },
    ])
    const nowhere = await revise(from, {
      options: [WAYS[0], { treatment: 'leave', panels: ['sail'] }],
    })
    expect(nowhere.json.errors.map((e: Json) => [e.pointer, e.code])).toContainEqual([
      '/options/1',
      'ERR_OPTION_PANEL',
    ])
    const { made, sent } = await quoted()
    const totals = made.options.map((o: Json) => o.offer.total)
    expect(new Set(totals).size).toBe(3)
    expect(made.offer.total).toBe(totals[0])
    expect(totals[2]).toBeLessThan(totals[0])
    expect(totals[0]).toBeLessThan(totals[1])
    for (const o of made.options) {
      const lines = o.offer.lines.reduce((sum: number, l: Json) => sum + l.amount, 0)
      expect(lines).toBe(o.offer.net)
    }
    expect(sent.message).toContain('3 ways')
  })

  it('a yes names one of them, is stamped to it, and the sheet and the price follow', async () => {
    const { id, made, quote, yes, decide } = await quoted()
    expect(quote.options.map((o: Json) => o.option)).toEqual(['a', 'b', 'c'])
    expect(quote.options[1].said).toBe('For the brightest result.')
    expect(quote.options[1].only.length).toBeGreaterThan(0)
    for (const o of quote.options) expect(o.leaves).toMatch(/^For later/)
    expect((await decide(yes)).json.errors[0]).toMatchObject({
      pointer: '/option',
      code: 'ERR_OPTION_REQUIRED',
    })
    expect((await decide({ ...yes, option: 'd' })).json.errors[0].code).toBe('ERR_NO_SUCH_OPTION')
    const nobody = await decide({ ...yes, option: 'c', unanswered: 'named' })
    expect(nobody.json.errors[0]).toMatchObject({ pointer: '/decides', code: 'ERR_REQUIRED' })
    const agreed = await decide({ ...yes, option: 'c', extrasLimit: 5_000, unanswered: 'least' })
    expect(agreed.status, agreed.text).toBe(200)
    const sheet = (await call('GET', `${base}/${id}/sheet`, { key })).json
    expect(sheet.steps.filter((s: Json) => s.id.startsWith('polish-'))).toEqual([])
    expect(sheet.agreement).toMatchObject({ limit: 5_000, left: 5_000, unanswered: 'least' })
    const page = (await call('GET', `/studio/d/${id}`, { key })).text
    const total = (made.options[2].offer.total / 100).toLocaleString('en-IE', {
      minimumFractionDigits: 2,
    })
    expect(page).toContain(total)
    const dated = await call('POST', `${base}/${id}/date`, {
      key,
      match: agreed.json.rev,
      json: { start: '2027-05-10' },
    })
    const planned = dated.json.plan.days.flatMap((d: Json) => d.blocks.map((b: Json) => b.step))
    expect(planned.length).toBeGreaterThan(0)
    expect(planned.filter((s: string) => s.startsWith('polish-'))).toEqual([])
  })

  it('without a limit every extra is asked; within one it is agreed until it is used up', async () => {
    const extras = async (limit: number | undefined, minutes: readonly number[]) => {
      const { id, yes, decide } = await quoted()
      const agreed = await decide({
        ...yes,
        option: 'a',
        ...(limit === undefined ? {} : { extrasLimit: limit }),
      })
      await call('POST', `${base}/${id}/date`, {
        key,
        match: agreed.json.rev,
        json: { start: '2027-05-10' },
      })
      const within: boolean[] = []
      let total = 0
      for (const m of minutes) {
        const asked = await call('POST', `${base}/${id}/extras`, {
          key,
          json: { text: 'A clip broke', minutes: m },
        })
        within.push(asked.json.within)
        total = asked.json.total
      }
      return { within, total }
    }
    const none = await extras(undefined, [10])
    expect(none.within).toEqual([false])
    expect((await extras(none.total * 2, [10, 10, 10])).within).toEqual([true, true, false])
    expect((await extras(0, [0, 10])).within).toEqual([true, false])
  })
})
