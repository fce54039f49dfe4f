import { LinkPage } from '../../pages/intake/link-page'
import { StartPage } from '../../pages/intake/start-page'
import { paths } from '../../pages/paths'
import { isLive, selectAccess } from '../../store/accesses'
import { selectHeld } from '../../store/held'
import { CUSTOMER_KEY_MS, openEnquiry } from '../acts/enquiry'
import { answerAlong, prefillTexts, readPrefill } from '../acts/prefill'
import { docketCookie, setCookie } from '../http/cookies'
import { sha256 } from '../http/keys'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { type Any, formOf, frameOf, onceOf, page, seeOther } from './page'

export const customerCookie = (call: Pick<Any, 'secure'>, id: string, key: string): string =>
  setCookie(docketCookie(id, call.secure), key, {
    secure: call.secure,
    seconds: Math.floor(CUSTOMER_KEY_MS / 1000),
  })

/** Opening a docket by a private link needs a person: looking at it changes nothing. */
export const startRoutes: readonly Route[] = [
  route({
    id: 'page.start',
    face: 'page',
    method: 'GET',
    path: '/',
    rights: 'public',
    summary: 'The door of the intake.',
    answers: { 200: 'other' },
    lists: true,
    load: async ({ held, now }) => ({
      mine: selectHeld(await Promise.all(held.map((key) => sha256(key))), now),
    }),
    act: (call) => {
      const { right, wrong } = readPrefill(call.search, call.studio, call.now)
      return page(
        <StartPage
          frame={frameOf(call)}
          once={onceOf(call)}
          mine={call.loaded.mine}
          brought={prefillTexts(right, call.studio)}
          unused={wrong}
          {...(call.studio.profile.contact ? { contact: call.studio.profile.contact } : {})}
        />,
      )
    },
  }),
  route({
    id: 'page.open',
    face: 'page',
    method: 'POST',
    path: '/e',
    rights: 'public',
    summary: 'Begin an enquiry in this browser.',
    body: 'form',
    answers: { 303: null },
    rate: { name: 'open', perMinute: 120 },
    act: async (call) => {
      const made = await openEnquiry(call, 'en', 'customer')
      const along = formOf(call).entries.flatMap(([name, value]) =>
        name.startsWith('with:') ? [[name.slice('with:'.length), value] as const] : [],
      )
      const { right } = readPrefill(along, call.studio, call.now)
      const answers = Object.fromEntries(right.map((p) => [p.question, p.answer]))
      const more = answerAlong(call, made.desk, answers)
      return seeOther(paths.conversation(made.id), {
        writes: [...made.writes, ...more.writes],
        cookies: [customerCookie(call, made.id, made.key)],
      })
    },
  }),
  route({
    id: 'page.link',
    face: 'page',
    method: 'GET',
    path: '/l/:id/:key',
    rights: 'public',
    summary: 'A private link; looking at it changes nothing.',
    answers: { 200: 'other' },
    act: (call) =>
      page(
        <LinkPage
          frame={frameOf(call)}
          action={`/l/${encodeURIComponent(call.params.id ?? '')}/${encodeURIComponent(call.params.key ?? '')}`}
          opens="enquiry"
          oneUse={false}
        />,
      ),
  }),
  route({
    id: 'page.link.open',
    face: 'page',
    method: 'POST',
    path: '/l/:id/:key',
    rights: 'public',
    summary: 'Open a docket in this browser by its private link.',
    body: 'form',
    answers: { 303: null },
    rate: { name: 'sign-in', perMinute: 30 },
    load: async ({ params }) => ({ found: selectAccess(await sha256(params.key ?? '')) }),
    act: (call) => {
      const found = call.loaded.found[0]
      const id = call.params.id ?? ''
      if (found?.kind !== 'customer' || found.docket !== id || !isLive(found, call.now))
        throw new Problem('not-yours', { detail: { key: 'page.problem.old-link' } })
      return seeOther(paths.conversation(id), {
        cookies: [customerCookie(call, id, call.params.key ?? '')],
      })
    },
  }),
]
