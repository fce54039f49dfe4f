import { paths } from '../../pages/paths'
import { SignInPage } from '../../pages/studio/sign-in-page'
import { selectAccess } from '../../store/accesses'
import { signOut, tradeForSession } from '../acts/sign-in'
import { setCookie, studioCookie } from '../http/cookies'
import { sha256 } from '../http/keys'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { type Any, formOf, frameOf, page, seeOther } from './page'

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

export const signInRoutes: readonly Route[] = [
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
    act: ({ who, secure, now }) =>
      seeOther(paths.signIn, {
        writes: signOut(who, now),
        cookies: [setCookie(studioCookie(secure), '', { secure, seconds: 0 })],
      }),
  }),
]
