import { renderSVG } from 'uqr'
import * as z from 'zod'
import { type State, TURNS, type Turn } from '../../docket/states'
import { paths } from '../../pages/paths'
import { DevicesPage } from '../../pages/studio/devices-page'
import { ListPage } from '../../pages/studio/list-page'
import { SettingsPage } from '../../pages/studio/settings-page'
import { SignInPage } from '../../pages/studio/sign-in-page'
import { studioProfile } from '../../quote/studio-profile'
import { revokeAccess, selectAccess, selectAccesses } from '../../store/accesses'
import { countHeads, listHeads } from '../../store/heads'
import { deleteSession, deleteSessionsOf } from '../../store/sessions'
import { insertSettings } from '../../store/settings'
import { openEnquiry } from '../acts/enquiry'
import { todayOf } from '../acts/estimating'
import { readPlace, writePlace } from '../acts/place'
import { profileFaults } from '../acts/profile-faults'
import { makeLink, tradeForSession } from '../acts/sign-in'
import { setCookie, studioCookie } from '../http/cookies'
import { sha256 } from '../http/keys'
import { invalid, Problem } from '../http/problem'
import { faultsOf } from '../http/read-input'
import { type Route, route } from '../route'
import {
  type Any,
  fieldErrors,
  formOf,
  frameOf,
  keptOf,
  onceOf,
  orAgain,
  page,
  seeOther,
  textOf,
} from './page'
import { profileOfForm } from './profile-form'
import { customerCookie } from './start'

const maybe = z.exactOptional
const CODE = /^[A-Za-z0-9_-]{16,100}$/

/** A code as typed, or the whole link it came in. */
const codeOf = (typed: string): string => typed.trim().split('/').at(-1) ?? ''

const signInPage = (call: Any, code: string, failed: boolean) =>
  page(
    <SignInPage
      frame={frameOf(call)}
      code={code}
      {...(failed
        ? { errors: [{ field: 'code', message: call.studio.words.say('page.sign-in.failed') }] }
        : {})}
    />,
    failed ? 422 : 200,
  )

const deviceId = (hash: string): string => hash.slice(0, 16)
const LIMIT = 50

export const officePageRoutes: readonly Route[] = [
  route({
    id: 'page.sign-in.link',
    face: 'page',
    method: 'GET',
    path: '/in/:code',
    rights: 'public',
    summary: 'A one-use sign-in link; looking at it does not use it.',
    answers: { 200: 'other' },
    act: (call) => signInPage(call, call.params.code ?? '', false),
  }),
  route({
    id: 'page.sign-in',
    face: 'page',
    method: 'GET',
    path: '/studio/sign-in',
    rights: 'public',
    summary: 'Sign in with a code.',
    answers: { 200: 'other' },
    act: (call) => signInPage(call, '', false),
  }),
  route({
    id: 'page.sign-in.trade',
    face: 'page',
    method: 'POST',
    path: '/studio/sign-in',
    rights: 'public',
    summary: 'Trade a code for a session.',
    body: 'form',
    answers: { 303: null },
    rate: { name: 'sign-in', perMinute: 30 },
    load: async ({ body }) => ({
      link: selectAccess(await sha256(codeOf(formOf({ body }).get('code') ?? ''))),
    }),
    act: async (call) => {
      const code = codeOf(formOf(call).get('code') ?? '')
      try {
        if (!CODE.test(code)) throw new Problem('signed-out')
        const { cookie, writes } = await tradeForSession(call, call.loaded.link[0])
        return seeOther(paths.studio, { writes, cookies: [cookie] })
      } catch (error) {
        if (error instanceof Problem) return signInPage(call, code, true)
        throw error
      }
    },
  }),
  route({
    id: 'page.sign-out',
    face: 'page',
    method: 'POST',
    path: '/studio/sign-out',
    rights: 'bench',
    summary: 'Sign this browser out.',
    body: 'form',
    answers: { 303: null },
    act: ({ who, secure }) =>
      seeOther(paths.signIn, {
        writes: 'session' in who && who.session ? [deleteSession(who.session)] : [],
        cookies: [setCookie(studioCookie(secure), '', { secure, seconds: 0 })],
      }),
  }),
  route({
    id: 'page.list',
    face: 'page',
    method: 'GET',
    path: '/studio',
    rights: 'bench',
    summary: 'Dockets by whose turn it is.',
    query: z.object({
      turn: maybe(z.enum(TURNS)),
      q: maybe(z.string().max(100)),
      after: maybe(z.string().max(200)),
    }),
    answers: { 200: 'other' },
    load: ({ query }) => {
      const q = query.q?.trim() ?? ''
      return {
        heads: listHeads({
          limit: LIMIT + 1,
          ...(q === '' ? { turn: query.turn ?? 'ours' } : { q }),
          ...(query.after === undefined ? {} : { after: readPlace(query.after) }),
        }),
        counts: countHeads(),
      }
    },
    act: (call) => {
      const { loaded, query, studio, now } = call
      const turn: Turn = query.turn ?? 'ours'
      const rows = loaded.heads.slice(0, LIMIT)
      const last = rows.at(-1)
      const counted = Object.fromEntries(
        TURNS.map((t) => [t, loaded.counts.find((c) => c.turn === t)?.count ?? 0]),
      ) as Record<Turn, number>
      const next = new URLSearchParams({
        ...(query.q ? { q: query.q } : { turn }),
        ...(last ? { after: writePlace(last) } : {}),
      })
      return page(
        <ListPage
          frame={frameOf(call)}
          turn={turn}
          counts={counted}
          once={onceOf(call)}
          rows={rows.map((h) => ({
            id: h.docket,
            reference: h.reference,
            state: h.state as State,
            title: h.title,
            person: h.personName,
            riskiest: h.riskiest === null ? null : studio.words.say(`risk.${h.riskiest}`),
            low: h.priceLow,
            high: h.priceHigh,
            wantedBy: h.wantedBy,
            jobDate: h.jobDate,
            ageMinutes: Math.floor((now - (h.receivedAt ?? h.createdAt)) / 60_000),
            doubtful: h.doubtful,
          }))}
          {...(query.q ? { q: query.q } : {})}
          {...(loaded.heads.length > LIMIT ? { nextHref: `${paths.studio}?${next}` } : {})}
        />,
      )
    },
  }),
  route({
    id: 'page.docket.open',
    face: 'page',
    method: 'POST',
    path: '/studio/dockets',
    rights: 'owner',
    summary: 'Open a docket for somebody on the phone.',
    body: 'form',
    answers: { 303: null },
    act: async (call) => {
      const made = await openEnquiry(call, 'en', 'studio')
      return seeOther(paths.conversation(made.id), {
        writes: made.writes,
        cookies: [customerCookie(call, made.id, made.key)],
      })
    },
  }),
  route({
    id: 'page.settings',
    face: 'page',
    method: 'GET',
    path: '/studio/settings',
    rights: 'owner',
    summary: 'The studio’s own figures.',
    answers: { 200: 'other' },
    act: (call) => settingsPage(call),
  }),
  route({
    id: 'page.settings.save',
    face: 'page',
    method: 'POST',
    path: '/studio/settings',
    rights: 'owner',
    summary: 'Save the settings as a new revision.',
    body: 'form',
    answers: { 303: null },
    act: (call) => {
      const form = formOf(call)
      return orAgain(
        () => {
          const read = profileOfForm(form, call.studio.profile)
          if (read.faults.length > 0) throw invalid(read.faults)
          const parsed = studioProfile.safeParse(read.profile, { reportInput: true })
          if (!parsed.success) throw invalid(faultsOf(parsed.error))
          const unusable = profileFaults(parsed.data)
          if (unusable.length > 0) throw invalid(unusable)
          if (form.get('rev') !== String(call.studio.rev)) throw new Problem('stale')
          const rev = call.studio.rev + 1
          return seeOther(paths.settings, {
            writes: [insertSettings({ rev, body: parsed.data, by: call.who.kind, at: call.now })],
          })
        },
        (problem) => settingsPage(call, problem),
      )
    },
  }),
  route({
    id: 'page.devices',
    face: 'page',
    method: 'GET',
    path: '/studio/devices',
    rights: 'owner',
    summary: 'Who may open the studio’s pages.',
    answers: { 200: 'other' },
    load: () => ({ devices: selectAccesses(['owner', 'bench']) }),
    act: (call) => devicesPage(call, call.loaded.devices),
  }),
  route({
    id: 'page.devices.add',
    face: 'page',
    method: 'POST',
    path: '/studio/devices',
    rights: 'owner',
    summary: 'A one-use link for a further device.',
    body: 'form',
    answers: { 200: 'other' },
    load: () => ({ devices: selectAccesses(['owner', 'bench']) }),
    act: async (call) => {
      const form = formOf(call)
      const rights = form.get('rights') === 'owner' ? 'owner' : 'bench'
      const label = textOf(form, 'label')?.slice(0, 60) ?? rights
      const { link, writes } = await makeLink(call, rights, label)
      return { ...devicesPage(call, call.loaded.devices, link), writes }
    },
  }),
  route({
    id: 'page.devices.remove',
    face: 'page',
    method: 'POST',
    path: '/studio/devices/:device/removal',
    rights: 'owner',
    summary: 'End a device and its sessions.',
    body: 'form',
    answers: { 303: null },
    load: () => ({ devices: selectAccesses(['owner', 'bench']) }),
    act: (call) => {
      const found = call.loaded.devices.find((d) => deviceId(d.hash) === call.params.device)
      if (!found) throw new Problem('unknown')
      return seeOther(paths.devices, {
        writes: [deleteSessionsOf(found.hash), revokeAccess(found.hash, call.now).stmt],
      })
    },
  }),
]

type Devices = readonly {
  readonly hash: string
  readonly kind: string
  readonly label: string
  readonly createdAt: number
  readonly usedAt: number | null
}[]

const devicesPage = (call: Any, devices: Devices, link?: string) => {
  const here = call.who.kind === 'owner' ? call.who.access : undefined
  return page(
    <DevicesPage
      frame={frameOf(call)}
      once={onceOf(call)}
      devices={devices.map((d) => ({
        id: deviceId(d.hash),
        label: d.label,
        rights: d.kind === 'owner' ? 'owner' : 'bench',
        since: todayOf(call.studio, d.createdAt),
        lastSeen: d.usedAt === null ? null : todayOf(call.studio, d.usedAt),
        here: d.hash === here,
      }))}
      {...(link ? { link: { href: link, qrSvg: renderSVG(link, { border: 2 }) } } : {})}
    />,
  )
}

const settingsPage = (call: Any, problem?: Problem) =>
  page(
    <SettingsPage
      frame={frameOf(call)}
      profile={call.studio.profile}
      exponent={call.studio.engine.exponent}
      rev={call.studio.rev}
      once={onceOf(call)}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )
