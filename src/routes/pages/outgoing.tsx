import { fold } from '../../docket/fold'
import type { ToTell } from '../../docket/to-tell'
import { paths } from '../../pages/paths'
import { OutgoingPage, type OutgoingPageProps } from '../../pages/studio/outgoing-page'
import type { Head } from '../../store/heads'
import { deleteHook, forgetWaiting, type Hook, selectHook, setHook } from '../../store/hooks'
import type { StoredLine } from '../../store/lines'
import { countMessages, enqueue } from '../../store/outbox'
import { selectToTellHeads, selectToTellLines } from '../../store/to-tell'
import { openDesk } from '../acts/desk'
import { todayOf } from '../acts/estimating'
import { HOW, markTold, messageFor } from '../acts/to-tell'
import { invalid, type Problem } from '../http/problem'
import { publicAddress } from '../outgoing/address'
import { newSecret } from '../outgoing/sign'
import { type Route, route } from '../route'
import { docketPage, inForce, load, messageView } from './docket-render'
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
  withRev,
} from './page'

const loadAll = () => ({
  heads: selectToTellHeads(),
  lines: selectToTellLines(),
  hook: selectHook(),
  counts: countMessages(),
})

type Loaded = {
  readonly heads: readonly Head[]
  readonly lines: readonly StoredLine[]
  readonly hook: readonly Hook[]
  readonly counts: readonly { readonly status: string; readonly count: number }[]
}

const aboutText = (call: Any, t: ToTell): string => {
  const { words } = call.studio
  return t.what === 'question'
    ? words.say('page.tell.question', { question: words.say(`q.${t.about}.prompt`) })
    : words.say(`page.tell.${t.what}`)
}

const waitingOf = (call: Any, loaded: Loaded): OutgoingPageProps['waiting'] =>
  loaded.heads.flatMap((head) => {
    const docket = fold(loaded.lines.filter((l) => l.docket === head.docket))
    return docket.toTell.map((t) => ({
      docket: head.docket,
      rev: head.rev,
      name: `${head.reference ?? ''} ${head.title}`.trim(),
      line: t.line,
      text: aboutText(call, t),
      since: todayOf(call.studio, t.at),
    }))
  })

const countOf = (loaded: Loaded, status: string): number =>
  loaded.counts.find((c) => c.status === status)?.count ?? 0

type Shown = { readonly problem?: Problem; readonly secret?: string; readonly hook?: Hook | null }

const outgoingPage = (call: Any, loaded: Loaded, { problem, secret, ...more }: Shown = {}) => {
  const hook = more.hook === undefined ? (loaded.hook[0] ?? null) : more.hook
  return page(
    <OutgoingPage
      frame={frameOf(call)}
      once={onceOf(call)}
      waiting={waitingOf(call, loaded)}
      owner={call.who.kind === 'owner'}
      hook={
        hook && {
          url: hook.url,
          since: todayOf(call.studio, hook.createdAt),
          off: hook.offAt !== null,
          counts: { waiting: countOf(loaded, 'waiting'), dead: countOf(loaded, 'dead') },
        }
      }
      {...(secret ? { secret } : {})}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
    />,
    problem ? 422 : 200,
  )
}

const DAY_MS = 86_400_000

/** A new address starts with a new secret; a renewed secret leaves the old one a day to be replaced. */
const nextHook = (call: Any, was: Hook | undefined, url: string, renew: boolean) => {
  const secret = newSecret(call.deps.random)
  const keep = renew && was !== undefined
  return {
    url,
    secret,
    oldSecret: keep ? was.secret : null,
    oldUntil: keep ? call.now + DAY_MS : null,
    createdAt: keep ? was.createdAt : call.now,
    offAt: null,
  }
}

export const outgoingRoutes: readonly Route[] = [
  route({
    id: 'page.to-send',
    face: 'page',
    method: 'GET',
    path: '/studio/to-send',
    rights: 'owner',
    summary: 'What customers have still to be told, and what goes to the studio’s own system.',
    answers: { 200: 'other' },
    load: loadAll,
    act: (call) => outgoingPage(call, call.loaded),
  }),
  route({
    id: 'page.hook',
    face: 'page',
    method: 'POST',
    path: '/studio/to-send/hook',
    rights: 'owner',
    summary: 'Where messages to the studio’s own system go; a new secret is shown once.',
    body: 'form',
    answers: { 200: 'other', 303: null },
    load: loadAll,
    act: (call) => {
      const form = formOf(call)
      const was = call.loaded.hook[0]
      const act = form.get('act')
      if (act === 'end')
        return seeOther(`${paths.outgoing}#hook`, { writes: [deleteHook(), forgetWaiting()] })
      if (act === 'test') {
        const test = enqueue({
          id: call.newId(),
          kind: 'test',
          docket: null,
          payload: {},
          dedupe: `test:${call.newId()}`,
          nextAt: call.now,
        })
        return seeOther(`${paths.outgoing}#hook`, { writes: was ? [test] : [] })
      }
      return orAgain(
        () => {
          const typed = textOf(form, 'url', 500)
          if (typed === undefined) throw invalid([{ pointer: '/url', code: 'ERR_REQUIRED' }])
          const address = publicAddress(typed)
          if ('fault' in address) throw invalid([{ pointer: '/url', code: address.fault }])
          const renew = act === 'renew' && was?.url === address.url
          const row = nextHook(call, was, address.url, renew)
          return {
            ...outgoingPage(call, call.loaded, { secret: row.secret, hook: { id: 1, ...row } }),
            // What happened before there was an address is not sent after the event.
            writes: [...setHook(row), ...(was ? [] : [forgetWaiting()])],
          }
        },
        (problem) => outgoingPage(call, call.loaded, { problem }),
      )
    },
  }),
  route({
    id: 'page.docket.telling',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/telling',
    rights: 'owner',
    summary: 'The message for something the customer has to be told, with a new private link.',
    body: 'form',
    answers: { 200: 'other' },
    load,
    act: async (call) => {
      const desk = openDesk(call.loaded)
      const line = formOf(call).get('line') ?? ''
      const { text, writes } = await messageFor(call, desk, line)
      const message = messageView(call, desk, text, line)
      return { ...docketPage(call, desk, inForce(desk), { message }), writes }
    },
  }),
  route({
    id: 'page.docket.told',
    face: 'page',
    method: 'POST',
    path: '/studio/d/:id/told',
    rights: 'owner',
    summary: 'Write down that the customer was told, and how.',
    body: 'form',
    answers: { 303: null },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const how = HOW.find((h) => h === form.get('how')) ?? 'message'
      const done = markTold(withRev(call, form), desk, form.all('line'), how)
      const to = form.get('back') === 'docket' ? paths.docket(desk.id) : paths.outgoing
      return seeOther(to, { writes: done.writes })
    },
  }),
]
