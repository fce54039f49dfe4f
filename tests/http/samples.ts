import { DEFAULT_PROFILE } from '../../src/quote/studio-profile'
import type { Route } from '../../src/routes/route'
import type { Json, Sent } from '../support/caller'
import { grey, pictureForm } from '../support/picture'
import type { Prepared, Stage, Staged } from './stages'

type Given = {
  /** The docket in the path; absent: the one all is answered in. */
  readonly stage?: Stage
  readonly json?: (d: Staged, p: Prepared) => Json
  /** The bytes of a picture as it was told. */
  readonly raw?: () => Uint8Array<ArrayBuffer>
  /** Parts of the path that no docket has. */
  readonly parts?: () => Readonly<Record<string, string>>
  readonly form?: (d: Staged, p: Prepared) => Readonly<Record<string, string>>
  /** What it comes to where that is not the first status the route promises. */
  readonly status?: number
}

const nothing = () => ({})
const EXPORT = { format: 'jambside-1', heads: [], lines: [], people: [], texts: [], photos: [] }
const LINE = { kind: 'noted', body: { text: 'Grit in the sill.' }, device: 'd1', n: 1, at: 1 }

/** What each route is sent so that it does its work; a route with a JSON body must stand here. */
const SAMPLES: Readonly<Record<string, Given>> = {
  'enquiry.open': { json: nothing },
  'enquiry.answer': { json: (d) => d.value },
  'enquiry.submit': { json: () => ({ consent: true }) },
  'enquiry.estimate': { stage: 'quoted' },
  'enquiry.link': { json: nothing },
  'page.link.make': { form: nothing },
  'quote.read': { stage: 'quoted' },
  'quote.decide': { stage: 'quoted', json: () => ({ decision: 'decline', revision: 1 }) },
  'extra.decide': { stage: 'dated', json: () => ({ decision: 'agree', name: 'Robin Ash' }) },
  'extra.by-phone': { stage: 'dated', json: () => ({ decision: 'refuse', name: 'Robin Ash' }) },
  're-issue.ask': { stage: 'dated', json: () => ({ text: 'The roof is too thin for a cut.' }) },
  're-issue.decide': { stage: 'dated', json: () => ({ decision: 'go-on', name: 'Robin Ash' }) },
  're-issue.by-phone': {
    stage: 'dated',
    json: () => ({ decision: 'no', instead: 'leave', name: 'Robin Ash' }),
  },
  're-issues.read': { stage: 'dated' },
  'page.re-issue.decide': {
    stage: 'dated',
    form: () => ({ decision: 'go-on', name: 'Robin Ash' }),
  },
  'page.bench.re-issue': { stage: 'dated', form: () => ({ text: 'The roof is too thin.' }) },
  'page.bench.re-issue.phone': {
    stage: 'dated',
    form: () => ({ decision: 'no', instead: 'stop', name: 'Robin Ash' }),
  },
  'enquiry.withdraw': { stage: 'quoted', json: nothing },
  'record.read': { stage: 'done' },
  'day.tell': { stage: 'done', json: () => ({ well: true }) },
  'page.day': { stage: 'dated' },
  'page.day.file': { stage: 'dated' },
  'page.told': { stage: 'done', form: () => ({ well: 'yes' }) },
  'docket.open': { json: nothing },
  'docket.correct': {
    stage: 'quoted',
    json: (d) => ({ ...(d.value as object), why: 'Told on the phone.' }),
  },
  'docket.ask-again': { stage: 'quoted', json: () => ({ question: 'photos' }) },
  'docket.answer-own': { stage: 'quoted', json: () => ({ answers: {} }) },
  'docket.trial': { stage: 'quoted', json: nothing },
  'revision.make': { stage: 'quoted', json: nothing },
  'revision.read': { stage: 'quoted' },
  'revision.send': { stage: 'quoted', json: nothing },
  'docket.date': { stage: 'dated', json: () => ({ start: '2027-05-17' }) },
  'days.move': { stage: 'dated', json: () => ({ moves: [] }), status: 409 },
  'account.read': { stage: 'dated' },
  'account.paid': { stage: 'dated', json: () => ({ what: 'deposit', amount: 5000 }) },
  'docket.move': { stage: 'dated', json: () => ({ to: 'called-off', why: 'The owner is ill.' }) },
  'docket.link': { stage: 'quoted', json: nothing },
  'docket.genuine': { stage: 'quoted', json: nothing, status: 409 },
  'docket.reply': { stage: 'quoted', json: () => ({ text: 'Yes, that is included.' }) },
  'bench.lines': { stage: 'dated', json: () => ({ lines: [{ ...LINE, id: 'sample-line-1' }] }) },
  'sheet.read': { stage: 'dated' },
  'extra.ask': { stage: 'dated', json: () => ({ text: 'A torn seal', minutes: 30 }) },
  'docket.hand-over': { stage: 'dated', json: nothing, status: 409 },
  'docket.erase-personal': { stage: 'quoted' },
  'session.open': { json: (_d, p) => ({ code: p.code }) },
  'devices.add': { json: () => ({ label: 'the phone at the bench' }) },
  'estimates.try': { json: () => ({ answers: { year: { value: 2015 } } }) },
  'settings.save': { json: () => DEFAULT_PROFILE },
  import: { json: () => ({ ...EXPORT, estimates: [] }) },
  'export.view': { parts: () => ({ view: 'dockets' }) },
  'import.picture': { raw: () => grey() },
  'page.open': { form: nothing },
  'page.answer': { form: (d) => ({ value: String(d.value.value) }) },
  'page.question': {},
  'page.submit': { form: () => ({ consent: 'yes' }), status: 303 },
  'page.sent': { stage: 'quoted' },
  'page.quote': { stage: 'quoted' },
  'page.decide': { stage: 'quoted', form: () => ({ decision: 'decline', revision: '1' }) },
  'page.extra.decide': { stage: 'dated', form: () => ({ decision: 'agree', name: 'Robin Ash' }) },
  'page.withdraw': { stage: 'quoted', form: nothing },
  'page.record': { stage: 'done' },
  'page.erase': { form: () => ({ sure: 'yes' }) },
  'page.sign-in.trade': { form: (_d, p) => ({ code: p.code }) },
  'page.settings.save': { form: () => ({ rev: '0' }), status: 303 },
  'page.settings.work.save': { form: () => ({ rev: '0' }), status: 303 },
  'page.settings.pace': { form: () => ({ rev: '0', step: 'wash', pace: '118' }), status: 303 },
  'page.settings.logo': { form: nothing },
  'page.devices.add': { form: () => ({ label: 'a tablet', rights: 'bench' }) },
  'page.docket': { stage: 'quoted' },
  'page.docket.short': {
    form: () => ({
      'body.value': 'saloon',
      'services.value[]': 'cabin',
      'contact.name': 'Robin Ash',
      'contact.phone': '+353 1 555 0142',
      consent: '1',
    }),
  },
  'page.docket.correct': { stage: 'quoted' },
  'page.docket.correct.save': {
    stage: 'quoted',
    form: (d) => ({ value: String(d.value.value), why: 'Told on the phone.' }),
  },
  'page.docket.ask': { stage: 'quoted', form: () => ({ question: 'photos' }) },
  'page.docket.own': { stage: 'quoted', form: nothing },
  'page.revision': { stage: 'quoted', form: () => ({ act: 'save' }), status: 303 },
  'page.revision.send': { stage: 'quoted', form: nothing },
  'page.docket.date': { stage: 'dated', form: () => ({ start: '2027-05-17' }) },
  'page.docket.in-hand': { stage: 'dated', form: () => ({ what: 'part', thing: 'Badge pins' }) },
  'page.account': { stage: 'dated' },
  'page.account.file': { stage: 'dated' },
  'page.paid': { stage: 'dated', form: () => ({ what: 'deposit', amount: '50' }) },
  'page.hook': { form: () => ({ act: 'set', url: 'https://studio.example/hook' }) },
  'page.docket.telling': { stage: 'dated', form: (d) => ({ line: d.toTell }) },
  'page.docket.told': { stage: 'dated', form: (d) => ({ line: d.toTell, how: 'message' }) },
  'page.days.moves': { stage: 'dated', form: nothing, status: 409 },
  'page.docket.move': {
    stage: 'dated',
    form: () => ({ to: 'called-off', why: 'ill' }),
    status: 303,
  },
  'page.docket.link': { stage: 'quoted', form: nothing },
  'page.docket.genuine': { stage: 'quoted', form: nothing, status: 409 },
  'page.docket.reply': { stage: 'quoted', form: () => ({ text: 'Yes, that is included.' }) },
  'page.bench': { stage: 'dated' },
  'page.bench.carried': { stage: 'dated' },
  'page.bench.line': { stage: 'dated', form: () => ({ kind: 'noted', text: 'Grit.' }) },
  'page.bench.finding': { stage: 'dated', form: () => ({ place: 'bonnet', text: 'A chip.' }) },
  'page.bench.extra': { stage: 'dated', form: () => ({ text: 'A torn seal', minutes: '30' }) },
  'page.bench.extra-decision': {
    stage: 'dated',
    form: () => ({ decision: 'agree', name: 'Robin Ash' }),
  },
  'page.handover': { stage: 'dated' },
  'page.handover.done': { stage: 'dated', form: nothing, status: 409 },
}

export type Sample = { readonly method: string; readonly path: string; readonly sent: Sent }

/** Values of the parts of a route's path for one docket. */
const partsOf = (d: Staged, p: Prepared): Readonly<Record<string, string>> => ({
  id: d.id,
  question: d.question,
  photo: d.photo,
  extra: d.extra,
  issue: d.issue,
  n: '1',
  key: d.key,
  code: p.code,
  device: p.device,
  feed: p.feed,
})

export const pathOf = (route: Route, parts: Readonly<Record<string, string>>): string =>
  route.path.replace(/:(\w+)/g, (_, name: string) => {
    const part = parts[name]
    if (part === undefined) throw new Error(`no sample of :${name} in ${route.path}`)
    return encodeURIComponent(part)
  })

const bodyOf = (route: Route, given: Given, d: Staged, p: Prepared): Sent => {
  if (route.body === undefined) return {}
  if (route.body === 'picture')
    return { body: given.raw?.() ?? null, headers: { 'content-type': 'image/png' } }
  if (route.body === 'multipart') {
    const form = pictureForm()
    for (const [k, v] of Object.entries(given.form?.(d, p) ?? {})) form.set(k, v)
    return { body: form }
  }
  if (route.body === 'form') return { body: new URLSearchParams(given.form?.(d, p) ?? {}) }
  if (!given.json) throw new Error(`samples.ts has no body for ${route.id}`)
  return { json: given.json(d, p) }
}

export const stageOf = (route: Route): Stage => SAMPLES[route.id]?.stage ?? 'ready'

/** A request that does what the route is for; `swap` puts other values into the path. */
export const sampleOf = (
  route: Route,
  p: Prepared,
  swap: Readonly<Record<string, string>> = {},
): Sample => {
  const given = SAMPLES[route.id] ?? {}
  const d = p.dockets[stageOf(route)]
  const match = route.match === 'required' ? { match: d.rev } : {}
  return {
    method: route.method,
    path: pathOf(route, { ...partsOf(d, p), ...given.parts?.(), ...swap }),
    sent: { ...bodyOf(route, given, d, p), ...match },
  }
}

/** The status a sample comes to when the caller may. */
export const statusOf = (route: Route): number =>
  SAMPLES[route.id]?.status ?? Number(Object.keys(route.answers)[0])
