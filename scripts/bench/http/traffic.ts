import { paths } from '../../../src/pages/paths'
import { benchLine, type Prepared } from './prepare'

export type Request = {
  readonly method: string
  readonly path: string
  readonly headers: Readonly<Record<string, string>>
  readonly body?: string
}

/** What is measured: each route with its requests in order, and how many of them a second. */
export type Route = {
  readonly id: string
  readonly customer: boolean
  readonly perSecond: number
  /** Sent first and not counted. */
  readonly warm: number
  readonly requests: readonly Request[]
}

/** Enough for the code to be compiled. */
const WARM = 50
/** Requests of the sequential pass, in which the processor's time is read around each. */
export const SINGLE = 30

const json = { 'content-type': 'application/json' }
const bearer = (key: string) => ({ authorization: `Bearer ${key}` })
const COLOURS = ['mid', 'light', 'dark', 'black'] as const

/** Submissions need a docket each, so they are the fewest. */
export const SUBMISSIONS = 44

/** The six routes with `perRoute` requests each in the measured pass. */
export const trafficOf = (p: Prepared, owner: string, perRoute: number): readonly Route[] => {
  const at = Date.now()
  const many = (one: (i: number) => Request): readonly Request[] =>
    Array.from({ length: WARM + SINGLE + perRoute }, (_, i) => one(i))
  const own = (d: { id: string }) => `/api/v1/enquiries/${d.id}`
  const { answering, dated, ready } = p
  const route = (id: string, customer: boolean, one: (i: number) => Request): Route => ({
    id,
    customer,
    perSecond: 25,
    warm: WARM,
    requests: many(one),
  })
  return [
    route('answer', true, (i) => {
      const d = answering[i % answering.length]!
      return {
        method: 'PUT',
        path: `${own(d)}/answers/colour`,
        headers: { ...json, ...bearer(d.key) },
        body: JSON.stringify({ value: COLOURS[Math.floor(i / answering.length) % COLOURS.length] }),
      }
    }),
    route('estimate', true, () => ({
      method: 'GET',
      path: `${own(answering[0]!)}/estimate`,
      headers: bearer(answering[0]!.key),
    })),
    {
      id: 'submit',
      customer: true,
      perSecond: 10,
      warm: 6,
      requests: ready.map((d) => ({
        method: 'POST',
        path: `${own(d)}/submission`,
        headers: { ...json, ...bearer(d.key) },
        body: JSON.stringify({ consent: true }),
      })),
    },
    {
      ...route('open a docket', false, () => ({
        method: 'GET',
        path: paths.docket(dated.id),
        headers: bearer(owner),
      })),
      perSecond: 20,
    },
    route('list', false, () => ({ method: 'GET', path: paths.studio, headers: bearer(owner) })),
    {
      ...route('bench lines', false, (i) => ({
        method: 'POST',
        path: `/api/v1/dockets/${dated.id}/lines`,
        headers: { ...json, ...bearer(owner) },
        body: JSON.stringify({
          lines: [0, 1, 2].map((k) => benchLine(1000 + 3 * i + k, at + i)),
        }),
      })),
      // All to one docket: faster than one bench or two ever write, slow enough to be no crowd.
      perSecond: 15,
    },
  ]
}
