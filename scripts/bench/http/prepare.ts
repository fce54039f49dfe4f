import { answerByKind } from '../../../tests/http/answer-by-kind'
import type { Json } from '../../../tests/support/caller'

export type Send = (
  method: string,
  path: string,
  more?: { key?: string; match?: number; json?: unknown },
) => Promise<Json>

let calls = 0

/** Calls from an address of their own, so that no limit of requests a minute is met. */
export const sender =
  (base: string): Send =>
  async (method, path, { key, match, json } = {}) => {
    const answer = await fetch(`${base}${path}`, {
      method,
      headers: {
        'x-forwarded-for': `10.2.${Math.floor(calls / 200) % 250}.${calls++ % 200}`,
        ...(json === undefined ? {} : { 'content-type': 'application/json' }),
        ...(key === undefined ? {} : { authorization: `Bearer ${key}` }),
        ...(match === undefined ? {} : { 'if-match': `"${match}"` }),
      },
      ...(json === undefined ? {} : { body: JSON.stringify(json) }),
    })
    const text = await answer.text()
    if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${text.slice(0, 300)}`)
    return text === '' ? null : JSON.parse(text)
  }

type Own = { readonly id: string; readonly key: string }

export type Prepared = {
  /** Under way: their colour is answered, and answered again, in turn. */
  readonly answering: readonly Own[]
  /** Everything needed is answered; each is sent once. */
  readonly ready: readonly Own[]
  /** On the bench, with some hundred lines. */
  readonly dated: Own
}

const enquiry = async (send: Send): Promise<Own> => {
  const opened = await send('POST', '/api/v1/enquiries', { json: {} })
  const { id, key } = opened
  for (let question = opened.question; question !== null; ) {
    const path = `/api/v1/enquiries/${id}/answers/${question.id}`
    ;({ question } = await send('PUT', path, { key, json: answerByKind(question) }))
  }
  return { id, key }
}

const agreed = async (send: Send, owner: string, { id, key }: Own): Promise<void> => {
  const own = `/api/v1/enquiries/${id}`
  const docket = `/api/v1/dockets/${id}`
  await send('POST', `${own}/submission`, { key, json: { consent: true } })
  const { rev } = await send('GET', docket, { key: owner })
  const made = await send('POST', `${docket}/revisions`, { key: owner, match: rev, json: {} })
  const sending = `${docket}/revisions/${made.revision}/sending`
  await send('POST', sending, { key: owner, match: made.rev, json: {} })
  const quote = await send('GET', `${own}/quote`, { key })
  const acknowledged = quote.decide.map((note: Json) => note.id)
  const decision = { decision: 'accept', revision: 1, name: 'Robin Ash', acknowledged }
  const done = await send('POST', `${own}/quote/decision`, { key, json: decision })
  const start = new Date(Date.now() + 14 * 86_400_000).toISOString().slice(0, 10)
  await send('POST', `${docket}/date`, { key: owner, match: done.rev, json: { start } })
}

/** As many as customers who answer at a time: nobody answers one docket twice at once. */
const ANSWERING = 8

/** A line of the bench as a device writes it. */
export const benchLine = (n: number, at: number) => ({
  id: `line-${at}-${n}`,
  kind: 'noted',
  body: { text: `Grit in the sill, place ${n}.` },
  device: 'device-a',
  n,
  at,
})

/** The dockets the routes are measured on, made through the contract alone. */
export const prepare = async (
  base: string,
  owner: string,
  submissions: number,
): Promise<Prepared> => {
  const send = sender(base)
  const answering: Own[] = []
  for (let i = 0; i < ANSWERING; i++) answering.push(await enquiry(send))
  const ready: Own[] = []
  for (let i = 0; i < submissions; i++) ready.push(await enquiry(send))
  const dated = await enquiry(send)
  await agreed(send, owner, dated)
  const at = Date.now()
  const path = `/api/v1/dockets/${dated.id}/lines`
  const lines = Array.from({ length: 65 }, (_, n) => benchLine(n, at))
  await send('POST', path, { key: owner, json: { lines } })
  return { answering, ready, dated }
}
