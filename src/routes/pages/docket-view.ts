import { type Adjustment, type BodyOf, DOUBTS, type Doubt } from '../../docket/kinds'
import type { Line } from '../../docket/line'
import { MOVES } from '../../docket/states'
import { isUnsure } from '../../intake/answers'
import { paths } from '../../pages/paths'
import type {
  DocketView,
  FactView,
  HistoryLine,
  RevisionView,
} from '../../pages/studio/docket-view'
import { type Estimated, estimate } from '../../quote/estimate'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import { adjustmentText } from '../acts/adjustment-text'
import { agreedRevision } from '../acts/agreed'
import { ASKABLE } from '../acts/asking-again'
import { mayCorrect } from '../acts/correcting'
import type { Desk } from '../acts/desk'
import { deskInput } from '../acts/estimating'
import { benchFacts, factsOf } from '../acts/facts'
import { lineText } from '../acts/line-text'
import { movesByHand } from '../acts/moving'
import { offerOf } from '../acts/offer-kept'
import { optionLine } from '../acts/option-views'
import { PLATE } from '../acts/own-questions'
import { studioInMoney } from '../http/studio'
import { inHandView } from './in-hand-view'
import type { Any } from './page'
import { changeSentences } from './quote-render'

const spoken = (words: Words, key: string, otherwise: string): string =>
  words.has(key) ? words.say(key) : otherwise

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
      text: lineText(l, words),
      ...(said === undefined ? {} : { said }),
      ...(struck === undefined ? {} : { struck }),
    }
  })

/** What is wrong after the hand-over, as its owner wrote it, until the studio acts on it. */
const complaint = (desk: Desk): string | null => {
  const last = desk.docket.toldAfter.findLast((t) => !t.well)
  return desk.docket.complained && last?.text ? (desk.texts.get(last.text.text) ?? null) : null
}

/** Why it stands where it stands, as it was typed: by the studio, or by the customer who said no. */
const whyMoved = (desk: Desk): string | null => {
  const { docket, texts } = desk
  if (docket.whyMoved) return texts.get(docket.whyMoved) ?? null
  const last = docket.decisions.at(-1)
  if (docket.state !== 'declined' || !last?.text) return null
  return texts.get(last.text.text) ?? null
}

/** Answers with what became of them: from last time, changed for the customer, asked again. */
const facts = (call: Any, desk: Desk): readonly FactView[] => {
  const { words } = call.studio
  const { corrected, lastTime, askedAgain } = desk.docket
  const all = call.who.kind === 'owner' ? factsOf(desk, words) : benchFacts(desk, words)
  return all.map((f) => {
    const changed = corrected[f.question]
    const why = changed?.text ? (desk.texts.get(changed.text) ?? '') : ''
    return {
      ...f,
      ...(changed ? { corrected: why } : {}),
      ...(lastTime.includes(f.question) ? { lastTime: true } : {}),
      ...(askedAgain.some((a) => a.question === f.question) ? { askedAgain: true } : {}),
    }
  })
}

/** Revisions with what each changes against the one before. */
const revisions = (call: Any, desk: Desk): readonly RevisionView[] =>
  desk.docket.revisions.map((r, i) => {
    const { words } = studioInMoney(call.studio, r.offer.currency, call.deps.catalogues)
    return {
      ...r,
      options: (r.options ?? []).map((o) => optionLine(o, words)),
      changes: i === 0 ? [] : changeSentences(desk.docket.revisions[i - 1] ?? null, r, words),
      totalText: words.say('format.money', { v: r.offer.total }),
      depositText: words.say('format.money', { v: r.offer.deposit }),
    }
  })

/** The ways of the last revision, as the form shows them. */
const optionsInForce = (desk: Desk): DocketView['options'] =>
  desk.docket.revisions.at(-1)?.options?.map((o) => ({
    option: o.option,
    treatment: o.treatment,
    panels: o.panels ?? [],
    text: o.text ? (desk.texts.get(o.text.text) ?? '') : '',
  }))

const ownQuestions = (call: Any, desk: Desk) => {
  const asked = call.studio.profile.ownQuestions ?? []
  const { [PLATE]: _, ...ownAnswers } = desk.docket.ownAnswers
  const plate = {
    id: PLATE,
    prompt: call.studio.words.say('page.open.plate'),
    answer: desk.people[0]?.plate ?? null,
  }
  const gone = Object.entries(ownAnswers).filter(([id]) => !asked.some((q) => q.id === id))
  const rest = [...asked, ...gone.map(([id, a]) => ({ id, prompt: a.prompt }))].map(
    ({ id, prompt }) => {
      const answer = ownAnswers[id]
      return { id, prompt, answer: answer?.text ? (desk.texts.get(answer.text) ?? null) : null }
    },
  )
  return desk.people[0] ? [plate, ...rest] : rest
}

/** What is dated and agreed, for the lead of the page. */
const ahead = (desk: Desk) => {
  const { dated, agreed } = desk.docket
  const revision = agreed ? agreedRevision(desk) : null
  return {
    ...(revision ? { agreedTotal: revision.offer.total } : {}),
    ...(dated
      ? {
          dated: {
            start: dated.start,
            readyLikely: dated.readyLikely,
            readyCautious: dated.readyCautious,
            ...(dated.startMinute === undefined ? {} : { startMinute: dated.startMinute }),
          },
        }
      : {}),
  }
}

/** States in which a car is still to come, or its work still to be done. */
const WAITS = new Set<string>(['agreed', 'dated', 'on-bench', 'held', 'not-brought', 'part-done'])

/** The estimate behind a docket's page; null while too little is known. */
export const madeFor = (
  call: Any,
  desk: Desk,
  adjustments: readonly Adjustment[],
): Estimated | null =>
  desk.replayed.needed.length === 0 || desk.docket.submittedAt !== null
    ? estimate(deskInput(call.studio, call.now, desk, adjustments))
    : null

/** Why it may not be from a person, as far as nobody has vouched for it. */
const docketDoubts = (desk: Desk): readonly Doubt[] =>
  desk.docket.doubtful
    ? DOUBTS.filter((d) =>
        desk.lines.some(
          (l) => l.kind === 'doubted' && (l.body as BodyOf<'doubted'>).because.includes(d),
        ),
      )
    : []

/** The docket as the studio looks at it, with the figures of these adjustments. */
export const docketView = (
  call: Any,
  desk: Desk,
  adjustments: readonly Adjustment[],
): DocketView => {
  const { words } = call.studio
  const made = madeFor(call, desk, adjustments)
  const owner = call.who.kind === 'owner'
  const p = desk.people[0]
  const asked = desk.docket.asked
    ? desk.docket.decisions.findLast((d) => d.decision === 'ask')
    : null
  const moves = MOVES[desk.docket.state]
  const options = optionsInForce(desk)
  const prompt = (id: string): string => spoken(words, `q.${id}.prompt`, id)
  return {
    id: desk.id,
    rev: desk.docket.rev,
    reference: desk.docket.reference,
    state: desk.docket.state,
    whyMoved: whyMoved(desk),
    car: desk.head?.title ?? '',
    ...(p?.plate && owner ? { plate: p.plate } : {}),
    person:
      p?.name && owner
        ? {
            name: p.name,
            ...(p.email ? { email: p.email } : {}),
            ...(p.phone ? { phone: p.phone } : {}),
          }
        : null,
    facts: facts(call, desk),
    photos: desk.photos.map((photo) => ({
      photo: photo.id,
      subject: spoken(words, `photo.${photo.subject}`, words.say('photo')),
      src: paths.docketPhoto(desk.id, photo.id),
    })),
    unknowns: made ? made.openPoints.map((o) => words.say(`open.${o.id}`)) : [],
    unsure: desk.replayed.answered
      .filter(({ answer }) => isUnsure(answer))
      .map(({ question }) => ({ question: question.id, prompt: prompt(question.id) })),
    waiting: desk.docket.askedAgain.map((a) => ({
      prompt: prompt(a.question),
      text: a.text ? (desk.texts.get(a.text) ?? null) : null,
    })),
    contradictions: desk.replayed.answered
      .filter(({ question }) => question.check)
      .map(
        ({ question, answer }) => `${prompt(question.id)} ${answerText(question, answer, words)}`,
      ),
    estimate: made,
    offer: made ? offerOf(made) : null,
    adjustments,
    ...(options ? { options } : {}),
    dropped: (made?.adjusted.dropped ?? []).map((a) => adjustmentText(a, words)),
    revisions: revisions(call, desk),
    question: complaint(desk) ?? (asked?.text ? (desk.texts.get(asked.text.text) ?? null) : null),
    moves: [
      ...movesByHand(desk.docket.state),
      ...(moves.includes('dated') ? ['dated' as const] : []),
    ],
    history: history(desk, words),
    own: owner ? ownQuestions(call, desk) : [],
    ownWork: owner ? (call.studio.profile.ownSteps ?? []).map((s) => s.name) : [],
    doubts: docketDoubts(desk),
    canCorrect: owner && mayCorrect(desk.docket.state),
    canAsk: owner && ASKABLE.includes(desk.docket.state),
    ...ahead(desk),
    ...(made && WAITS.has(desk.docket.state) ? { inHand: inHandView(call, desk, made.steps) } : {}),
  }
}
