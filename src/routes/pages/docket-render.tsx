import type { Adjustment } from '../../docket/kinds'
import type { State } from '../../docket/states'
import { paths } from '../../pages/paths'
import { DocketPage, type DocketPageProps } from '../../pages/studio/docket-page'
import { type Desk, deskLoad } from '../acts/desk'
import type { Problem } from '../http/problem'
import type { Outcome } from '../route'
import { docketView } from './docket-view'
import { type Any, fieldErrors, formOf, frameOf, keptOf, onceOf, page } from './page'

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

/** The studio's own work names stay the same from one revision to the next. */
export const ownStep = (desk: Desk): string => {
  const used = new Set(
    desk.docket.revisions.flatMap((r) =>
      r.adjustments.flatMap((a) => (a.kind === 'add' ? [a.step] : [])),
    ),
  )
  let n = used.size + 1
  while (used.has(`own-${n}`)) n += 1
  return `own-${n}`
}

export const inForce = (desk: Desk): readonly Adjustment[] =>
  desk.docket.revisions.at(-1)?.adjustments ?? []

export const docketPage = (
  call: Any,
  desk: Desk,
  adjustments: readonly Adjustment[],
  more: Partial<Pick<DocketPageProps, 'errors' | 'kept' | 'trial' | 'message'>> = {},
  status = 200,
): Outcome => {
  const reference = desk.docket.reference
  return page(
    <DocketPage
      frame={frameOf(call, reference ? { who: reference, reference } : {})}
      docket={docketView(call, desk, adjustments)}
      once={onceOf(call)}
      {...(SHEET.has(desk.docket.state) ? { benchHref: paths.bench(desk.id) } : {})}
      {...more}
    />,
    status,
  )
}

export const back = (call: Any, problem: Problem, desk: Desk): Outcome =>
  docketPage(
    call,
    desk,
    inForce(desk),
    { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) },
    422,
  )
