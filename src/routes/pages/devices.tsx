import { renderSVG } from 'uqr'
import type { Refused } from '../../pages/parts/refused'
import { paths } from '../../pages/paths'
import { DevicesPage } from '../../pages/studio/devices-page'
import { revokeAccess, revokeOthers, selectAccesses } from '../../store/accesses'
import { deleteSessionsOf } from '../../store/sessions'
import { todayOf } from '../acts/estimating'
import { accessOf, makeLink } from '../acts/sign-in'
import { Problem } from '../http/problem'
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

const deviceId = (hash: string): string => hash.slice(0, 16)

export const deviceRoutes: readonly Route[] = [
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
      const person = call.studio.profile.team?.find((t) => t.name === form.get('person'))
      const rights = person?.rights ?? (form.get('rights') === 'owner' ? 'owner' : 'bench')
      return orAgain(
        async () => {
          const label = textOf(form, 'label', 60) ?? person?.name ?? rights
          const { link, writes } = await makeLink(call, rights, label)
          return { ...devicesPage(call, call.loaded.devices, { link }), writes }
        },
        (problem) =>
          devicesPage(call, call.loaded.devices, {
            errors: fieldErrors(call, problem),
            kept: keptOf(form),
          }),
      )
    },
  }),
  route({
    id: 'page.devices.remove-others',
    face: 'page',
    method: 'POST',
    path: '/studio/devices/others/removal',
    rights: 'owner',
    summary: 'End every device but this one.',
    body: 'form',
    answers: { 303: null },
    act: (call) => seeOther(paths.devices, { writes: revokeOthers(accessOf(call.who), call.now) }),
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

type Shown = Refused & { readonly link?: string }

const devicesPage = (call: Any, devices: Devices, { link, errors, kept }: Shown = {}) => {
  const here = call.who.kind === 'owner' ? call.who.access : undefined
  return page(
    <DevicesPage
      frame={frameOf(call)}
      once={onceOf(call)}
      team={call.studio.profile.team ?? []}
      devices={devices.map((d) => ({
        id: deviceId(d.hash),
        label: d.label,
        rights: d.kind === 'owner' ? 'owner' : 'bench',
        since: todayOf(call.studio, d.createdAt),
        lastSeen: d.usedAt === null ? null : todayOf(call.studio, d.usedAt),
        here: d.hash === here,
      }))}
      {...(errors ? { errors } : {})}
      {...(kept ? { kept } : {})}
      {...(link ? { link: { href: link, qrSvg: renderSVG(link, { border: 2 }) } } : {})}
    />,
    errors ? 422 : 200,
  )
}
