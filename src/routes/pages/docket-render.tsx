import type { Adjustment } from '../../docket/kinds'
import type { State } from '../../docket/states'
import { paths } from '../../pages/paths'
import { DocketPage, type DocketPageProps } from '../../pages/studio/docket-page'
import type { LastVisit, MessageView, StaleView } from '../../pages/studio/docket-view'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import type { Problem } from '../http/problem'
import type { Call, Form, Outcome } from '../route'
import { docketView } from './docket-view'
import {
  type Any,
  fieldErrors,
  formOf,
  frameOf,
  keptOf,
  onceOf,
  orAgain,
  page,
  withRev,
} from './page'

export const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) =>
  deskLoad(params.id ?? '')

export const SHEET = new Set<State>([
  'agreed',
  'dated',
  'on-bench',
  'held',
  'finished',
  'part-done',
  'uncollected',
  'come-back',
  'handed-over',
])

export const inForce = (desk: Desk): readonly Adjustment[] =>
  desk.docket.revisions.at(-1)?.adjustments ?? []

type Shown = Partial<
  Pick<DocketPageProps, 'errors' | 'kept' | 'trial' | 'stale' | 'message' | 'against'>
> & {
  readonly last?: LastVisit | undefined
}

export const docketPage = (
  call: Any,
  desk: Desk,
  adjustments: readonly Adjustment[],
  more: Shown = {},
  status = 200,
): Outcome => {
  const reference = desk.docket.reference
  const { last, ...props } = more
  const view = docketView(call, desk, adjustments)
  return page(
    <DocketPage
      frame={frameOf(call, reference ? { who: reference, reference } : {})}
      docket={last ? { ...view, last } : view}
      once={onceOf(call)}
      {...(SHEET.has(desk.docket.state) ? { benchHref: paths.bench(desk.id) } : {})}
      {...(desk.docket.agreed !== null && call.who.kind === 'owner'
        ? { accountHref: paths.docketAccount(desk.id) }
        : {})}
      {...(desk.docket.state === 'answering' && desk.docket.from === 'studio'
        ? { answersHref: paths.conversation(desk.id) }
        : {})}
      {...props}
    />,
    status,
  )
}

/** A refused form comes back as it was typed; a stale one also says what was written meanwhile. */
export const back = (call: Any, problem: Problem, desk: Desk): Outcome => {
  const kept = keptOf(formOf(call))
  if (problem.code === 'stale')
    return docketPage(call, desk, inForce(desk), { kept, stale: staleView(problem) }, 412)
  return docketPage(call, desk, inForce(desk), { errors: fieldErrors(call, problem), kept }, 422)
}

/**
 * The act of a form on the docket page: the desk opened, the revision the form was made from held
 * against it, and where it is refused or stale the page again with what was typed.
 */
export const docketForm =
  <C extends Call<unknown, unknown, ReturnType<typeof load>>>(
    act: (call: C, desk: Desk, form: Form) => Promise<Outcome> | Outcome,
  ) =>
  (call: C): Promise<Outcome> => {
    const desk = openDesk(call.loaded)
    const form = formOf(call)
    return orAgain(
      () => act(withRev(call, form), desk, form),
      (problem) => back(call, problem, desk),
      ['invalid', 'stale'],
    )
  }

/** A desk with a text that is being kept by this very request. */
export const withText = (
  desk: Desk,
  ref: string | null | undefined,
  text: string | undefined,
): Desk => (ref && text ? { ...desk, texts: new Map([...desk.texts, [ref, text]]) } : desk)

/** What was written meanwhile, as the problem tells it. */
export const staleView = (problem: Problem, both: readonly string[] = []): StaleView => ({
  lines: (problem.more.changed as StaleView['lines'] | undefined) ?? [],
  both,
})

/** What the customer should read, ready to paste and to send. */
export const messageView = (
  call: Any,
  desk: Desk,
  text: string,
  line: string | undefined = desk.docket.toTell.at(-1)?.line,
): MessageView => {
  const p = desk.people[0]
  const { words, profile } = call.studio
  return {
    text,
    subject: words.say('message.subject', {
      reference: desk.docket.reference ?? '',
      studio: profile.name,
    }),
    ...(p?.email ? { email: p.email } : {}),
    ...(p?.phone ? { phone: p.phone } : {}),
    ...(line ? { line } : {}),
  }
}
