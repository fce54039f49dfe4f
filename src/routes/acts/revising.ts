import type { Docket, Revision } from '../../docket/fold'
import { mayMove } from '../../docket/states'
import { script } from '../../intake/script'
import type { Adjustment } from '../../quote/adjustment'
import { addDaysText } from '../../quote/working-day'
import { enqueue } from '../../store/outbox'
import { insertText } from '../../store/texts'
import { invalid, Problem } from '../http/problem'
import { studioInMoney } from '../http/studio'
import type { Call, Load } from '../route'
import { checkMatch, type Desk, keepText, type Written, write } from './desk'
import { deskInput, keepEstimate, todayOf } from './estimating'
import { freshLink } from './fresh-link'
import { figuresOf } from './list-figures'
import { offerOf } from './offer-kept'
import { keepOptions, type OptionPointer, type OptionTyped } from './revising-options'

type Any = Call<unknown, unknown, Load>

const REVISABLE = new Set(['received', 'look-over', 'quoted', 'agreed', 'declined', 'lapsed'])

/** Throws 409 with the moves that are possible from where the docket stands. */
export const notNow = (docket: Docket, moves: readonly string[]): Problem =>
  new Problem('not-now', {
    detail: { key: 'problem.not-now.state' },
    more: { state: docket.state, moves },
  })

/** What a revision changes against another, computed from both. */
export const revisionDiff = (from: Revision | null, to: Pick<Revision, 'offer'>) => {
  const before = new Map((from?.offer.lines ?? []).map((l) => [l.step, l]))
  const after = new Map(to.offer.lines.map((l) => [l.step, l]))
  return {
    added: to.offer.lines.filter((l) => !before.has(l.step)).map((l) => l.step),
    removed: (from?.offer.lines ?? []).filter((l) => !after.has(l.step)).map((l) => l.step),
    changed: to.offer.lines.flatMap((l) => {
      const was = before.get(l.step)
      if (!was || (was.amount === l.amount && was.minutes === l.minutes)) return []
      return [
        {
          step: l.step,
          amount: { from: was.amount, to: l.amount },
          minutes: { from: was.minutes, to: l.minutes },
        },
      ]
    }),
    total: { from: from?.offer.total ?? null, to: to.offer.total },
  }
}

export type RevisionGiven = {
  readonly adjustments: readonly Adjustment[]
  readonly message?: string | undefined
  readonly validDays?: number | undefined
  /** Asked beforehand, with tax, minor units; absent: the studio's share of the total. */
  readonly deposit?: number | undefined
  /** Ways the customer chooses between; none, or two or three. */
  readonly options?: readonly OptionTyped[] | undefined
  readonly optionAt?: OptionPointer | undefined
}

/** Makes the next revision of the quote from the docket as it stands and the adjustments. */
export const revise = async (call: Any, desk: Desk, given: RevisionGiven) => {
  checkMatch(call, desk)
  if (!REVISABLE.has(desk.docket.state)) throw notNow(desk.docket, [])
  const plain = await keepEstimate(
    deskInput(call.studio, call.now, desk, given.adjustments),
    script.version,
    call.now,
  )
  const choice = await keepOptions(
    call,
    desk,
    plain.made.adjusted.applied,
    given.options ?? [],
    given.deposit,
    given.optionAt,
  )
  // With a choice the figures of the revision are those of its first option.
  const { made, digest } = choice?.first ?? plain
  const revision = (desk.docket.revisions.at(-1)?.revision ?? 0) + 1
  const note = given.message ? keepText(call, desk.id, 'message', given.message) : null
  const days = given.validDays ?? call.studio.profile.validDays
  const offer = offerOf(made)
  const least = Math.min(offer.total, ...(choice?.kept.map((o) => o.offer.total) ?? []))
  if (given.deposit !== undefined && given.deposit > least)
    throw invalid([{ pointer: '/deposit', code: 'ERR_TOO_LARGE' }])
  const { terms, taxMillionths, pricesWithTax } = call.studio.profile
  const body = {
    revision,
    digest,
    adjustments: [...plain.made.adjusted.applied],
    dropped: [...plain.made.adjusted.dropped],
    offer: given.deposit === undefined ? offer : { ...offer, deposit: given.deposit },
    validUntil: addDaysText(todayOf(call.studio, call.now), days),
    terms,
    tax: { millionths: taxMillionths, shown: pricesWithTax },
    minutes: {
      low: made.labourMinutes.low,
      likely: made.labourMinutes.likely,
      high: made.labourMinutes.high,
    },
    ready: { people: made.plan.people, days: made.plan.days.length },
    ...(note ? { message: note.ref } : {}),
    ...(choice ? { options: [...choice.kept] } : {}),
  }
  const { writes, docket, placed } = write(call, desk, [{ kind: 'revised', body }], figuresOf(made))
  return {
    made,
    digest,
    docket,
    lines: [...desk.lines, ...placed],
    body,
    diff: revisionDiff(desk.docket.revisions.at(-1) ?? null, body),
    writes: [
      ...writes,
      ...(choice ? choice.writes : [plain.stmt]),
      ...(note ? [insertText(note.row)] : []),
    ],
  }
}

export const revisionOf = (docket: Docket, n: string): Revision => {
  const found = docket.revisions.find((r) => String(r.revision) === n)
  if (!found) throw new Problem('unknown')
  return found
}

/** Sends a revision: a new private link, and a message ready to paste. */
export const send = async (call: Any, desk: Desk, revision: Revision) => {
  checkMatch(call, desk)
  const newest = desk.docket.revisions.at(-1)?.revision
  if (revision.revision !== newest)
    throw new Problem('not-now', {
      detail: { key: 'problem.not-now.other-revision' },
      more: { revision: newest ?? null },
    })
  if (!mayMove(desk.docket.state, 'quoted')) throw notNow(desk.docket, [])
  const { link, access } = await freshLink(call, desk.id, 'quote')
  const lines: Written[] = [{ kind: 'sent', body: { revision: revision.revision } }]
  const { writes, docket } = write(call, desk, lines)
  const outgoing = enqueue({
    id: call.newId(),
    kind: 'quote.sent',
    docket: desk.id,
    payload: { docket: desk.id, revision: revision.revision },
    dedupe: `sent:${desk.id}:${revision.revision}:${docket.rev}`,
    nextAt: call.now,
  })
  const { words } = studioInMoney(call.studio, revision.offer.currency, call.deps.catalogues)
  const totals = revision.options?.map((o) => o.offer.total)
  const amount = (minor: number): string => words.say('message.amount', { amount: minor })
  const message = words.say(totals ? 'message.quote-options' : 'message.quote', {
    studio: call.studio.profile.name,
    reference: desk.docket.reference ?? '',
    until: revision.validUntil,
    link,
    ...(totals
      ? {
          n: totals.length,
          low: amount(Math.min(...totals)),
          high: amount(Math.max(...totals)),
        }
      : { total: amount(revision.offer.total) }),
  })
  return { docket, link, message, writes: [...writes, access, outgoing] }
}
