import type { Bench } from '../../docket/bench'
import { FINDING_KINDS } from '../../jobsheet/finding-kinds'
import { paths } from '../../pages/paths'
import { MyDataPage } from '../../pages/quote/my-data-page'
import { RecordPage } from '../../pages/quote/record-page'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import { agreedRevision, estimateBehind } from '../acts/agreed'
import { withdraw } from '../acts/deciding'
import { type Desk, openDesk } from '../acts/desk'
import { eraseLoad, eraseMine } from '../acts/erasing'
import { recordFor } from '../acts/handing-over'
import { docketCookie, setCookie } from '../http/cookies'
import { Problem } from '../http/problem'
import { type Route, route } from '../route'
import { photoViews } from './conversation-view'
import { formOf, frameOf, onceOf, page, seeOther } from './page'
import { carOf, load, talkOf } from './quote-render'

/** Why the studio changed an answer, where it did. */
const correctedWhy = (desk: Desk, question: string): { readonly corrected?: string } => {
  const change = desk.docket.corrected[question]
  if (!change) return {}
  return { corrected: change.text ? (desk.texts.get(change.text) ?? '') : '' }
}

type Found = Bench['findings'][number]

/** One finding as the owner reads it: where, what, and that a mechanic should look where it is one's work. */
const foundText = (desk: Desk, f: Found, words: Words): string => {
  const where = f.panel ? `${words.say(`panel.${f.panel}`)}, ${f.place}` : f.place
  const told = `${where}: ${desk.texts.get(f.text.text) ?? ''}`
  const kind = FINDING_KINDS.find((k) => k.id === f.suggests)
  const seen = f.arrival ? ` ${words.say('page.record.at-arrival')}` : ''
  return kind?.mechanic ? `${told} ${words.say('page.record.mechanic')}` : `${told}${seen}`
}

export const afterRoutes: readonly Route[] = [
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
          {...(desk.docket.state === 'handed-over' ? { dayHref: paths.day(desk.id) } : {})}
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
          findings={desk.docket.bench.findings.map((f) => foundText(desk, f, call.studio.words))}
          open={found.open}
          {...(found.returns ? { returns: found.returns } : {})}
          kept={{
            kept: found.kept,
            mileage: found.mileage,
            waived: found.waived,
            refused: found.extras.filter((e) => e.decision === 'refuse').map((e) => e.text),
          }}
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
            ...correctedWhy(desk, a.question.id),
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
    load: ({ params }) => eraseLoad(params.id ?? ''),
    act: (call) => {
      const desk = openDesk(call.loaded)
      if (formOf(call).get('sure') === null) return seeOther(paths.data(desk.id))
      if (call.who.kind !== 'customer') throw new Problem('not-yours')
      const gone = setCookie(docketCookie(desk.id, call.secure), '', {
        secure: call.secure,
        seconds: 0,
      })
      return seeOther(paths.start, {
        ...eraseMine(call, desk, call.loaded.estimates),
        cookies: [gone],
      })
    },
  }),
]
