import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { type Caller, callerOf, type Json } from '../support/caller'
import { pictureForm } from '../support/picture'
import { openWorld, type World } from '../support/world'
import { answerByKind } from './answer-by-kind'
import { accept, quoteIt, type Stranger, workIt } from './stranger'

export const STAGES = ['ready', 'quoted', 'dated', 'done', 'other'] as const
/** ready: all is answered, not sent. dated: an extra and a smaller result wait for an answer. other: somebody else's. */
export type Stage = (typeof STAGES)[number]

export type Staged = {
  readonly id: string
  readonly key: string
  readonly rev: number
  readonly question: string
  readonly value: Json
  readonly photo: string
  readonly extra: string
  /** A smaller result that waits for the customer's word. */
  readonly issue: string
  /** A line the customer has still to be told of; none where there is none. */
  readonly toTell: string
}

export type Prepared = {
  readonly from: { readonly file: string; readonly photos: string }
  readonly dockets: Readonly<Record<Stage, Staged>>
  readonly ownerKey: string
  /** Cookies of signed-in browsers. */
  readonly owner: string
  readonly bench: string
  /** The bench's device, and a sign-in code that was not used yet. */
  readonly device: string
  readonly code: string
  /** The secret of the address calendars read. */
  readonly feed: string
}

export const cookieOf = (headers: Headers): string =>
  (headers.get('set-cookie') ?? '').split(';')[0] ?? ''

/** Signs a browser in by a one-use code, as the owner or at the bench. */
export const signIn = async (call: Caller, ownerKey: string, rights: 'owner' | 'bench') => {
  const made = await call('POST', '/api/v1/devices', {
    key: ownerKey,
    json: { label: `a ${rights} device`, rights },
  })
  const traded = await call('POST', '/api/v1/session', { json: { code: made.json.code } })
  return cookieOf(traded.headers)
}

/** An enquiry with everything answered and a picture. */
export const answered = async (call: Caller) => {
  const { id, key, question: first } = (await call('POST', '/api/v1/enquiries', { json: {} })).json
  const own = `/api/v1/enquiries/${id}`
  for (let question = first; question !== null; ) {
    const path = `${own}/answers/${question.id}`
    question = (await call('PUT', path, { key, json: answerByKind(question) })).json.question
  }
  const form = { key, body: pictureForm() }
  const { photo } = (await call('POST', `${own}/photos`, form)).json
  return { id, key, own, photo, question: first.id, value: answerByKind(first) }
}

const sendIt = async (stranger: Stranger, own: string, key: string, id: string) => {
  const sent = await stranger.call('POST', `${own}/submission`, { key, json: { consent: true } })
  await quoteIt(stranger, id, sent.json.estimate)
}

const stage = async (stranger: Stranger, as: Stage): Promise<Staged> => {
  const { call, ownerKey } = stranger
  const docket = await answered(call)
  const { id, key, own } = docket
  let extra = 'none'
  let issue = 'none'
  if (as !== 'ready') await sendIt(stranger, own, key, id)
  if (as === 'dated' || as === 'other' || as === 'done') {
    const { agreed } = await accept(stranger, own, key)
    if (as === 'done') await workIt(stranger, { id, own, customer: key, rev: agreed.rev })
    else {
      const studio = `/api/v1/dockets/${id}`
      const start = { start: '2027-05-10' }
      await call('POST', `${studio}/date`, { key: ownerKey, match: agreed.rev, json: start })
      const json = { text: 'Overspray on the roof', minutes: 600 }
      extra = (await call('POST', `${studio}/extras`, { key: ownerKey, json })).json.extra
      const less = { text: 'The roof is too thin for a cut.' }
      issue = (await call('POST', `${studio}/re-issues`, { key: ownerKey, json: less })).json.issue
    }
  }
  const { rev } = (await call('GET', `/api/v1/dockets/${id}`, { key: ownerKey })).json
  const { lines } = (await call('GET', `/api/v1/dockets/${id}/lines`, { key: ownerKey })).json
  const toTell = lines.findLast((l: Json) => l.kind === 'dated' || l.kind === 'sent')?.id ?? 'none'
  const { question, value, photo } = docket
  return { id, key, rev, question, value, photo, extra, issue, toTell }
}

const make = async (): Promise<Prepared> => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-stages-'))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  const world = await openWorld({ runtime: 'node', seed: 'stages' })
  const call = callerOf(world)
  const stranger = { call, ownerKey: world.ownerKey }
  const dockets = {} as Record<Stage, Staged>
  for (const as of STAGES) dockets[as] = await stage(stranger, as)
  const owner = await signIn(call, world.ownerKey, 'owner')
  const bench = await signIn(call, world.ownerKey, 'bench')
  const key = world.ownerKey
  const { devices } = (await call('GET', '/api/v1/devices', { key })).json
  const added = await call('POST', '/api/v1/devices', { key, json: { rights: 'bench' } })
  const made = await call('POST', '/studio/days/feed', {
    body: new URLSearchParams(),
    headers: { cookie: owner, origin: world.baseUrl },
  })
  const feed = /\/calendar\/([\w-]+)/.exec(made.text)?.[1] ?? ''
  const from = { file: join(folder, 'stages.db'), photos: world.photos ?? '' }
  const raw = new Database(world.file)
  raw.exec(`VACUUM INTO '${from.file}'`)
  raw.close()
  const device = devices.find((d: Json) => d.rights === 'bench').id
  const kept = { ...from, photos: join(folder, 'photos') }
  cpSync(from.photos, kept.photos, { recursive: true })
  await world.close()
  const who = { ownerKey: key, owner, bench, device, code: added.json.code, feed }
  return { from: kept, dockets, ...who }
}

let made: Promise<Prepared> | undefined

/** Dockets in every stage with the people who may open them; walked once per process. */
export const prepared = (): Promise<Prepared> => {
  made ??= make()
  return made
}

/** A world that begins where {@link prepared} ended. */
export const preparedWorld = async (
  p: Prepared,
  more: { readonly trustProxy?: boolean } = {},
): Promise<World> => openWorld({ runtime: 'node', from: p.from, seed: 'later', ...more })
