import type { Answer } from '../intake/answers'
import { type AskedAgain, foldAskedAgain } from './asked-again'
import { type Bench, foldBench, WORK_KINDS } from './bench'
import type { BodyOf } from './kinds'
import type { Line } from './line'
import { sorted } from './order'
import { foldPaid, type Paid } from './paid'
import { foldReIssued, type ReIssued } from './re-issued'
import type { State } from './states'
import { foldToTell, type Telling } from './to-tell'
import { foldToldAfter, type ToldAfter } from './told-after'

/** An answer as the docket holds it: the value itself, or where its personal part stands. */
export type HeldAnswer = Answer | { readonly person: string } | { readonly text: string }

export type Revision = BodyOf<'revised'> & {
  readonly at: number
  readonly by: string
  readonly sentAt: number | null
}

export type Extra = BodyOf<'extra-asked'> & {
  readonly at: number
  readonly decision: (BodyOf<'extra-decided'> & { readonly at: number }) | null
}

export type Docket = AskedAgain &
  ToldAfter &
  ReIssued &
  Paid &
  Telling & {
    readonly id: string
    /** Number of lines; the guard of the next office line. */
    readonly rev: number
    readonly state: State
    readonly script: string
    readonly language: string
    readonly from: 'customer' | 'studio'
    readonly openedAt: number
    readonly changedAt: number
    readonly answers: Readonly<Record<string, HeldAnswer>>
    readonly answeredBy: Readonly<Record<string, string>>
    readonly photos: readonly { readonly photo: string; readonly subject: string }[]
    readonly reference: string | null
    readonly submittedAt: number | null
    /** It may not be from a person, and nobody has vouched for it. */
    readonly doubtful: boolean
    readonly estimates: readonly BodyOf<'estimated'>[]
    readonly revisions: readonly Revision[]
    /** The revision the customer may decide on now. */
    readonly sent: Revision | null
    readonly decisions: readonly (BodyOf<'decided'> & { readonly at: number })[]
    /** A question of the customer's that has not been replied to. */
    readonly asked: boolean
    readonly agreed: (BodyOf<'decided'> & { readonly at: number }) | null
    readonly dated: (BodyOf<'dated'> & { readonly at: number }) | null
    readonly whyMoved: string | null
    /** What the last move said besides: who else may help, or the inspection on offer. */
    readonly moved: BodyOf<'moved'> | null
    readonly extras: readonly Extra[]
    readonly handedOver: (BodyOf<'handed-over'> & { readonly at: number }) | null
    readonly bench: Bench
    readonly struck: Readonly<Record<string, string>>
  }

const EMPTY = {
  state: 'answering' as State,
  script: '',
  language: 'en',
  from: 'customer' as 'customer' | 'studio',
  openedAt: 0,
  reference: null as string | null,
  submittedAt: null as number | null,
  doubtful: false,
  asked: false,
  agreed: null as Docket['agreed'],
  dated: null as Docket['dated'],
  whyMoved: null as string | null,
  moved: null as Docket['moved'],
  handedOver: null as Docket['handedOver'],
}

/**
 * The docket as it stands: a pure function of its lines, the same on the server, in tests and on a
 * bench without a signal. Struck lines count nowhere.
 */
export const fold = (lines: readonly Line[]): Docket => {
  const { office, bench, struck } = sorted(lines)
  const d = { ...EMPTY }
  const answers: Record<string, HeldAnswer> = {}
  const answeredBy: Record<string, string> = {}
  let photos: { photo: string; subject: string }[] = []
  const estimates: BodyOf<'estimated'>[] = []
  const revisions: Revision[] = []
  const decisions: (BodyOf<'decided'> & { at: number })[] = []
  const extras: Extra[] = []
  let datedAt = 0

  const vouched = office.some((l) => l.kind === 'vouched')

  for (const line of office) {
    switch (line.kind) {
      case 'opened': {
        const body = line.body as BodyOf<'opened'>
        d.script = body.script
        d.language = body.language
        d.from = body.from
        d.openedAt = line.at
        break
      }
      case 'answered': {
        const body = line.body as BodyOf<'answered'>
        answers[body.question] = body.answer as HeldAnswer
        answeredBy[body.question] = line.by
        break
      }
      case 'unanswered': {
        const { question } = line.body as BodyOf<'unanswered'>
        delete answers[question]
        delete answeredBy[question]
        break
      }
      case 'photo-added':
        photos.push(line.body as BodyOf<'photo-added'>)
        break
      case 'photo-removed': {
        const gone = (line.body as BodyOf<'photo-removed'>).photo
        photos = photos.filter((p) => p.photo !== gone)
        break
      }
      case 'doubted':
        d.doubtful = !vouched
        break
      case 'submitted':
        d.reference = (line.body as BodyOf<'submitted'>).reference
        d.submittedAt = line.at
        d.state = 'received'
        break
      case 'estimated':
        estimates.push(line.body as BodyOf<'estimated'>)
        break
      case 'moved': {
        const body = line.body as BodyOf<'moved'>
        d.state = body.to
        d.whyMoved = body.why?.text ?? null
        d.moved = body
        if (body.to === 'received') d.agreed = null
        break
      }
      case 'revised':
        revisions.push({
          ...(line.body as BodyOf<'revised'>),
          at: line.at,
          by: line.by,
          sentAt: null,
        })
        break
      case 'sent': {
        const { revision } = line.body as BodyOf<'sent'>
        const i = revisions.findIndex((r) => r.revision === revision)
        const was = revisions[i]
        if (was) revisions[i] = { ...was, sentAt: line.at }
        d.state = 'quoted'
        d.agreed = null
        break
      }
      case 'decided': {
        const body = { ...(line.body as BodyOf<'decided'>), at: line.at }
        decisions.push(body)
        d.asked = body.decision === 'ask'
        if (body.decision === 'accept') {
          d.state = 'agreed'
          d.agreed = body
        }
        if (body.decision === 'decline') d.state = 'declined'
        break
      }
      case 'replied':
        d.asked = false
        break
      case 'dated':
        d.dated = { ...(line.body as BodyOf<'dated'>), at: line.at }
        d.state = 'dated'
        datedAt = line.seq
        break
      case 'extra-asked':
        extras.push({ ...(line.body as BodyOf<'extra-asked'>), at: line.at, decision: null })
        break
      case 'extra-decided': {
        const body = { ...(line.body as BodyOf<'extra-decided'>), at: line.at }
        const i = extras.findIndex((e) => e.extra === body.extra)
        const was = extras[i]
        if (was && was.decision === null) extras[i] = { ...was, decision: body }
        break
      }
      case 'handed-over':
        d.handedOver = { ...(line.body as BodyOf<'handed-over'>), at: line.at }
        d.state = 'handed-over'
        break
    }
  }
  const folded = foldBench(bench)
  // Work that reached us after the job was dated; what an earlier visit did does not count again.
  const started = bench.some((l) => WORK_KINDS.includes(l.kind) && l.seq > datedAt)
  const state: State = d.state === 'dated' && started ? 'on-bench' : d.state
  return {
    ...d,
    ...foldAskedAgain(office),
    ...foldToldAfter(office),
    ...foldPaid(office),
    ...foldToTell(office),
    ...foldReIssued(office),
    id: lines[0]?.docket ?? '',
    rev: lines.reduce((most, l) => Math.max(most, l.seq), 0),
    state,
    changedAt: lines.reduce((last, l) => Math.max(last, l.at), 0),
    answers,
    answeredBy,
    photos,
    estimates,
    revisions,
    sent: revisions.findLast((r) => r.sentAt !== null) ?? null,
    decisions,
    extras,
    bench: folded,
    struck: Object.fromEntries(struck),
  }
}
