import { agreedPrice } from '../../docket/agreed-price'
import { agreementOf } from '../../docket/agreement'
import type { Revision } from '../../docket/fold'
import type { FieldError, Kept } from '../../pages/frame'
import { paths } from '../../pages/paths'
import { AgreedPage } from '../../pages/quote/agreed-page'
import { lineName } from '../../pages/quote/quote-lines'
import { QuotePage } from '../../pages/quote/quote-page'
import type { ReIssueView } from '../../pages/quote/re-issue'
import type { Estimate } from '../../quote/estimate-types'
import { type StoredEstimate, selectEstimatesOf } from '../../store/estimates'
import type { Words } from '../../words/render'
import { agreedRevision } from '../acts/agreed'
import { type Desk, deskLoad } from '../acts/desk'
import { todayOf } from '../acts/estimating'
import { chosenName, optionViews } from '../acts/option-views'
import { revisionDiff } from '../acts/revising'
import type { Problem } from '../http/problem'
import { studioInMoney } from '../http/studio'
import { fromStudio } from './from-studio'
import { type Any, fieldErrors, formOf, frameOf, keptOf, onceOf, page, seeOther } from './page'

export const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

export const AGREED = new Set([
  'agreed',
  'dated',
  'on-bench',
  'held',
  'finished',
  'part-done',
  'uncollected',
  'come-back',
  'not-brought',
])

type Change = ReturnType<typeof revisionDiff>['changed'][number]

/** What a line cost before, in the same share of the whole as now: most lines only move with it. */
const shareOf = (changed: readonly Change[]): number => {
  const shares = changed
    .filter((c) => c.minutes.from === c.minutes.to && c.amount.from > 0)
    .map((c) => c.amount.to / c.amount.from)
    .toSorted((a, b) => a - b)
  return shares[Math.floor(shares.length / 2)] ?? 1
}

/** A line that changed for a reason of its own, by more than three in a hundred beside the others. */
const isOwn = ({ amount, minutes }: Change, share: number): boolean =>
  minutes.from !== minutes.to || Math.abs(amount.to - amount.from * share) * 100 > 3 * amount.from

/** The ways offered, as far as they can be told apart. */
const waysOf = (r: Revision | null): string =>
  JSON.stringify((r?.options ?? []).map((o) => [o.treatment, o.panels ?? [], o.offer.total]))
const sameWays = (from: Revision | null, to: Revision): boolean =>
  from === null || waysOf(from) === waysOf(to)

/** A computed difference as sentences. */
export const changeSentences = (
  from: Revision | null,
  to: Revision,
  words: Words,
): readonly string[] => {
  const diff = revisionDiff(from, to)
  const name = (step: string): string => {
    const line =
      to.offer.lines.find((l) => l.step === step) ?? from?.offer.lines.find((l) => l.step === step)
    return lineName(words, line ?? { step })
  }
  const share = shareOf(diff.changed)
  const own = diff.changed.filter((c) => isOwn(c, share))
  const shared = diff.changed.length - own.length
  return [
    ...diff.added.map((step) => words.say('diff.added', { step: name(step) })),
    ...diff.removed.map((step) => words.say('diff.removed', { step: name(step) })),
    ...own.map((c) =>
      words.say('diff.changed', { step: name(c.step), from: c.amount.from, to: c.amount.to }),
    ),
    ...(shared > 0 ? [words.say('diff.shared', { n: shared })] : []),
    ...(sameWays(from, to) ? [] : [words.say('diff.options')]),
    ...(diff.total.from === null || diff.total.from === diff.total.to
      ? []
      : [words.say('diff.total', { from: diff.total.from, to: diff.total.to })]),
  ]
}

export const carOf = (desk: Desk): string => desk.head?.title ?? ''
const dayOf = (call: Any, at: number): string => todayOf(call.studio, at)

/** The call as this offer is read: in the money it was made in, whatever the settings say now. */
const inMoney = (call: Any, { offer }: Pick<Revision, 'offer'>): Any => ({
  ...call,
  studio: studioInMoney(call.studio, offer.currency, call.deps.catalogues),
})

export const quotePage = (
  given: Any,
  desk: Desk,
  sent: Revision,
  stored: readonly StoredEstimate[],
  estimate: Estimate,
  shown: {
    readonly errors?: readonly FieldError[]
    readonly kept?: Kept
    readonly status?: number
  } = {},
) => {
  const call = inMoney(given, sent)
  const { words, profile } = call.studio
  const earlier = desk.docket.revisions.findLast(
    (r) => r.sentAt !== null && r.revision < sent.revision,
  )
  const lapsed = todayOf(call.studio, call.now) > sent.validUntil
  const open = desk.docket.state === 'quoted' && !lapsed
  const closed = lapsed
    ? words.say('problem.not-now.lapsed')
    : words.say('page.quote.closed', { state: words.say(`page.state.${desk.docket.state}`) })
  const reference = desk.docket.reference ?? ''
  const options = optionViews(sent, stored, desk.texts, words)
  return page(
    <QuotePage
      frame={frameOf(call, { home: paths.start, who: reference, reference })}
      id={desk.id}
      once={onceOf(call)}
      canDecide={open}
      closed={closed}
      talk={talkOf(call, desk)}
      fromStudio={fromStudio(desk, words)}
      quote={{
        revision: sent.revision,
        reference,
        car: carOf(desk),
        offer: sent.offer,
        estimate,
        validUntil: sent.validUntil,
        sentOn: dayOf(call, sent.sentAt ?? call.now),
        terms: sent.terms ?? profile.terms,
        taxMillionths: sent.tax?.millionths ?? profile.taxMillionths,
        pricesWithTax: sent.tax?.shown ?? profile.pricesWithTax,
        ...(sent.message ? { message: desk.texts.get(sent.message.text) ?? '' } : {}),
        ...(options.length > 0 ? { options } : {}),
        extrasSuggested: profile.extrasLimit,
        ...(earlier ? { changes: changeSentences(earlier, sent, words) } : {}),
      }}
      {...(shown.errors ? { errors: shown.errors } : {})}
      {...(shown.kept ? { kept: shown.kept } : {})}
    />,
    shown.status ?? 200,
  )
}

export const talkOf = (call: Any, desk: Desk) =>
  desk.lines.flatMap((l) => {
    const body = l.body as { text?: { text: string }; decision?: string }
    const asked = l.kind === 'decided' && body.decision === 'ask'
    if (!asked && l.kind !== 'replied') return []
    const text = body.text ? (desk.texts.get(body.text.text) ?? '') : ''
    return [
      {
        from: asked ? ('customer' as const) : ('studio' as const),
        text,
        on: dayOf(call, l.at),
      },
    ]
  })

/** What measuring made smaller, as the customer reads it. */
const reIssueCards = (desk: Desk, revision: Revision): readonly ReIssueView[] =>
  desk.docket.reIssues.map((r, i) => {
    const was = agreedPrice(revision.offer, desk.docket.reIssues.slice(0, i)).total
    return {
      issue: r.issue,
      revision: r.revision,
      panels: r.panels,
      promised: r.promised,
      now: r.now,
      price: r.price ? { total: r.price.total, was } : null,
      text: r.text ? (desk.texts.get(r.text.text) ?? null) : null,
      decision: r.decision,
    }
  })

export const agreedPage = (given: Any, desk: Desk, problem?: Problem) => {
  const revision = agreedRevision(desk)
  const { agreed, dated, reference } = desk.docket
  if (!revision || !agreed) return seeOther(paths.range(desk.id))
  const call = inMoney(given, revision)
  return page(
    <AgreedPage
      frame={frameOf(call, { home: paths.start, who: reference ?? '', reference: reference ?? '' })}
      id={desk.id}
      reference={reference ?? ''}
      total={revision.offer.total}
      deposit={revision.offer.deposit}
      agreedOn={dayOf(call, agreed.at)}
      name={agreed.name ? (desk.texts.get(agreed.name.text) ?? '') : ''}
      once={onceOf(call)}
      reIssues={reIssueCards(desk, revision)}
      talk={talkOf(call, desk)}
      {...(problem ? { errors: fieldErrors(call, problem), kept: keptOf(formOf(call)) } : {})}
      chosen={chosenName(desk.docket, call.studio.words)}
      agreement={agreementOf(desk.docket)}
      extras={desk.docket.extras.map((e) => ({
        extra: e.extra,
        text: desk.texts.get(e.text.text) ?? '',
        minutes: e.minutes,
        total: e.amount + e.tax,
        decision: e.decision?.decision ?? null,
        ...(e.ifNot ? { ifNot: desk.texts.get(e.ifNot.text) ?? '' } : {}),
      }))}
      {...(dated
        ? {
            dated: {
              start: dated.start,
              readyLikely: dated.readyLikely.slice(0, 10),
              readyCautious: dated.readyCautious.slice(0, 10),
              ...(dated.startMinute === undefined ? {} : { startMinute: dated.startMinute }),
            },
          }
        : {})}
    />,
    problem ? 422 : 200,
  )
}
