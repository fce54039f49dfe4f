import * as z from 'zod'
import { revokeAccess, revokeOthers, selectAccess, selectAccesses } from '../../store/accesses'
import { deleteSessionsOf } from '../../store/sessions'
import { accessOf, makeLink, signOut, tradeForSession } from '../acts/sign-in'
import { setCookie, studioCookie } from '../http/cookies'
import { sha256 } from '../http/keys'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { anyAnswer } from './shapes'

const maybe = z.exactOptional

/** A device is named to the outside by a part of its hash, which opens nothing. */
const deviceId = (hash: string): string => hash.slice(0, 16)

export const sessionRoutes: readonly Route[] = [
  route({
    id: 'session.open',
    face: 'api',
    method: 'POST',
    path: '/api/v1/session',
    rights: 'public',
    summary: 'Trade a sign-in code for a session cookie.',
    body: z.strictObject({ code: z.string().regex(/^[A-Za-z0-9_-]{16,100}$/) }),
    answers: { 204: null },
    rate: { name: 'sign-in', perMinute: 30 },
    load: async ({ body }) => ({ link: selectAccess(await sha256(body.code)) }),
    act: async (call) => {
      const { cookie, writes } = await tradeForSession(call, call.loaded.link[0])
      return { status: 204, cookies: [cookie], writes }
    },
  }),
  route({
    id: 'session.close',
    face: 'api',
    method: 'DELETE',
    path: '/api/v1/session',
    rights: 'bench',
    summary: 'Sign this browser out.',
    answers: { 204: null },
    act: ({ who, secure, now }) => ({
      status: 204,
      writes: signOut(who, now),
      cookies: [setCookie(studioCookie(secure), '', { secure, seconds: 0 })],
    }),
  }),
  route({
    id: 'devices.list',
    face: 'api',
    method: 'GET',
    path: '/api/v1/devices',
    rights: 'owner',
    summary: 'Devices that are signed in or hold a key.',
    answers: { 200: anyAnswer },
    load: () => ({ devices: selectAccesses(['owner', 'bench']) }),
    act: ({ loaded }) => ({
      status: 200,
      json: {
        devices: loaded.devices.map((d) => ({
          id: deviceId(d.hash),
          rights: d.kind,
          label: d.label,
          createdAt: new Date(d.createdAt).toISOString(),
        })),
      },
    }),
  }),
  route({
    id: 'devices.add',
    face: 'api',
    method: 'POST',
    path: '/api/v1/devices',
    rights: 'owner',
    summary: 'A sign-in link for a further device; it works once, for ten minutes.',
    body: z.strictObject({
      label: maybe(z.string().min(1).max(80)),
      rights: maybe(z.enum(['owner', 'bench'])),
    }),
    answers: { 201: anyAnswer },
    act: async (call) => {
      const rights = call.body.rights ?? 'bench'
      const { code, link, writes } = await makeLink(call, rights, call.body.label ?? rights)
      return { status: 201, writes, json: { code, link, rights } }
    },
  }),
  route({
    id: 'devices.remove-others',
    face: 'api',
    method: 'DELETE',
    path: '/api/v1/devices',
    rights: 'owner',
    summary: 'Sign out everywhere: every device, session and open link but the one that asks.',
    answers: { 204: null },
    act: ({ who, now }) => ({ status: 204, writes: revokeOthers(accessOf(who), now) }),
  }),
  route({
    id: 'devices.remove',
    face: 'api',
    method: 'DELETE',
    path: '/api/v1/devices/:device',
    rights: 'owner',
    summary: 'End a device and every session it has.',
    answers: { 204: null },
    load: () => ({ devices: selectAccesses(['owner', 'bench']) }),
    act: ({ loaded, params, now }) => {
      const found = loaded.devices.find((d) => deviceId(d.hash) === params.device)
      if (!found) throw new Problem('unknown')
      return {
        status: 204,
        writes: [deleteSessionsOf(found.hash), revokeAccess(found.hash, now).stmt],
      }
    },
  }),
]
