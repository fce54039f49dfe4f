import * as z from 'zod'
import { PROBES } from '../../docket/kinds'
import { script } from '../../intake/script'
import { estimate } from '../../quote/estimate'
import { engineSettings, studioProfile } from '../../quote/studio-profile'
import { insertSettings } from '../../store/settings'
import { inputOf } from '../acts/estimating'
import { givenAnswers, parseAnswers } from '../acts/parse-answers'
import { profileFaults } from '../acts/profile-faults'
import { estimateView, questionView } from '../acts/views'
import { invalid, Problem } from '../http/problem'
import { faultsOf } from '../http/read-input'
import { type Route, route, type Studio } from '../route'
import { VERSION } from '../version'
import { anyAnswer, estimateAnswer, settingsAnswer } from './shapes'

const maybe = z.exactOptional
const micrometres = z.number().min(0).max(5000)

const readings = z
  .array(
    z.strictObject({
      panel: z.string().min(1).max(64),
      kind: z.enum(['panel', 'reference']),
      values: z.array(micrometres).min(1).max(50),
      probe: maybe(z.enum(PROBES)),
      overFilm: maybe(z.boolean()),
      spot: maybe(z.string().max(40)),
    }),
  )
  .max(400)

/** The studio's settings with some of them tried otherwise. */
const tried = (studio: Studio, change: Readonly<Record<string, unknown>>) => {
  const parsed = studioProfile.safeParse({ ...studio.profile, ...change }, { reportInput: true })
  if (!parsed.success)
    throw invalid(faultsOf(parsed.error).map((f) => ({ ...f, pointer: `/settings${f.pointer}` })))
  const unusable = profileFaults(parsed.data)
  if (unusable.length > 0)
    throw invalid(unusable.map((f) => ({ ...f, pointer: `/settings${f.pointer}` })))
  return engineSettings(parsed.data, studio.rev, studio.engine.zone)
}

export const officeRoutes: readonly Route[] = [
  route({
    id: 'estimates.try',
    face: 'api',
    method: 'POST',
    path: '/api/v1/estimates',
    rights: 'bench',
    summary: 'An estimate of any answers and readings; nothing is kept.',
    body: z.strictObject({
      answers: givenAnswers,
      readings: maybe(readings),
      settings: maybe(z.record(z.string().max(64), z.json())),
    }),
    answers: { 200: estimateAnswer },
    act: ({ body, studio, now }) => {
      const answers = {
        ...parseAnswers(body.answers),
        'begun-year': { value: new Date(now).getUTCFullYear() },
      }
      const unknown = (body.readings ?? []).flatMap((r, i) =>
        studio.words.has(`panel.${r.panel}`)
          ? []
          : [{ pointer: `/readings/${i}/panel`, code: 'ERR_VALUE' }],
      )
      if (unknown.length > 0) throw invalid(unknown)
      const settings = body.settings === undefined ? studio.engine : tried(studio, body.settings)
      const made = estimate({
        ...inputOf(studio, now, answers, { readings: body.readings ?? [] }),
        settings,
      })
      return { status: 200, json: estimateView(made, studio.words, null) }
    },
  }),
  route({
    id: 'settings.read',
    face: 'api',
    method: 'GET',
    path: '/api/v1/settings',
    rights: 'owner',
    summary: 'The studio’s settings.',
    answers: { 200: settingsAnswer },
    act: ({ studio }) => ({
      status: 200,
      headers: { etag: `"${studio.rev}"` },
      json: { rev: studio.rev, ...studio.profile },
    }),
  }),
  route({
    id: 'settings.save',
    face: 'api',
    method: 'PUT',
    path: '/api/v1/settings',
    rights: 'owner',
    summary: 'Save the settings as a new revision; old quotes keep theirs.',
    body: studioProfile,
    answers: { 200: settingsAnswer },
    act: ({ studio, body, match, now, who }) => {
      if (match !== null && match !== studio.rev)
        throw new Problem('stale', { more: { rev: studio.rev } })
      const unusable = profileFaults(body)
      if (unusable.length > 0) throw invalid(unusable)
      const rev = studio.rev + 1
      return {
        status: 200,
        headers: { etag: `"${rev}"` },
        writes: [insertSettings({ rev, body, by: who.kind, at: now })],
        json: { rev, ...body },
      }
    },
    match: 'optional',
  }),
  route({
    id: 'script.read',
    face: 'api',
    method: 'GET',
    path: '/api/v1/script',
    rights: 'bench',
    summary: 'Every question of the script, in asking order.',
    answers: { 200: anyAnswer },
    act: ({ studio }) => ({
      status: 200,
      json: {
        version: script.version,
        questions: script.questions.map((q) => questionView(q, studio.words)),
      },
    }),
  }),
  route({
    id: 'version',
    face: 'api',
    method: 'GET',
    path: '/api/v1/version',
    rights: 'public',
    summary: 'What is running.',
    answers: { 200: anyAnswer },
    act: () => ({
      status: 200,
      json: { name: 'jambside', version: VERSION, script: script.version },
    }),
  }),
  route({
    id: 'health',
    face: 'api',
    method: 'GET',
    path: '/healthz',
    rights: 'public',
    summary: 'Whether the program and its database answer.',
    answers: { 200: anyAnswer },
    act: () => ({ status: 200, json: { ok: true } }),
  }),
]
