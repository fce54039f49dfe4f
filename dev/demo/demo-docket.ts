import type { DemoApp } from './demo-app'
import type { DemoCar } from './demo-car'

/** A docket under way in the demo: who may write on it, and what stands on it. */
export type DemoDocket = {
  readonly app: DemoApp
  readonly id: string
  readonly key: string
  readonly car: DemoCar
  /** Running number of the bench device. */
  n: number
  /** The private link sent with the last revision. */
  link: string | null
}

type Question = {
  readonly id: string
  readonly kind: string
  readonly unsureAllowed: boolean
  readonly optional: boolean
  readonly options?: readonly { readonly value: string }[]
}

const DAY_MS = 86_400_000

/** Opens an enquiry `daysAgo` days before now. */
export const openDocket = async (
  app: DemoApp,
  car: DemoCar,
  today: number,
): Promise<DemoDocket> => {
  app.clock.now = today - car.daysAgo * DAY_MS
  const made = car.byPhone
    ? await app.send('POST', '/api/v1/dockets', { key: app.ownerKey, body: { language: 'en' } })
    : await app.send('POST', '/api/v1/enquiries', { body: { language: 'en' } })
  return { app, id: String(made.id), key: String(made.key), car, n: 0, link: null }
}

export const waitHours = (d: DemoDocket, hours: number): void => {
  d.app.clock.now += hours * 3_600_000
}

/** What a person who says as little as possible would answer. */
const shortest = (q: Question): unknown => {
  if (q.optional) return { value: null }
  if (q.unsureAllowed) return { unsure: true }
  if (q.kind === 'multi') return { value: [] }
  if (q.kind === 'yesNo') return { value: false }
  const first = q.options?.[0]?.value
  if (first === undefined) throw new Error(`the demo has no answer for ${q.id}`)
  return { value: first }
}

/** Answers question after question as the script asks them; `most` stops early. */
export const answerAll = async (d: DemoDocket, most = 200): Promise<void> => {
  const base = `/api/v1/enquiries/${d.id}`
  let view = await d.app.send('GET', base, { key: d.key })
  for (let i = 0; i < most && view.question; i += 1) {
    const q = view.question as Question
    const given = (d.car.answers as Record<string, unknown>)[q.id]
    const body =
      q.kind === 'contact'
        ? { value: d.car.person }
        : given === undefined
          ? shortest(q)
          : { value: given }
    view = await d.app.send('PUT', `${base}/answers/${q.id}`, { key: d.key, body })
    d.app.clock.now += 9_000
  }
}

export const submit = async (d: DemoDocket): Promise<void> => {
  const path = `/api/v1/enquiries/${d.id}/submission`
  await d.app.send('POST', path, { key: d.key, body: { consent: true } })
}

/** The docket as the studio sees it. */
export const readDocket = (d: DemoDocket): Promise<Record<string, unknown>> =>
  d.app.send('GET', `/api/v1/dockets/${d.id}`, { key: d.app.ownerKey })

/** A change by the studio, on the docket as it stands now. */
export const office = async (
  d: DemoDocket,
  method: string,
  path: string,
  body: unknown,
): Promise<Record<string, unknown>> => {
  const { rev } = await readDocket(d)
  return d.app.send(method, `/api/v1/dockets/${d.id}${path}`, {
    key: d.app.ownerKey,
    body,
    match: Number(rev),
  })
}
