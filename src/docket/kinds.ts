import * as z from 'zod'
import { adjustment } from './adjustment'
import { supplied, wanted } from './in-hand'
import { STATES } from './states'

const maybe = z.exactOptional
const id = z.string().min(1).max(64)
const micrometres = z.number().min(0).max(5000)
const minor = z.int()
const minutes = z.int().min(0).max(100_000)
const words = z.string().min(1).max(64)
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/)

export const PROBES = ['magnetic', 'eddy', 'dual', 'ultrasonic'] as const

/** Free text stands in its own erasable table; the line keeps only where. */
const text = z.strictObject({ text: id })

const answer = z.union([
  z.strictObject({ value: z.json() }),
  z.strictObject({ unsure: z.literal(true) }),
  z.strictObject({ person: id }),
  text,
])

export const quoteLine = z.strictObject({
  step: words,
  name: maybe(z.string().max(200)),
  amount: minor,
  minutes,
  byTime: maybe(z.strictObject({ capMinutes: minutes, capAmount: minor })),
})
export type QuoteLine = z.infer<typeof quoteLine>

export const offer = z.strictObject({
  lines: z.array(quoteLine).max(400),
  net: minor,
  tax: minor,
  total: minor,
  low: minor,
  high: minor,
  chanceEnough: z.number().min(0).max(1),
  deposit: minor,
  currency: z.string().length(3),
})
export type Offer = z.infer<typeof offer>

export { type Adjustment, adjustment } from './adjustment'

export const MARKS = ['customer', 'owner', 'bench', 'system'] as const

/** Every kind of line with the shape of its body; the version is 1 until a shape changes. */
export const kinds = {
  opened: z.strictObject({
    from: z.enum(['customer', 'studio']),
    script: words,
    language: z.string().max(20),
    /** The docket of the same car that the first answers were taken over from. */
    like: maybe(id),
  }),
  answered: z.strictObject({
    question: words,
    answer,
    /** Why the studio changed it for the customer. */
    why: maybe(text),
    /** Taken over from an earlier docket of the same car. */
    lastTime: maybe(z.literal(true)),
  }),
  unanswered: z.strictObject({ question: words }),
  'photo-added': z.strictObject({ photo: id, subject: words }),
  'photo-removed': z.strictObject({ photo: id }),
  submitted: z.strictObject({ reference: words, consent: z.literal(true) }),
  estimated: z.strictObject({
    digest: words,
    for: z.enum(['submission', 'revision']),
    revision: maybe(z.int()),
  }),
  moved: z.strictObject({
    to: z.enum(STATES),
    why: maybe(text),
    /** Turned down: who else may help. */
    turn: maybe(text),
    /** The paid inspection that is offered, amount as the customer pays it. */
    lookOver: maybe(z.strictObject({ minutes, amount: minor.min(0) })),
  }),
  're-asked': z.strictObject({ question: words, text: maybe(text) }),
  /** An answer to a question of the studio's own; it changes no figure. */
  'answered-own': z.strictObject({ question: words, prompt: z.string().min(1).max(300), text }),
  revised: z.strictObject({
    revision: z.int().min(1),
    digest: words,
    adjustments: z.array(adjustment).max(200),
    dropped: z.array(adjustment).max(200),
    offer,
    validUntil: day,
    /** The terms as they stood when it was made. */
    terms: maybe(z.string().max(4000)),
    /** The tax it was made with, and whether its range is shown with it. */
    tax: maybe(z.strictObject({ millionths: z.int().min(0), shown: z.boolean() })),
    minutes: z.strictObject({ low: minutes, likely: minutes, high: minutes }),
    ready: z.strictObject({ people: z.int(), days: z.int() }),
    message: maybe(text),
  }),
  sent: z.strictObject({ revision: z.int().min(1) }),
  decided: z.strictObject({
    decision: z.enum(['accept', 'decline', 'ask']),
    revision: z.int().min(1),
    name: maybe(text),
    option: maybe(words),
    acknowledged: z.array(words).max(100),
    text: maybe(text),
  }),
  replied: z.strictObject({ text }),
  dated: z.strictObject({
    start: day,
    startMinute: maybe(z.int().min(0).max(1439)),
    people: z.int().min(1).max(6),
    readyLikely: z.string().max(40),
    readyCautious: z.string().max(40),
  }),
  'checked-in': z.strictObject({
    mileage: maybe(z.int().min(0)),
    fuel: maybe(z.string().max(40)),
    keys: maybe(z.int().min(0).max(20)),
    name: maybe(text),
    notes: maybe(text),
    consents: z.array(z.enum(['drive', 'photos', 'stickers'])).max(3),
  }),
  began: z.strictObject({ step: words }),
  'broke-off': z.strictObject({ step: words, why: maybe(text) }),
  done: z.strictObject({
    step: words,
    minutes: maybe(minutes),
    entered: maybe(z.boolean()),
  }),
  reading: z.strictObject({
    panel: words,
    kind: z.enum(['panel', 'reference']),
    values: z.array(micrometres).min(1).max(50),
    probe: maybe(z.enum(PROBES)),
    overFilm: maybe(z.boolean()),
    when: maybe(z.enum(['before', 'after'])),
    spot: maybe(z.string().max(40)),
  }),
  unreadable: z.strictObject({ panel: words, why: z.string().max(200) }),
  polished: z.strictObject({
    panel: words,
    sequence: words,
    sets: z.int().min(1).max(40),
    machine: maybe(z.string().max(80)),
    pad: maybe(z.string().max(80)),
    abrasive: maybe(z.string().max(80)),
    speed: maybe(z.string().max(40)),
  }),
  allowed: z.strictObject({ panel: words, sequence: words, why: text }),
  found: z.strictObject({
    place: z.string().min(1).max(80),
    text,
    photo: maybe(id),
    suggests: maybe(words),
  }),
  removed: z.strictObject({
    item: z.string().min(1).max(80),
    place: z.string().max(80),
    thickness: maybe(z.string().max(40)),
    stored: maybe(z.string().max(80)),
  }),
  refitted: z.strictObject({ removal: id }),
  checked: z.strictObject({ check: words, waived: maybe(z.boolean()), why: maybe(text) }),
  'extra-asked': z.strictObject({
    extra: id,
    finding: maybe(id),
    text,
    minutes,
    amount: minor.min(0),
    tax: minor.min(0),
    steps: z.array(words).max(20),
    within: z.boolean(),
  }),
  'extra-decided': z.strictObject({
    extra: id,
    decision: z.enum(['agree', 'refuse']),
    name: maybe(text),
    how: maybe(z.enum(['link', 'phone', 'limit'])),
  }),
  struck: z.strictObject({ line: id, why: z.string().min(1).max(300) }),
  noted: z.strictObject({ text }),
  wanted,
  supplied,
  'handed-over': z.strictObject({
    mileage: maybe(z.int().min(0)),
    account: z.strictObject({ net: minor, tax: minor, total: minor, paid: maybe(minor) }),
    open: z.array(z.string().max(200)).max(20),
    name: maybe(text),
  }),
  /** The owner's word some days after the hand-over: day 3, day 14, or any other time (0). */
  'told-after': z.strictObject({
    day: z.union([z.literal(0), z.literal(3), z.literal(14)]),
    well: z.boolean(),
    text: maybe(text),
  }),
} as const
export type LineKind = keyof typeof kinds
export type BodyOf<K extends LineKind> = z.infer<(typeof kinds)[K]>

/** Kinds a bench device may write without a signal; they fold the same in any order of arrival. */
export const BENCH_KINDS = [
  'checked-in',
  'began',
  'broke-off',
  'done',
  'reading',
  'unreadable',
  'polished',
  'allowed',
  'found',
  'removed',
  'refitted',
  'checked',
  'struck',
  'noted',
  'wanted',
  'supplied',
] as const satisfies readonly LineKind[]

export const isBenchKind = (kind: string): boolean =>
  (BENCH_KINDS as readonly string[]).includes(kind)
