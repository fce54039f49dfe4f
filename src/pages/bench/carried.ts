import { agreementOf } from '../../docket/agreement'
import { type Docket, fold } from '../../docket/fold'
import { BENCH_KINDS } from '../../docket/kind-names'
import type { BodyOf } from '../../docket/kinds'
import type { Line } from '../../docket/line'
import { suggestionFor } from '../../jobsheet/finding-kinds'
import { panelsNow } from '../../jobsheet/panels-now'
import { polishWord } from '../../jobsheet/polish-word'
import { type Before, sheetOf } from '../../jobsheet/sheet'
import type { Zone } from '../../kernel/calendar'
import type { EstimateStep, Note } from '../../quote/estimate-types'
import type { PaintInput } from '../../quote/paint'
import type { PaintCase } from '../../quote/paint-of'
import type { Catalogue } from '../../words/render'
import { paths } from '../paths'
import type { BenchView } from './bench-view'
import { viewMore } from './view-more'

/**
 * What a device carries of a job: plain data from which the sheet is made, on the server and without
 * a signal alike. Nothing in it tells whose car it is. Lengths µm.
 */
export type Carried = {
  readonly id: string
  readonly reference: string
  readonly car: string
  /** The docket's revision when it was carried away. */
  readonly rev: number
  readonly steps: readonly EstimateStep[]
  readonly before: Before
  readonly notes: readonly Note[]
  /** What the estimate reckoned may turn up, minutes each. */
  readonly couldAdd: readonly { readonly id: string; readonly minutes: number }[]
  /** Sentences only this job needs. */
  readonly words: Catalogue
  readonly paint: PaintCase
  /** The studio's clock. */
  readonly zone: Zone
  readonly limits?: PaintInput['settings']
  readonly facts: readonly { readonly prompt: string; readonly answer: string }[]
  /** What was agreed beforehand about extras; who decides then is a name, and stays at the studio. */
  readonly agreed?: Pick<BodyOf<'decided'>, 'extrasLimit' | 'unanswered'>
  /** The lines the sheet is folded from, and the texts they refer to. */
  readonly lines: readonly Line[]
  readonly texts: Readonly<Record<string, string>>
}

/** Lines written on this device, in place of their answer from the studio. */
export type Own = {
  readonly lines: readonly Line[]
  readonly texts: Readonly<Record<string, string>>
}

/** Kinds of lines a sheet is made from; answers, quotes and decisions stay at the studio. */
const SHEET_KINDS: readonly string[] = [
  ...BENCH_KINDS,
  'dated',
  'moved',
  'extra-asked',
  'extra-decided',
  're-issued',
  're-issue-decided',
  'handed-over',
]

export const isOfSheet = (line: Pick<Line, 'kind'>): boolean => SHEET_KINDS.includes(line.kind)

const NOTHING: Own = { lines: [], texts: {} }

/** The docket's part of the sheet with what this device wrote; a line that has arrived counts once. */
export const foldOf = (carried: Carried, own: Own): Docket => {
  const there = new Set(carried.lines.map((l) => l.id))
  return fold([...carried.lines, ...own.lines.filter((line) => !there.has(line.id))])
}

/** The sheet as it stands with what this device wrote. */
export const viewOf = (carried: Carried, step: string | null, own: Own = NOTHING): BenchView => {
  const { bench, extras, reIssues, dated } = foldOf(carried, own)
  const sheet = sheetOf(
    carried,
    panelsNow(carried.paint, bench, carried.limits),
    bench,
    carried.before,
    polishWord(reIssues),
  )
  const text = (ref: { readonly text: string }): string =>
    carried.texts[ref.text] ?? own.texts[ref.text] ?? ''
  const current = step !== null && sheet.steps.some((s) => s.id === step) ? step : sheet.next
  return {
    ...viewMore(bench, sheet, current, text, carried.zone, dated),
    id: carried.id,
    reference: carried.reference,
    car: carried.car,
    sheet,
    current,
    notes: carried.notes,
    checkIn: bench.checkIn,
    readings: bench.readings,
    polished: bench.polished,
    findings: bench.findings.map((f) => ({
      id: f.id,
      place: f.place,
      text: text(f.text),
      ...(f.photo ? { photoSrc: paths.docketPhoto(carried.id, f.photo) } : {}),
      ...(f.panel ? { panel: f.panel } : {}),
      arrival: f.arrival === true,
      suggestion: suggestionFor(f.suggests, carried.couldAdd),
    })),
    removals: bench.removals,
    extras: extras.map((e) => ({
      extra: e.extra,
      finding: e.finding ?? null,
      text: text(e.text),
      minutes: e.minutes,
      total: e.amount + e.tax,
      within: e.within,
      decision: e.decision?.decision ?? null,
    })),
    reIssues,
    facts: carried.facts,
    ...(carried.agreed ? { agreement: agreementOf({ agreed: carried.agreed, extras }) } : {}),
    notesText: bench.notes.map((n) => ({ id: n.id, text: text(n.text) })),
  }
}
