import { asChosen } from '../../docket/as-chosen'
import type { Revision } from '../../docket/fold'
import { beforeOf } from '../../jobsheet/before'
import { panelsNow } from '../../jobsheet/panels-now'
import { polishWord } from '../../jobsheet/polish-word'
import { type Sheet, sheetOf } from '../../jobsheet/sheet'
import type { StudioSettings } from '../../quote/context'
import type { Estimate } from '../../quote/estimate-types'
import { paintCaseOf } from '../../quote/paint-of'
import type { StoredEstimate } from '../../store/estimates'
import { Problem } from '../http/problem'
import type { Desk } from './desk'

/** The estimate behind a revision, as it was frozen. */
export const estimateBehind = (
  revision: Pick<Revision, 'digest'> | null,
  stored: readonly StoredEstimate[],
): Estimate | null => {
  const row = revision === null ? undefined : stored.find((s) => s.digest === revision.digest)
  return (row?.result as Estimate | undefined) ?? null
}

/** The revision the customer agreed to, as it stands with the option chosen; before a yes, the one sent last. */
export const agreedRevision = (desk: Desk): Revision | null => {
  const agreed = desk.docket.agreed
  if (agreed === null) return desk.docket.sent
  const found = desk.docket.revisions.find((r) => r.revision === agreed.revision)
  return found ? asChosen(found, agreed.option) : null
}

export type StoredEstimates = readonly StoredEstimate[]

/** What was agreed and its estimate. Throws 409 while nothing was agreed. */
export const agreedWork = (
  desk: Desk,
  stored: StoredEstimates,
): { readonly revision: Revision; readonly estimate: Estimate } => {
  const revision = agreedRevision(desk)
  const estimate = estimateBehind(revision, stored)
  if (revision === null || estimate === null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.no-quote' },
      more: { state: desk.docket.state },
    })
  return { revision, estimate }
}

/** The job sheet of an agreed docket. Throws 409 while nothing was agreed. */
export const sheetFor = (
  desk: Desk,
  stored: StoredEstimates,
  nowYear: number,
  limits?: StudioSettings['limits'],
): { readonly sheet: Sheet; readonly revision: Revision; readonly estimate: Estimate } => {
  const { revision, estimate } = agreedWork(desk, stored)
  const { bench } = desk.docket
  const panels = panelsNow(paintCaseOf(desk.answers, nowYear), bench, limits)
  return {
    sheet: sheetOf(
      estimate,
      panels,
      bench,
      beforeOf(estimate.steps),
      polishWord(desk.docket.reIssues),
    ),
    revision,
    estimate,
  }
}
