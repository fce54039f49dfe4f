import type { Revision } from '../../docket/fold'
import type { FieldError, Kept } from '../../pages/frame'
import { paths } from '../../pages/paths'
import { AgreedPage } from '../../pages/quote/agreed-page'
import { MyDataPage } from '../../pages/quote/my-data-page'
import { QuotePage } from '../../pages/quote/quote-page'
import { RecordPage } from '../../pages/quote/record-page'
import type { Estimate } from '../../quote/estimate-types'
import { selectEstimatesOf } from '../../store/estimates'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import { agreedRevision, estimateBehind } from '../acts/agreed'
import { decide, decideExtra, mustAccept, withdraw } from '../acts/deciding'
import { type Desk, deskLoad, openDesk } from '../acts/desk'
import { todayOf } from '../acts/estimating'
import { recordFor } from '../acts/handing-over'
import { eraseMine } from '../acts/my-data'
import { lineText } from '../acts/quote-view'
import { revisionDiff } from '../acts/revising'
import { docketCookie, setCookie } from '../http/cookies'
import { invalid, Problem } from '../http/problem'
import { type Route, route } from '../route'
import { photoViews } from './conversation-view'
import {
  type Any,
  fieldErrors,
  formOf,
  frameOf,
  keptOf,
  onceOf,
  orAgain,
  page,
  seeOther,
  textOf,
} from './page'

const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) => ({
  ...deskLoad(params.id ?? ''),
  estimates: selectEstimatesOf(params.id ?? ''),
})

const AGREED = new Set([
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
    return lineText(line ?? { step }, words)
  }
  return [
    ...diff.added.map((step) => words.say('diff.added', { step: name(step) })),
    ...diff.removed.map((step) => words.say('diff.removed', { step: name(step) })),
    ...diff.changed.map((c) =>
      words.say('diff.changed', { step: name(c.step), from: c.amount.from, to: c.amount.to }),
    ),
    ...(diff.total.from === null || diff.total.from === diff.total.to
      ? []
      : [words.say('diff.total', { from: diff.total.from, to: diff.total.to })]),
  ]
}

const carOf = (desk: Desk): string => desk.head?.title ?? ''
const dayOf = (call: Any, at: number): string => todayOf(call.studio, at)

const quotePage = (
  call: Any,
  desk: Desk,
  sent: Revision,
  estimate: Estimate,
  shown: {
    readonly errors?: readonly FieldError[]
    readonly kept?: Kept
    readonly status?: number
  } = {},
) => {
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
  return page(
    <QuotePage
      frame={frameOf(call, { home: paths.start, who: reference, reference })}
      id={desk.id}
      once={onceOf(call)}
      canDecide={open}
      closed={closed}
      talk={talkOf(call, desk)}
      quote={{
        revision: sent.revision,
        reference,
        car: carOf(desk),
        offer: sent.offer,
        estimate,
        validUntil: sent.validUntil,
        sentOn: dayOf(call, sent.sentAt ?? call.now),
        terms: profile.terms,
        taxMillionths: profile.taxMillionths,
        pricesWithTax: profile.pricesWithTax,
        ...(sent.message ? { message: desk.texts.get(sent.message.text) ?? '' } : {}),
        ...(earlier ? { changes: changeSentences(earlier, sent, words) } : {}),
      }}
      {...(shown.errors ? { errors: shown.errors } : {})}
      {...(shown.kept ? { kept: shown.kept } : {})}
    />,
    shown.status ?? 200,
  )
}

const talkOf = (call: Any, desk: Desk) =>
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

const agreedPage = (call: Any, desk: Desk) => {
  const revision = agreedRevision(desk)
  const { agreed, dated, reference } = desk.docket
  if (!revision || !agreed) return seeOther(paths.range(desk.id))
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
      extras={desk.docket.extras.map((e) => ({
        extra: e.extra,
        text: desk.texts.get(e.text.text) ?? '',
        minutes: e.minutes,
        total: e.amount + e.tax,
        decision: e.decision?.decision ?? null,
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
  )
}

export const quotePageRoutes: readonly Route[] = [
  route({
    id: 'page.quote',
    face: 'page',
    method: 'GET',
    path: '/e/:id/quote',
    rights: 'customer',
    summary: 'The quote, or what was agreed.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      if (desk.docket.handedOver) return seeOther(paths.record(desk.id))
      if (AGREED.has(desk.docket.state)) return agreedPage(call, desk)
      const { sent } = desk.docket
      const behind = estimateBehind(sent, call.loaded.estimates)
      if (!sent || !behind) return seeOther(paths.range(desk.id))
      return quotePage(call, desk, sent, behind)
    },
  }),
  route({
    id: 'page.decide',
    face: 'page',
    method: 'POST',
    path: '/e/:id/quote/decision',
    rights: 'customer',
    summary: 'Accept, ask about or decline the quote.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const { sent } = desk.docket
      const behind = estimateBehind(sent, call.loaded.estimates)
      if (!sent || !behind) return seeOther(paths.range(desk.id))
      return orAgain(
        () => {
          const decision = form.get('decision')
          if (decision !== 'accept' && decision !== 'ask' && decision !== 'decline')
            throw invalid([{ pointer: '/decision', code: 'ERR_REQUIRED' }])
          const done = decide(
            call,
            desk,
            {
              decision,
              revision: Number(form.get('revision') ?? 0),
              name: textOf(form, 'name')?.slice(0, 200),
              acknowledged: form.all('acknowledged[]'),
              text: textOf(form, 'text')?.slice(0, 2000),
            },
            mustAccept(behind),
          )
          return seeOther(paths.quote(desk.id), { writes: done.writes })
        },
        (problem) =>
          quotePage(call, desk, sent, behind, {
            errors: fieldErrors(call, problem),
            kept: keptOf(form),
            status: 422,
          }),
      )
    },
  }),
  route({
    id: 'page.extra.decide',
    face: 'page',
    method: 'POST',
    path: '/e/:id/extras/:extra/decision',
    rights: 'customer',
    summary: 'Agree to or refuse extra work.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const form = formOf(call)
      const decision = form.get('decision') === 'agree' ? 'agree' : 'refuse'
      const name = textOf(form, 'name')?.slice(0, 200) ?? desk.people[0]?.name ?? ''
      const done = decideExtra(call, desk, call.params.extra ?? '', { decision, name }, 'link')
      return seeOther(paths.quote(desk.id), { writes: done.writes })
    },
  }),
  route({
    id: 'page.withdraw',
    face: 'page',
    method: 'POST',
    path: '/e/:id/withdrawal',
    rights: 'customer',
    summary: 'Take the enquiry back.',
    body: 'form',
    answers: { 303: null },
    again: true,
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      return seeOther(paths.data(desk.id), { writes: withdraw(call, desk).writes })
    },
  }),
  route({
    id: 'page.record',
    face: 'page',
    method: 'GET',
    path: '/e/:id/record',
    rights: 'customer',
    summary: 'The record of what was done.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const revision = agreedRevision(desk)
      const behind = estimateBehind(revision, call.loaded.estimates)
      const found = recordFor(call, desk, behind, revision)
      const reference = desk.docket.reference ?? ''
      const named = behind?.steps.flatMap((s) => (s.name ? [[s.id, s.name] as const] : [])) ?? []
      return page(
        <RecordPage
          frame={frameOf(call, { home: paths.start, who: reference, reference })}
          reference={reference}
          car={carOf(desk)}
          handedOverOn={found.date}
          record={found.record}
          names={Object.fromEntries(named)}
          quoted={{ total: revision?.offer.total ?? 0 }}
          account={{
            net: found.account.net,
            tax: found.account.tax,
            total: found.account.total,
            ...(found.account.paid === null ? {} : { paid: found.account.paid }),
          }}
          findings={desk.docket.bench.findings.map(
            (f) => `${f.place}: ${desk.texts.get(f.text.text) ?? ''}`,
          )}
          open={found.open}
        />,
      )
    },
  }),
  route({
    id: 'page.data',
    face: 'page',
    method: 'GET',
    path: '/e/:id/data',
    rights: 'customer',
    summary: 'Everything the customer gave.',
    answers: { 200: 'other' },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      const { words } = call.studio
      return page(
        <MyDataPage
          frame={frameOf(call, { home: paths.start })}
          id={desk.id}
          answers={desk.replayed.answered.map((a) => ({
            prompt: words.say(`q.${a.question.id}.prompt`),
            answer: answerText(a.question, a.answer, words),
          }))}
          photos={photoViews(desk, words)}
          typed={talkOf(call, desk).map((t) => ({
            label: words.say(`page.talk.${t.from}`),
            text: t.text,
          }))}
          once={onceOf(call)}
          canErase
          canWithdraw={['received', 'look-over', 'quoted', 'agreed'].includes(desk.docket.state)}
        />,
      )
    },
  }),
  route({
    id: 'page.erase',
    face: 'page',
    method: 'POST',
    path: '/e/:id/data/erasure',
    rights: 'customer',
    summary: 'Delete what tells who the customer is.',
    body: 'form',
    answers: { 303: null },
    rate: { name: 'decide', perMinute: 120 },
    load,
    act: (call) => {
      const desk = openDesk(call.loaded)
      if (formOf(call).get('sure') === null) return seeOther(paths.data(desk.id))
      if (call.who.kind !== 'customer') throw new Problem('not-yours')
      const gone = setCookie(docketCookie(desk.id, call.secure), '', {
        secure: call.secure,
        seconds: 0,
      })
      return seeOther(paths.start, { ...eraseMine(call, desk), cookies: [gone] })
    },
  }),
]
