import { freeText, person, photo } from './schema'

/** How long personal data stays: `docket` until the docket is erased, else until it is used up. */
export const keptReasons = ['docket', 'expiry', 'revoked', 'delivered'] as const
export type KeptReason = (typeof keptReasons)[number]

export type PersonalColumn = {
  readonly table: string
  readonly columns: readonly string[]
  readonly purpose: string
  readonly kept: KeptReason
}

/**
 * Every column that may hold personal data, why it is there and how long. Export reads it, erasing
 * empties it, and a test holds it against the schema.
 */
export const personalData: readonly PersonalColumn[] = [
  {
    table: 'person',
    columns: ['name', 'email', 'phone', 'name_search', 'phone_search'],
    purpose: 'to answer the enquiry, send the quote and hand the car back',
    kept: 'docket',
  },
  {
    table: 'person',
    columns: ['vin', 'plate'],
    purpose: 'to know the car and its finish, and to recognise it when it comes back',
    kept: 'docket',
  },
  {
    table: 'free_text',
    columns: ['text'],
    purpose: 'what the customer or the studio wrote in their own words',
    kept: 'docket',
  },
  {
    table: 'photo',
    columns: ['subject', 'key'],
    purpose: 'to judge the paint before the car arrives, and to record the work',
    kept: 'docket',
  },
  {
    table: 'access',
    columns: ['label'],
    purpose: 'to tell apart the keys and devices that were given out',
    kept: 'revoked',
  },
  {
    table: 'outbox',
    columns: ['payload'],
    purpose: 'to deliver a message; holds references, no contact data',
    kept: 'delivered',
  },
  {
    table: 'idempotency',
    columns: ['body'],
    purpose: 'to repeat an answer that was lost on the way',
    kept: 'expiry',
  },
]

/** The tables whose rows are removed when a docket is erased; each has a column `docket`. */
export const erasableTables = [person, freeText, photo] as const
