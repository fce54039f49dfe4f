import type { Child } from 'hono/jsx'
import type { Offer } from '../docket/kinds'
import { STATES } from '../docket/states'
import { beforeOf } from '../jobsheet/before'
import { suggestionFor } from '../jobsheet/finding-kinds'
import { sheetOf } from '../jobsheet/sheet'
import { DEFAULT_PROFILE } from '../quote/studio-profile'
import { english } from '../words/en'
import { eventWords } from '../words/en/events'
import { stepWords } from '../words/en/steps'
import { type Words, words } from '../words/render'
import type { Assets } from './assets'
import { BenchPage } from './bench/bench-page'
import { HandoverPage } from './bench/handover-page'
import type { Frame } from './frame'
import { ConversationPage } from './intake/conversation-page'
import { LeavePage } from './intake/leave-page'
import { LinkPage } from './intake/link-page'
import type { QuestionView } from './intake/question-view'
import { RangePage } from './intake/range-page'
import { SentPage } from './intake/sent-page'
import { StartPage } from './intake/start-page'
import { ProblemPage } from './problem-page'
import { AgreedPage } from './quote/agreed-page'
import { DayPage } from './quote/day-page'
import { MyDataPage } from './quote/my-data-page'
import { QuotePage } from './quote/quote-page'
import type { OptionView, QuoteView } from './quote/quote-view'
import { RecordPage } from './quote/record-page'
import { sampleBenchMore, sampleReadings } from './sample-bench'
import { sampleEstimate } from './sample-estimate'
import { ApiPage } from './studio/api-page'
import { DevicesPage } from './studio/devices-page'
import { DocketPage } from './studio/docket-page'
import type { DocketView } from './studio/docket-view'
import { ListPage } from './studio/list-page'
import { SettingsPage } from './studio/settings-page'
import { SignInPage } from './studio/sign-in-page'

export const sampleWords: Words = words([english, stepWords, eventWords], {
  language: 'en',
  locale: 'en-IE',
  currency: 'EUR',
  exponent: 2,
})

const photoSrc =
  'data:image/gif;base64,R0lGODlhAQABAIAAAFBQUP///yH5BAAAAAAALAAAAAABAAEAAAICRAEAOw=='

/** Text as a hostile or hurried person may type it; pages must show it as text. */
export type Typed = { readonly name: string; readonly text: string }
const PLAIN: Typed = { name: 'Ines Example', text: 'Old lettering on both doors' }

const q = (id: string, kind: QuestionView['kind'], more: Partial<QuestionView> = {}) => ({
  id,
  kind,
  prompt: sampleWords.say(`q.${id}.prompt`),
  why: sampleWords.say(`q.${id}.why`),
  unsureAllowed: true,
  optional: false,
  ...more,
})

const options = (id: string, values: readonly string[]) =>
  values.map((value) => ({ value, label: sampleWords.say(`q.${id}.o.${value}`) }))

const { offer: e } = sampleEstimate
const offer: Offer = {
  lines: e.lines.map((l) => ({ ...l })),
  net: e.net,
  tax: e.tax,
  total: e.total,
  low: e.low,
  high: e.high,
  chanceEnough: e.chanceEnough,
  deposit: e.deposit,
  currency: 'EUR',
}

const optionOf = (option: string, what: string, said: string | null): OptionView => ({
  option,
  name: `${option.toUpperCase()}. ${what}`,
  said,
  offer,
  days: 2,
  expects: 'We do not polish, so marks in the paint stay as they are.',
  only: ['Light pass by machine'],
  leaves: 'For later: the marks stay, and so does all of the paint.',
  estimate: sampleEstimate,
})

const quoteOf = (t: Typed): QuoteView => ({
  revision: 2,
  reference: 'K7P-3QX',
  car: 'saloon, 1974',
  offer,
  estimate: sampleEstimate,
  validUntil: '2026-07-01',
  sentOn: '2026-06-01',
  terms: t.text,
  extrasSuggested: 10_000,
  taxMillionths: 200_000,
  pricesWithTax: true,
  message: t.text,
  options: [
    optionOf('a', 'One light pass', null),
    optionOf('b', 'Leave the marks as they are', t.text),
  ],
  changes: ['The lettering is by the hour now, at most 3 hours.'],
})

const written = {
  totalText: '€1,290.00',
  depositText: '€258.00',
  options: ['A. One light pass: €1,290.00'],
} as const

const docketOf = (t: Typed): DocketView => ({
  id: 'd1',
  rev: 9,
  reference: 'K7P-3QX',
  state: 'received',
  whyMoved: null,
  car: 'saloon, 1974',
  person: { name: t.name, email: 'ines@example.org', phone: '+353 1 555 0100' },
  facts: [
    {
      question: 'body',
      prompt: 'What kind of vehicle is it?',
      answer: 'Saloon',
      by: 'customer',
      unsure: false,
    },
    { question: 'film-age', prompt: 'How old is it?', answer: t.text, by: 'owner', unsure: true },
  ],
  photos: [{ photo: 'p1', subject: 'left door', src: photoSrc }],
  unknowns: ['Paint of the right side', 'Where the water comes in'],
  contradictions: [t.text],
  doubts: ['hidden-field', 'too-fast'],
  estimate: sampleEstimate,
  offer,
  adjustments: [{ kind: 'minutes', step: 'lettering', minutes: 150, why: t.text }],
  dropped: [],
  revisions: [
    {
      revision: 1,
      offer,
      validUntil: '2026-06-28',
      sentAt: 1_780_000_000_000,
      changes: [],
      ...written,
    },
    { revision: 2, offer, validUntil: '2026-07-01', sentAt: null, changes: [t.text], ...written },
  ],
  question: t.text,
  moves: ['look-over', 'quoted', 'turned-down', 'dated', 'lapsed'],
  history: [
    { at: '2026-06-01T09:15:00Z', by: 'customer', text: 'Opened' },
    { at: '2026-06-01T09:20:00Z', by: 'owner', text: t.text, struck: 'typed twice' },
  ],
})

const benchOf = (t: Typed, current: string | null) => ({
  id: 'd1',
  reference: 'K7P-3QX',
  car: 'saloon, 1974',
  agreement: { limit: 5_000, left: 2_000, unanswered: 'named' as const, decides: t.name },
  sheet: sheetOf(
    sampleEstimate,
    sampleEstimate.paint.panels,
    { steps: { 'check-in': { state: 'done', minutes: 42 } }, checks: {} },
    beforeOf(sampleEstimate.steps),
  ),
  current,
  notes: sampleEstimate.riskNotes,
  ...sampleBenchMore(t, current),
  readings: sampleReadings,
  polished: [],
  findings: [
    { id: 'f1', place: t.name, text: t.text, photoSrc, arrival: false, suggestion: null },
    {
      id: 'f2',
      place: t.name,
      text: t.text,
      panel: 'bonnet',
      arrival: true,
      suggestion: suggestionFor('film-lifts-paint', []),
    },
  ],
  removals: [
    { id: 'r1', item: t.text, place: 'left', at: 0, by: 'bench', refitted: false },
    {
      id: 'r2',
      item: t.text,
      place: 'front left',
      before: 'wheel' as const,
      sort: 'wheel' as const,
      at: 0,
      by: 'bench',
      refitted: false,
    },
  ],
  extras: [
    {
      extra: 'x1',
      finding: null,
      text: t.text,
      minutes: 40,
      total: 4_800,
      within: false,
      decision: null,
    },
  ],
  notesText: [],
  facts: [{ prompt: 'How old is the car?', answer: '1974' }],
  unsent: {
    n: 2,
    why: 'away' as const,
    refused: [{ id: 'q1', what: t.text, why: 'This value is not one we can take.' }],
  },
})

const answered = (t: Typed) => [
  { question: 'body', prompt: 'What kind of vehicle is it?', answer: 'Saloon', reply: t.text },
  { question: 'year', prompt: 'How old is the car?', answer: '1974' },
]

/** Every page with invented contents, by name: for tests, pictures and looking. */
export const samplePages = (assets: Assets, t: Typed = PLAIN): Readonly<Record<string, Child>> => {
  const frame: Frame = { words: sampleWords, assets, studioName: 'Sample studio' }
  const own: Frame = { ...frame, who: t.name, reference: 'K7P-3QX' }
  const studio: Frame = {
    ...frame,
    home: '/studio',
    who: t.name,
    nav: [
      { href: '/studio', text: 'Dockets', here: true },
      { href: '/studio/settings', text: 'Settings' },
    ],
  }
  const talk = {
    frame: own,
    id: 'd1',
    answered: answered(t),
    progress: { answered: 2, expected: 11 },
    once: 'k1',
    canRange: true,
  }
  const ask = (question: QuestionView, more: object = {}) => (
    <ConversationPage {...talk} question={question} {...more} />
  )
  const range = {
    frame: own,
    id: 'd1',
    estimate: sampleEstimate,
    shows: 'range' as const,
    pricesWithTax: true,
    once: 'k1',
    lookOver: { minutes: 45, amount: 6_500 },
  }
  const typedError = [{ field: 'value', message: t.text }]
  return {
    start: <StartPage frame={frame} once="k1" contact={t.text} />,
    choice: ask(q('body', 'choice', { options: options('body', ['saloon', 'estate', 'van']) })),
    multi: ask(q('dangers', 'multi', { options: options('dangers', ['fresh-paint', 'film']) })),
    'yes-no': ask(q('one-owner', 'yesNo')),
    number: ask(q('mileage', 'number', { unit: 'km', units: ['km', 'miles'] }), {
      errors: typedError,
      kept: { value: [t.text], unit: ['miles'] },
    }),
    year: ask(q('year', 'year', { how: t.text })),
    date: ask(q('deadline', 'date')),
    money: ask(q('budget', 'money', { optional: true }), { kept: { value: [t.text] } }),
    text: ask(q('best-thing', 'text'), { errors: typedError, kept: { value: [t.text] } }),
    vin: ask(q('vin', 'vin', { optional: true })),
    photos: ask(q('photos', 'photos', { optional: true, unsureAllowed: false }), {
      photos: [{ photo: 'p1', subject: t.text, src: photoSrc }],
    }),
    contact: ask(q('contact', 'contact', { unsureAllowed: false }), {
      trap: { field: 'homepage', timeField: 'made', time: 't' },
      kept: { name: [t.name] },
    }),
    'all-asked': <ConversationPage {...talk} question={null} setAside={[t.text]} changing />,
    range: <RangePage {...range} />,
    'range-sent': <RangePage {...range} sent={{ reference: 'K7P-3QX' }} />,
    'range-after-review': <RangePage {...range} shows="after-review" needed={{ href: '/e/d1' }} />,
    'range-from': <RangePage {...range} shows="from" />,
    link: <LinkPage frame={frame} action="/in" fields={{ code: t.text }} opens="quote" oneUse />,
    leave: <LeavePage frame={own} id="d1" once="k1" />,
    'leave-link': (
      <LeavePage
        frame={own}
        id="d1"
        once="k1"
        made={{ link: 'https://example.org/l/abc', qrSvg: '<svg></svg>', until: '2026-12-01' }}
      />
    ),
    sent: <SentPage frame={own} id="d1" reference="K7P-3QX" once="k1" />,
    day: (
      <DayPage
        frame={own}
        id="d1"
        once="k1"
        state="held"
        dated={{
          start: '2026-06-08',
          startMinute: 510,
          readyLikely: '2026-06-10',
          readyCautious: '2026-06-11',
        }}
        why={t.text}
        waiting={1}
        done={[{ text: t.text }]}
        lookAgain={[]}
        told={[]}
        replies={[]}
      />
    ),
    'day-after': (
      <DayPage
        frame={own}
        id="d1"
        once="k1"
        state="handed-over"
        why={null}
        waiting={0}
        done={[]}
        lookAgain={[{ after: 3, date: '2026-06-14', told: true }]}
        told={[{ well: false, text: t.text }]}
        replies={[t.text]}
        errors={[{ field: 'well', message: t.text }]}
        kept={{ well: ['no'], text: [t.text] }}
      />
    ),
    problem: (
      <ProblemPage
        frame={frame}
        kind="stale"
        possible={[t.text]}
        typed={[{ label: 'You typed', text: t.text }]}
        back={{ href: '/e/d1', text: 'See it as it is now' }}
        requestId="r-1"
        retryAfterSeconds={30}
      />
    ),
    quote: (
      <QuotePage
        frame={own}
        id="d1"
        quote={quoteOf(t)}
        once="k1"
        canDecide
        talk={[{ from: 'customer', text: t.text, on: '2026-06-02' }]}
        kept={{ name: [t.name] }}
      />
    ),
    agreed: (
      <AgreedPage
        frame={own}
        id="d1"
        reference="K7P-3QX"
        total={129_000}
        deposit={25_800}
        agreedOn="2026-06-02"
        name={t.name}
        dated={{
          start: '2026-06-10',
          startMinute: 480,
          readyLikely: '2026-06-11T11:00:00Z',
          readyCautious: '2026-06-12T11:00:00Z',
        }}
        before={['Bring both keys.']}
        extras={[
          { extra: 'x1', text: t.text, minutes: 40, total: 4_800, decision: null, photoSrc },
        ]}
        once="k1"
      />
    ),
    record: (
      <RecordPage
        returns="2026-06-20"
        kept={{
          kept: [{ what: 'coating-batch', value: t.text }],
          mileage: { in: 88_120, out: 88_123 },
          waived: [{ check: 'clips', why: t.text }],
          refused: [t.text],
        }}
        frame={own}
        reference="K7P-3QX"
        car="saloon, 1974"
        handedOverOn="2026-06-12"
        record={{
          panels: [
            {
              panel: 'bonnet',
              before: 92.4,
              after: 91.2,
              polished: [{ sequence: 'light', sets: 1 }],
              allowance: 1.4,
            },
            { panel: 'roof', before: 96, after: null, polished: [], allowance: null },
          ],
          done: ['check-in', 'lettering'],
          left: [
            { id: 'polish-light', why: 'not-done' },
            { id: 'mould-beyond-limits', why: 'turned-down' },
          ],
          aftercare: [{ id: 'first-wash', date: '2026-06-19' }],
        }}
        quoted={{ total: 129_000 }}
        account={{ net: 100_000, tax: 20_000, total: 120_000, paid: 120_000 }}
        findings={[t.text]}
        open={[t.text]}
      />
    ),
    data: (
      <MyDataPage
        frame={own}
        id="d1"
        answers={answered(t)}
        photos={[]}
        typed={[{ label: 'Asked', text: t.text }]}
        once="k1"
        canErase
        canWithdraw
      />
    ),
    'sign-in': <SignInPage frame={frame} code={t.text} />,
    list: (
      <ListPage
        frame={studio}
        turn="ours"
        counts={{ ours: 3, theirs: 2, bay: 1, closed: 12, apart: 1 }}
        q=""
        rows={STATES.slice(0, 4).map((state, i) => ({
          id: `d${i}`,
          reference: i === 0 ? null : 'K7P-3QX',
          state,
          title: i === 0 ? '' : 'saloon, 1974',
          person: t.name,
          riskiest: t.text,
          low: i === 0 ? null : 98_000,
          high: i === 0 ? null : 156_000,
          plate: i === 0 ? null : '21D1234',
          wish: i === 0 ? null : 'improve',
          wantedBy: '2026-06-12',
          jobDate: null,
          ageMinutes: 130 * (i + 1),
          doubtful: i === 3,
        }))}
        mayOpen
        nextHref="/studio?after=1"
      />
    ),
    docket: (
      <DocketPage
        frame={studio}
        docket={docketOf(t)}
        once="k1"
        trial={{
          rows: [{ what: 'Range', before: t.text, after: '€1,200' }],
          notesNew: [t.text],
          notesGone: [],
        }}
        stale={{ lines: [{ at: '2026-06-01T10:00:00Z', by: 'owner', text: t.text }], both: [] }}
        benchHref="/bench/d1"
        message={{ text: t.text, subject: t.name, email: 'ines@example.org', phone: '+353 1 555' }}
      />
    ),
    settings: (
      <SettingsPage
        frame={studio}
        profile={{ ...DEFAULT_PROFILE, terms: t.text }}
        exponent={2}
        rev={3}
        once="k1"
      />
    ),
    devices: (
      <DevicesPage
        frame={studio}
        devices={[
          {
            id: 'a',
            label: t.name,
            rights: 'owner',
            since: '2026-05-01',
            lastSeen: null,
            here: true,
          },
        ]}
        once="k1"
        link={{ href: 'https://example.org/in/abc' }}
      />
    ),
    api: (
      <ApiPage
        frame={studio}
        version="1"
        openApiHref="/openapi.json"
        routes={[
          {
            id: 'enquiry.open',
            method: 'POST',
            path: '/api/v1/enquiries',
            rights: 'public',
            summary: t.text,
            statuses: [201, 422],
          },
        ]}
      />
    ),
    bench: <BenchPage frame={studio} rev={40} view={benchOf(t, 'lettering')} once="k1" />,
    'bench-done': <BenchPage frame={studio} rev={40} view={benchOf(t, null)} once="k1" />,
    handover: (
      <HandoverPage
        frame={studio}
        id="d1"
        reference="K7P-3QX"
        car="saloon, 1974"
        blockers={[
          { kind: 'check', id: 'torque' },
          { kind: 'refit', id: 'r1', item: t.text },
          { kind: 'extra', id: 'x1' },
        ]}
        account={{
          lines: [{ name: t.text, amount: 100_000 }],
          net: 100_000,
          tax: 20_000,
          total: 120_000,
        }}
        quotedTotal={129_000}
        openText={t.text}
        light={t.text}
        netText="1000.00"
        once="k1"
      />
    ),
  }
}
