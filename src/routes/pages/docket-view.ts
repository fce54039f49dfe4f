import type { Adjustment } from '../../docket/kinds'
import type { Line } from '../../docket/line'
import { MOVES } from '../../docket/states'
import { script } from '../../intake/script'
import { paths } from '../../pages/paths'
import type { DocketView, HistoryLine } from '../../pages/studio/docket-view'
import { type Estimated, estimate } from '../../quote/estimate'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import type { Desk } from '../acts/desk'
import { deskInput } from '../acts/estimating'
import { benchFacts, factsOf } from '../acts/facts'
import { movesByHand } from '../acts/moving'
import { offerOf } from '../acts/revising'
import type { Any } from './page'

type Body = Readonly<Record<string, unknown>>

const spoken = (words: Words, key: string, otherwise: string): string =>
  words.has(key) ? words.say(key) : otherwise

/** One line of the docket as a sentence. */
const sentence = (line: Line, words: Words): string => {
  const b = line.body as Body
  const step = (id: unknown): string => spoken(words, `step.${String(id)}`, String(id))
  const panel = (id: unknown): string => spoken(words, `panel.${String(id)}`, String(id))
  switch (line.kind) {
    case 'answered':
    case 'unanswered':
      return words.say(`line.${line.kind}`, {
        question: spoken(words, `q.${String(b.question)}.prompt`, String(b.question)),
      })
    case 'submitted':
      return words.say('line.submitted', { reference: String(b.reference) })
    case 'moved':
      return words.say('line.moved', { state: words.say(`page.state.${String(b.to)}`) })
    case 'revised':
      return words.say('line.revised', {
        revision: Number(b.revision),
        total: words.say('message.amount', { amount: (b.offer as { total: number }).total }),
      })
    case 'sent':
      return words.say('line.sent', { revision: Number(b.revision) })
    case 'decided':
      return words.say(`line.decided.${String(b.decision)}`, { revision: Number(b.revision) })
    case 'dated':
      return words.say('line.dated', { date: String(b.start) })
    case 'began':
    case 'broke-off':
    case 'done':
      return words.say(`line.${line.kind}`, { step: step(b.step) })
    case 'reading':
      return words.say('line.reading', {
        panel: panel(b.panel),
        values: (b.values as readonly number[]).map(String),
      })
    case 'unreadable':
    case 'allowed':
      return words.say(`line.${line.kind}`, { panel: panel(b.panel) })
    case 'polished':
      return words.say('line.polished', {
        panel: panel(b.panel),
        sequence: spoken(words, `sequence.${String(b.sequence)}`, String(b.sequence)),
      })
    case 'found':
      return words.say('line.found', { place: String(b.place) })
    case 'removed':
      return words.say('line.removed', { item: String(b.item) })
    case 'checked':
      return words.say(b.waived ? 'line.waived' : 'line.checked', {
        check: spoken(words, `check.${String(b.check)}`, String(b.check)),
      })
    case 'extra-asked':
      return words.say('line.extra-asked', {
        total: words.say('message.amount', { amount: Number(b.amount) + Number(b.tax) }),
      })
    case 'extra-decided':
      return words.say(`line.extra-decided.${String(b.decision)}`)
    case 'struck':
      return words.say('line.struck', { why: String(b.why) })
    default:
      return words.say(`line.${line.kind}`)
  }
}

/** What somebody typed on a line; undefined for none, or when it was erased. */
const saidOn = (desk: Desk, line: Line): string | undefined => {
  const { text } = line.body as { readonly text?: { readonly text?: string } }
  return text?.text === undefined ? undefined : desk.texts.get(text.text)
}

const history = (desk: Desk, words: Words): readonly HistoryLine[] =>
  desk.lines.map((l) => {
    const struck = desk.docket.struck[l.id]
    const said = saidOn(desk, l)
    return {
      at: new Date(l.at).toISOString(),
      by: l.by,
      text: sentence(l, words),
      ...(said === undefined ? {} : { said }),
      ...(struck === undefined ? {} : { struck }),
    }
  })

/** Why it stands where it stands, as it was typed: by the studio, or by the customer who said no. */
const whyMoved = (desk: Desk): string | null => {
  const { docket, texts } = desk
  if (docket.whyMoved) return texts.get(docket.whyMoved) ?? null
  const last = docket.decisions.at(-1)
  if (docket.state !== 'declined' || !last?.text) return null
  return texts.get(last.text.text) ?? null
}

/** The docket as the studio looks at it, with the figures of these adjustments. */
export const docketView = (
  call: Any,
  desk: Desk,
  adjustments: readonly Adjustment[],
): DocketView => {
  const { words } = call.studio
  const ready = desk.replayed.needed.length === 0 || desk.docket.submittedAt !== null
  const made: Estimated | null = ready
    ? estimate(deskInput(call.studio, call.now, desk, adjustments))
    : null
  const p = desk.people[0]
  const asked = desk.docket.asked
    ? desk.docket.decisions.findLast((d) => d.decision === 'ask')
    : null
  const moves = MOVES[desk.docket.state]
  return {
    id: desk.id,
    rev: desk.docket.rev,
    reference: desk.docket.reference,
    state: desk.docket.state,
    whyMoved: whyMoved(desk),
    car: desk.head?.title ?? '',
    person:
      p?.name && call.who.kind === 'owner'
        ? {
            name: p.name,
            ...(p.email ? { email: p.email } : {}),
            ...(p.phone ? { phone: p.phone } : {}),
          }
        : null,
    facts: call.who.kind === 'owner' ? factsOf(desk, words) : benchFacts(desk, words),
    photos: desk.photos.map((photo) => ({
      photo: photo.id,
      subject: spoken(words, `photo.${photo.subject}`, words.say('photo')),
      src: paths.docketPhoto(desk.id, photo.id),
    })),
    unknowns: made ? made.openPoints.map((o) => words.say(`open.${o.id}`)) : [],
    contradictions: desk.replayed.answered
      .filter(({ question }) => question.id === 'year-check' || question.id === 'system-check')
      .map(({ question, answer }) => answerText(question, answer, words)),
    estimate: made,
    offer: made ? offerOf(made) : null,
    adjustments,
    dropped: made?.adjusted.dropped.map((a) => a as Adjustment) ?? [],
    revisions: desk.docket.revisions,
    question: asked?.text ? (desk.texts.get(asked.text.text) ?? null) : null,
    moves: [
      ...movesByHand(desk.docket.state),
      ...(moves.includes('dated') ? ['dated' as const] : []),
    ],
    history: history(desk, words),
  }
}

/** Prompts by question id, for reasons. */
export const promptOf = (id: string, words: Words): string =>
  script.questions.some((q) => q.id === id) ? words.say(`q.${id}.prompt`) : id
