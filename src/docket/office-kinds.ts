import * as z from 'zod'
import { adjustment } from './adjustment'
import { day, id, maybe, minor, minutes, text, words } from './line-shapes'
import { measures, offer, quoteOption } from './offer-shape'
import { planned } from './planned'
import { reIssueDecided, reIssued } from './re-issued-kinds'
import { STATES } from './states'

/** Why an enquiry is doubted: a field people do not see, how the form's time stands, or told by the sender. */
export const DOUBTS = ['hidden-field', 'unsigned', 'too-fast', 'too-old', 'told'] as const
export type Doubt = (typeof DOUBTS)[number]

/** What counts where we ask about extra work and nobody answers. */
export const UNANSWERED = ['wait', 'least', 'named'] as const

const answer = z.union([
  z.strictObject({ value: z.json() }),
  z.strictObject({ unsure: z.literal(true) }),
  z.strictObject({ person: id }),
  text,
])

/** Lines written at the desk, by the customer or by the system. */
export const officeKinds = {
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
  /** It may not be from a person: why. Nothing is refused for it; it waits apart. */
  doubted: z.strictObject({ because: z.array(z.enum(DOUBTS)).min(1).max(5) }),
  /** Somebody in the studio says that it is genuine. */
  vouched: z.strictObject({}),
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
    ...measures,
    message: maybe(text),
    /** Ways to do the work that the customer chooses between; the fields above are the first of them. */
    options: maybe(z.array(quoteOption).min(2).max(3)),
  }),
  sent: z.strictObject({ revision: z.int().min(1) }),
  decided: z.strictObject({
    decision: z.enum(['accept', 'decline', 'ask']),
    revision: z.int().min(1),
    name: maybe(text),
    option: maybe(words),
    acknowledged: z.array(words).max(100),
    text: maybe(text),
    /** With a yes: extras up to this much in all, with tax, need no asking; 0: ask every time. */
    extrasLimit: maybe(minor.min(0)),
    /** With a yes: what counts where we ask and nobody answers. */
    unanswered: maybe(z.enum(UNANSWERED)),
    /** Who decides then, where somebody was named. */
    decides: maybe(text),
  }),
  replied: z.strictObject({ text }),
  dated: z.strictObject({
    start: day,
    startMinute: maybe(z.int().min(0).max(1439)),
    people: z.int().min(1).max(6),
    readyLikely: z.string().max(40),
    readyCautious: z.string().max(40),
    planned: maybe(planned),
    /** Moved because these jobs, dated before it, are late. */
    follows: maybe(z.array(id).max(40)),
  }),
  /** Money the studio wrote down as received, or given back; nothing is paid through the program. */
  paid: z.strictObject({
    what: z.enum(['deposit', 'part', 'rest', 'back']),
    amount: minor.min(1),
    on: day,
  }),
  /** The customer was told of these lines, the studio's own way. */
  told: z.strictObject({
    lines: z.array(id).min(1).max(40),
    how: z.enum(['message', 'phone', 'in-person']),
  }),
  'extra-asked': z.strictObject({
    extra: id,
    finding: maybe(id),
    text,
    minutes,
    amount: minor.min(0),
    tax: minor.min(0),
    steps: z.array(words).max(20),
    within: z.boolean(),
    /** What happens on a no, in the studio's words. */
    ifNot: maybe(text),
  }),
  'extra-decided': z.strictObject({
    extra: id,
    decision: z.enum(['agree', 'refuse']),
    name: maybe(text),
    how: maybe(z.enum(['link', 'phone', 'limit'])),
  }),
  're-issued': reIssued,
  're-issue-decided': reIssueDecided,
  'handed-over': z.strictObject({
    mileage: maybe(z.int().min(0)),
    account: z.strictObject({ net: minor, tax: minor, total: minor, paid: maybe(minor) }),
    open: z.array(z.string().max(200)).max(20),
    /** The day the car comes back for what stayed open. */
    returns: maybe(day),
    name: maybe(text),
  }),
  /** The owner's word some days after the hand-over: day 3, day 14, or any other time (0). */
  'told-after': z.strictObject({
    day: z.union([z.literal(0), z.literal(3), z.literal(14)]),
    well: z.boolean(),
    text: maybe(text),
  }),
} as const
