import { freeText, person, photo } from './schema'

/** How long it stays: `docket` until the docket is erased, by hand or by itself; else until used up. */
export const keptReasons = ['docket', 'expiry', 'revoked', 'delivered'] as const
export type KeptReason = (typeof keptReasons)[number]

export type PersonalColumn = {
  readonly table: string
  readonly columns: readonly string[]
  /** Whose data it is. */
  readonly whose: 'customer' | 'both' | 'studio'
  readonly purpose: string
  readonly kept: KeptReason
}

/**
 * Every column that may hold personal data: whose, why it is there and how long. The report gives
 * it, erasing empties it, and a test holds it against the schema.
 */
export const personalData: readonly PersonalColumn[] = [
  {
    table: 'person',
    columns: ['name', 'email', 'phone', 'name_search', 'phone_search'],
    whose: 'customer',
    purpose: 'to answer the enquiry, send the quote and hand the car back',
    kept: 'docket',
  },
  {
    table: 'person',
    columns: ['vin', 'plate'],
    whose: 'customer',
    purpose: 'to know the car and its finish, and to recognise it when it comes back',
    kept: 'docket',
  },
  {
    table: 'free_text',
    columns: ['text'],
    whose: 'both',
    purpose: 'what the customer or the studio wrote in their own words',
    kept: 'docket',
  },
  {
    table: 'line',
    columns: ['body'],
    whose: 'both',
    purpose:
      'reasons and names of work, places and things, typed by the studio; the rest is figures',
    kept: 'docket',
  },
  {
    table: 'estimate',
    columns: ['inputs', 'result'],
    whose: 'both',
    purpose: 'names of work the studio added to a quote; the rest is figures',
    kept: 'docket',
  },
  {
    table: 'photo',
    columns: ['subject', 'key'],
    whose: 'customer',
    purpose: 'to judge the paint before the car arrives, and to record the work',
    kept: 'docket',
  },
  {
    table: 'access',
    columns: ['label'],
    whose: 'studio',
    purpose: 'to tell apart the keys and devices that were given out',
    kept: 'revoked',
  },
  {
    table: 'outbox',
    columns: ['payload'],
    whose: 'customer',
    purpose: 'to deliver a message; holds references, no contact data',
    kept: 'delivered',
  },
  {
    table: 'idempotency',
    columns: ['body'],
    whose: 'customer',
    purpose: 'to repeat an answer that was lost on the way; sealed with the caller’s own key',
    kept: 'expiry',
  },
  {
    table: 'rate',
    columns: ['bucket'],
    whose: 'both',
    purpose: 'the address a request came from, to count how many there are',
    kept: 'expiry',
  },
]

/** The columns that can hold no personal data: ids of ours, states, times, figures, the studio’s own. */
export const nobodysData: Readonly<Record<string, readonly string[]>> = {
  head: [
    ...[
      'docket',
      'rev',
      'state',
      'turn',
      'to_tell',
      'sort_at',
      'reference',
      'title',
      'person',
      'received_at',
    ],
    ...['wanted_by', 'job_date', 'ready_date', 'riskiest', 'price_low', 'price_likely'],
    ...['price_high', 'currency', 'doubtful', 'created_at', 'updated_at'],
  ],
  erasing: ['docket'],
  line: ['docket', 'seq', 'id', 'v', 'kind', 'by', 'device', 'n', 'at'],
  person: ['id', 'docket'],
  free_text: ['id', 'docket', 'field'],
  photo: ['id', 'docket', 'mime', 'bytes', 'width', 'height', 'at', 'by'],
  estimate: ['digest', 'engine', 'script', 'settings_rev', 'at'],
  settings: ['rev', 'body', 'by', 'at'],
  access: ['hash', 'kind', 'docket', 'created_at', 'expires_at', 'used_at', 'revoked_at', 'parent'],
  session: ['hash', 'access', 'rights', 'created_at', 'seen_at', 'expires_at'],
  outbox: [
    ...[
      'id',
      'kind',
      'docket',
      'dedupe',
      'attempts',
      'next_at',
      'lease_until',
      'claim',
      'status',
      'at',
    ],
  ],
  idempotency: ['scope', 'key', 'fingerprint', 'status', 'at', 'expires_at'],
  rate: ['window', 'count'],
  feed: ['id', 'hash', 'created_at'],
  hook: ['id', 'url', 'secret', 'old_secret', 'old_until', 'created_at', 'off_at'],
  migration: ['n', 'name', 'hash', 'at'],
}

/** The tables whose rows are removed when a docket is erased; each has a column `docket`. */
export const erasableTables = [person, freeText, photo] as const
