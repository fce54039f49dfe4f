import type { Revision } from '../../docket/fold'
import { polishWord } from '../../jobsheet/polish-word'
import { benchReadings, doneSets } from '../../jobsheet/readings'
import { type Sheet, sheetOf } from '../../jobsheet/sheet'
import type { StudioSettings } from '../../quote/context'
import type { Estimate, PanelPaint } from '../../quote/estimate-types'
import { paintOf, saidVerdict } from '../../quote/paint-of'
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

/** The revision the customer agreed to; before a yes, the one that was sent last. */
export const agreedRevision = (desk: Desk): Revision | null => {
  const agreed = desk.docket.agreed
  if (agreed === null) return desk.docket.sent
  return desk.docket.revisions.find((r) => r.revision === agreed.revision) ?? null
}

/** Panels as they stand now, from the docket's own readings and sets. */
export const panelsNow = (
  desk: Desk,
  nowYear: number,
  limits?: StudioSettings['limits'],
): readonly PanelPaint[] => {
  const { bench } = desk.docket
  const paint = paintOf(desk.answers, nowYear, benchReadings(bench), {}, doneSets(bench), limits)
  return paint.assessment.panels.map((p) => ({
    panel: p.panel,
    topcoat: p.topcoat,
    total: p.totalMean,
    light: p.light,
    strong: p.strong,
    deepest: p.deepest,
    verdict: bench.unreadable[p.panel] === undefined ? saidVerdict(p) : 'cannot-be-read',
    why: p.why.map((w) => ({ key: w.code, params: w.params })),
    because: paint.because,
  }))
}

/** The job sheet of an agreed docket. Throws 409 while nothing was agreed. */
export const sheetFor = (
  desk: Desk,
  stored: readonly StoredEstimate[],
  nowYear: number,
  limits?: StudioSettings['limits'],
): { readonly sheet: Sheet; readonly revision: Revision; readonly estimate: Estimate } => {
  const revision = agreedRevision(desk)
  const estimate = estimateBehind(revision, stored)
  if (revision === null || estimate === null)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.no-quote' },
      more: { state: desk.docket.state },
    })
  return {
    sheet: sheetOf(
      estimate,
      panelsNow(desk, nowYear, limits),
      desk.docket.bench,
      polishWord(desk.docket.reIssues),
    ),
    revision,
    estimate,
  }
}
