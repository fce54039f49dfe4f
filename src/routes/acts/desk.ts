import { type Docket, fold, type HeldAnswer } from '../../docket/fold'
import type { BodyOf, LineKind } from '../../docket/kinds'
import type { NewLine } from '../../docket/line'
import { turnOf } from '../../docket/states'
import type { Answer, Answers } from '../../intake/answers'
import { type Replayed, replay } from '../../intake/replay'
import { script } from '../../intake/script'
import type { Stmt } from '../../store/db'
import { type Head, selectHead, upsertHead } from '../../store/heads'
import { insertLines, type StoredLine, selectLines } from '../../store/lines'
import { type Person, selectPeople } from '../../store/people'
import { type Photo, selectPhotos } from '../../store/photos'
import { type FreeText, selectTexts } from '../../store/texts'
import { Problem } from '../http/problem'
import type { Call, Load, Who } from '../route'
import { changedSince } from './line-text'

/** What every act on one docket loads. */
export const deskLoad = (docket: string) => ({
  lines: selectLines(docket),
  head: selectHead(docket),
  people: selectPeople(docket),
  texts: selectTexts(docket),
  photos: selectPhotos(docket),
})

/** One docket opened: its lines, what they fold to, and the personal parts that stand apart. */
export type Desk = {
  readonly id: string
  readonly lines: readonly StoredLine[]
  readonly docket: Docket
  readonly head: Head | undefined
  readonly people: readonly Person[]
  readonly texts: ReadonlyMap<string, string>
  readonly photos: readonly Photo[]
  readonly answers: Answers
  readonly replayed: Replayed
}

const resolve = (
  held: HeldAnswer,
  question: string,
  people: readonly Person[],
  texts: ReadonlyMap<string, string>,
): Answer => {
  if ('text' in held) return { value: texts.get(held.text) ?? null }
  if (!('person' in held)) return held
  const p = people.find((each) => each.id === held.person)
  if (question === 'vin') return { value: p?.vin ?? null }
  if (!p || p.name === null) return { value: null }
  return {
    value: {
      name: p.name,
      ...(p.email === null ? {} : { email: p.email }),
      ...(p.phone === null ? {} : { phone: p.phone }),
    },
  }
}

const yearOf = (at: number): number => new Date(at).getUTCFullYear()

/** Opens what {@link deskLoad} brought. Throws Problem 404 where there is no such docket. */
export const openDesk = (loaded: {
  readonly lines: readonly StoredLine[]
  readonly head: readonly Head[]
  readonly people: readonly Person[]
  readonly texts: readonly FreeText[]
  readonly photos: readonly Photo[]
}): Desk => {
  const first = loaded.lines[0]
  if (!first) throw new Problem('unknown')
  const docket = fold(loaded.lines)
  const texts = new Map(loaded.texts.map((t) => [t.id, t.text]))
  const answers: Record<string, Answer> = {}
  for (const [question, held] of Object.entries(docket.answers))
    answers[question] = resolve(held, question, loaded.people, texts)
  answers['begun-year'] = { value: yearOf(docket.openedAt) }
  return {
    id: docket.id,
    lines: loaded.lines,
    docket,
    head: loaded.head[0],
    people: loaded.people,
    texts,
    photos: loaded.photos,
    answers,
    replayed: replay(script, answers),
  }
}

export const byOf = (who: Who): 'customer' | 'owner' | 'bench' | 'system' =>
  who.kind === 'nobody' ? 'system' : who.kind

type Typed<K extends LineKind> = { readonly kind: K; readonly body: BodyOf<K> }
export type Written = { [K in LineKind]: Typed<K> }[LineKind]

/** What changes of the head besides what follows from the lines. */
export type HeadChange = Partial<
  Pick<
    Head,
    | 'title'
    | 'person'
    | 'wantedBy'
    | 'riskiest'
    | 'priceLow'
    | 'priceLikely'
    | 'priceHigh'
    | 'currency'
    | 'jobDate'
    | 'readyDate'
  >
>

type AnyCall = Pick<Call<unknown, unknown, Load>, 'now' | 'newId' | 'who' | 'match' | 'studio'>

/**
 * Throws 412 when the caller named another state than there is; the studio is told what was written
 * since (a customer is not: drafts are among it).
 */
export const checkMatch = (
  call: Pick<AnyCall, 'match' | 'studio' | 'who'>,
  { docket, lines }: Pick<Desk, 'docket' | 'lines'>,
): void => {
  if (call.match === null || call.match === docket.rev) return
  const told = call.who.kind === 'owner' || call.who.kind === 'bench'
  const changed = told ? { changed: changedSince(lines, call.match, call.studio.words) } : {}
  throw new Problem('stale', { more: { rev: docket.rev, state: docket.state, ...changed } })
}

/** The list's view of a docket; everything but the change follows from the lines. */
const headOf = (id: string, docket: Docket, was: Head | undefined, change: HeadChange): Head => ({
  docket: id,
  rev: docket.rev,
  state: docket.state,
  turn: turnOf(
    docket.state,
    docket.asked || docket.answeredAgain || docket.complained,
    docket.askedAgain.length > 0,
    docket.doubtful,
  ),
  sortAt: docket.changedAt,
  reference: docket.reference,
  title: was?.title ?? '',
  person: was?.person ?? null,
  receivedAt: docket.submittedAt,
  wantedBy: was?.wantedBy ?? null,
  jobDate: docket.dated?.start ?? null,
  readyDate: docket.dated?.readyLikely.slice(0, 10) ?? null,
  riskiest: was?.riskiest ?? null,
  priceLow: was?.priceLow ?? null,
  priceLikely: was?.priceLikely ?? null,
  priceHigh: was?.priceHigh ?? null,
  currency: was?.currency ?? null,
  doubtful: docket.doubtful,
  createdAt: docket.openedAt,
  updatedAt: docket.changedAt,
  toTell: docket.toTell.length,
  ...change,
})

/** The statements that append lines to a docket, with its head, and the docket as it then stands. */
export const appendLines = (
  id: string,
  before: readonly StoredLine[],
  was: Head | undefined,
  lines: readonly NewLine[],
  change: HeadChange = {},
): {
  readonly writes: readonly Stmt[]
  readonly docket: Docket
  readonly placed: readonly StoredLine[]
} => {
  const rev = before.reduce((most, l) => Math.max(most, l.seq), 0)
  const placed = lines.map((l, i) => ({ ...l, docket: id, seq: rev + 1 + i }))
  const docket = fold([...before, ...placed])
  return {
    docket,
    placed,
    writes: [upsertHead(headOf(id, docket, was, change)), insertLines(id, rev, lines)],
  }
}

/** Office lines stamped with who, when and an id. */
export const stamp = (call: AnyCall, written: readonly Written[]): readonly NewLine[] =>
  written.map(({ kind, body }) => ({
    id: call.newId(),
    v: 1,
    kind,
    body,
    by: byOf(call.who),
    at: call.now,
  }))

/** Appends office lines to an open desk. */
export const write = (
  call: AnyCall,
  desk: Desk,
  written: readonly Written[],
  change: HeadChange = {},
) => appendLines(desk.id, desk.lines, desk.head, stamp(call, written), change)

/** A typed text apart from the line; the line keeps the reference. */
export const keepText = (
  call: AnyCall,
  docket: string,
  field: string,
  text: string,
): { readonly ref: { readonly text: string }; readonly row: FreeText } => {
  const id = call.newId()
  return { ref: { text: id }, row: { id, docket, field, text } }
}
