import { expect } from 'vitest'
import type { Answer, Caller, Json } from '../support/caller'
import { answerByKind } from './answer-by-kind'

export type Stranger = {
  readonly call: Caller
  readonly ownerKey: string
  /** Looks at each answer as it comes. */
  readonly saw?: (method: string, path: string, answer: Answer) => void
}

const MOST_QUESTIONS = 120

const good = (answer: Answer, status: number): Json => {
  expect(answer.status, answer.text).toBe(status)
  return answer.json
}

/** Begins an enquiry, answers whatever is asked until nothing is, and sends it. */
export const enquire = async ({ call }: Stranger) => {
  const opened = good(await call('POST', '/api/v1/enquiries', { json: {} }), 201)
  const { id, key } = opened
  const own = `/api/v1/enquiries/${id}`
  let { question } = opened
  const asked: Json[] = []
  while (question !== null) {
    if (asked.length > MOST_QUESTIONS) throw new Error('the script does not end')
    const path = `${own}/answers/${question.id}`
    const said = good(await call('PUT', path, { key, json: answerByKind(question) }), 200)
    expect(said.reply.text, question.id).toMatch(/\S/)
    asked.push(question.id)
    question = said.question
  }
  const estimate = good(await call('GET', `${own}/estimate`, { key }), 200)
  const sent = good(await call('POST', `${own}/submission`, { key, json: { consent: true } }), 201)
  return { id, key, own, asked, estimate, sent }
}

/** Revision 1 with an adjustment of the first step, sent to the customer. */
export const quoteIt = async ({ call, ownerKey: key }: Stranger, id: string, estimate: Json) => {
  const docket = `/api/v1/dockets/${id}`
  const step = estimate.offer.lines[0].step
  const adjustments = [{ kind: 'minutes', step, minutes: 95, why: 'More mud than told.' }]
  const found = good(await call('GET', docket, { key }), 200)
  const trial = good(await call('POST', `${docket}/trial`, { key, json: { adjustments } }), 200)
  const unseen = await call('POST', `${docket}/revisions`, { key, json: { adjustments } })
  expect(unseen.status).toBe(428)
  const made = good(
    await call('POST', `${docket}/revisions`, { key, match: found.rev, json: { adjustments } }),
    201,
  )
  expect(made.offer.total).toBe(trial.offer.total)
  const stale = await call('POST', `${docket}/revisions/${made.revision}/sending`, {
    key,
    match: found.rev,
    json: {},
  })
  expect(stale.status).toBe(412)
  const sent = good(
    await call('POST', `${docket}/revisions/${made.revision}/sending`, {
      key,
      match: made.rev,
      json: {},
    }),
    201,
  )
  expect(sent.message).toContain(sent.link)
  return { docket, made, sent }
}

/** Reads the quote, acknowledges every note that wants it, and accepts. */
export const accept = async ({ call }: Stranger, own: string, key: string) => {
  const quote = good(await call('GET', `${own}/quote`, { key }), 200)
  const decision = { decision: 'accept', revision: quote.revision, name: 'Robin Ash' }
  const path = `${own}/quote/decision`
  const notes = quote.decide.map((note: Json) => note.id)
  const bare = await call('POST', path, { key, json: decision })
  expect(bare.status).toBe(notes.length > 0 ? 422 : 200)
  if (notes.length === 0) return { quote, agreed: bare.json }
  const agreed = good(
    await call('POST', path, { key, json: { ...decision, acknowledged: notes } }),
    200,
  )
  expect(agreed.state).toBe('agreed')
  return { quote, agreed }
}

const line = (n: number, kind: string, body: Json, at: number) => ({
  id: `line-of-device-a-${n}`,
  kind,
  body,
  device: 'device-a',
  n,
  at,
})

/** From the agreed quote to the record: date, sheet, lines of the bench, an extra, checks, hand-over. */
export const workIt = async (
  { call, ownerKey: key }: Stranger,
  at: {
    readonly id: string
    readonly own: string
    readonly customer: string
    readonly rev: number
  },
) => {
  const docket = `/api/v1/dockets/${at.id}`
  const lines = (json: Json[]) => call('POST', `${docket}/lines`, { key, json: { lines: json } })
  const start = '2027-05-10'
  const dated = good(
    await call('POST', `${docket}/date`, { key, match: at.rev, json: { start } }),
    200,
  )
  expect(dated.plan.days[0].date).toBe(start)
  const sheet = good(await call('GET', `${docket}/sheet`, { key }), 200)
  const panel = sheet.panels[0]?.panel ?? 'bonnet'
  const now = Date.UTC(2027, 4, 10, 8)
  const first = [
    line(1, 'checked-in', { mileage: 61_234, keys: 2, consents: ['photos'] }, now),
    line(2, 'began', { step: sheet.next ?? sheet.steps[0].id }, now + 60_000),
    line(3, 'reading', { panel, kind: 'panel', values: [112, 118, 109.5] }, now + 120_000),
  ]
  expect(good(await lines(first), 200).added).toEqual(first.map((l) => l.id))
  expect(good(await lines(first), 200)).toMatchObject({
    added: [],
    already: first.map((l) => l.id),
  })
  const extra = good(
    await call('POST', `${docket}/extras`, {
      key,
      json: { text: 'Overspray on the roof', minutes: 600 },
    }),
    201,
  )
  const blocked = await call('POST', `${docket}/handover`, { key, match: extra.rev, json: {} })
  expect(blocked.status).toBe(409)
  expect(blocked.json.open).toContainEqual({ kind: 'extra', id: extra.extra })
  const decided = await call('POST', `${at.own}/extras/${extra.extra}/decision`, {
    key: at.customer,
    json: { decision: 'agree', name: 'Robin Ash' },
  })
  good(decided, 200)
  const owed = good(await call('GET', `${docket}/sheet`, { key }), 200).checks
  const checks = owed.map((check: Json, i: number) =>
    line(10 + i, 'checked', { check: check.id }, now + 200_000 + i),
  )
  if (checks.length > 0) good(await lines(checks), 200)
  const { rev } = good(await call('GET', docket, { key }), 200)
  const handed = good(
    await call('POST', `${docket}/handover`, { key, match: rev, json: { mileage: 61_240 } }),
    200,
  )
  expect(handed.state).toBe('handed-over')
  return { sheet, extra, handed }
}

/** The whole way through the contract, from the first answer to the erasure. */
export const wholeWay = async (stranger: Stranger) => {
  const { call, ownerKey } = stranger
  const { id, key, own, asked, estimate, sent } = await enquire(stranger)
  const listed = good(await call('GET', '/api/v1/dockets?turn=ours', { key: ownerKey }), 200)
  expect(listed.dockets.map((d: Json) => d.id)).toContain(id)
  const { docket, made } = await quoteIt(stranger, id, sent.estimate)
  const { quote, agreed } = await accept(stranger, own, key)
  const customer = key
  const worked = await workIt(stranger, { id, own, customer, rev: agreed.rev })
  const record = good(await call('GET', `${own}/record`, { key }), 200)
  const data = good(await call('GET', `${own}/data`, { key }), 200)
  const lines = good(await call('GET', `${docket}/lines`, { key: ownerKey }), 200)
  expect((await call('DELETE', `${own}/data`, { key })).status).toBe(204)
  expect((await call('GET', own, { key })).status).toBe(404)
  const after = good(await call('GET', docket, { key: ownerKey }), 200)
  return { asked, estimate, sent, made, quote, worked, record, data, lines, after }
}
