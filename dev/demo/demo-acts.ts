import { type DemoDocket, office, readDocket, waitHours } from './demo-docket'

const DAY_MS = 86_400_000

type Adjustment = Readonly<Record<string, string | number>> & { readonly kind: string }

/** Makes a revision and sends it; the private link stays with the docket. */
export const quote = async (
  d: DemoDocket,
  adjustments: readonly Adjustment[] = [],
  message?: string,
): Promise<void> => {
  const made = await office(d, 'POST', '/revisions', {
    adjustments,
    ...(message === undefined ? {} : { message }),
  })
  const dropped = made.dropped as readonly unknown[]
  if (dropped.length > 0) throw new Error(`adjustments of ${d.car.id} fit no line`)
  const sent = await office(d, 'POST', `/revisions/${made.revision}/sending`, {})
  d.link = String(sent.link)
  waitHours(d, 5)
}

const decide = (d: DemoDocket, body: Readonly<Record<string, unknown>>) =>
  d.app.send('POST', `/api/v1/enquiries/${d.id}/quote/decision`, { key: d.key, body })

const sentQuote = (d: DemoDocket) =>
  d.app.send('GET', `/api/v1/enquiries/${d.id}/quote`, { key: d.key })

export const ask = async (d: DemoDocket, text: string): Promise<void> => {
  const { revision } = await sentQuote(d)
  await decide(d, { decision: 'ask', revision, text })
  waitHours(d, 2)
}

export const decline = async (d: DemoDocket, text: string): Promise<void> => {
  const { revision } = await sentQuote(d)
  await decide(d, { decision: 'decline', revision, text })
}

/** The customer's yes: every caution that asks for a decision accepted by name. */
export const accept = async (d: DemoDocket): Promise<void> => {
  const shown = await sentQuote(d)
  await decide(d, {
    decision: 'accept',
    revision: shown.revision,
    name: d.car.person.name,
    acknowledged: (shown.decide as readonly { id: string }[]).map((n) => n.id),
  })
  waitHours(d, 3)
}

/** The studio's reply to a question; it is written on the docket page, so it is sent as its form. */
export const reply = async (d: DemoDocket, text: string): Promise<void> => {
  const { rev } = await readDocket(d)
  await d.app.send('POST', `/studio/d/${d.id}/reply`, {
    key: d.app.ownerKey,
    form: new URLSearchParams({ text, rev: String(rev) }),
  })
  waitHours(d, 1)
}

/** Dates the job `inDays` after the moment; a Sunday goes to Monday. */
export const date = async (d: DemoDocket, inDays: number): Promise<void> => {
  let at = d.app.clock.now + inDays * DAY_MS
  if (new Date(at).getUTCDay() === 0) at += DAY_MS
  await office(d, 'POST', '/date', { start: new Date(at).toISOString().slice(0, 10) })
  d.app.clock.now = at
}

export const move = async (d: DemoDocket, to: string, why?: string): Promise<void> => {
  await office(d, 'POST', '/move', { to, ...(why === undefined ? {} : { why }) })
}

export const handOver = async (d: DemoDocket, open: readonly string[] = []): Promise<void> => {
  await office(d, 'POST', '/handover', { name: d.car.person.name, open })
}
