import { integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core'

// The columns as the queries see them. migrations/ makes the tables; a test compares the two.
// Times are ms since 1970 UTC, dates YYYY-MM-DD, money integer minor units.

export const head = sqliteTable('head', {
  docket: text('docket').primaryKey(),
  rev: integer('rev').notNull(),
  state: text('state').notNull(),
  turn: text('turn').notNull(),
  sortAt: integer('sort_at').notNull(),
  reference: text('reference'),
  /** The vehicle in words; no personal data. */
  title: text('title').notNull(),
  person: text('person'),
  receivedAt: integer('received_at'),
  wantedBy: text('wanted_by'),
  jobDate: text('job_date'),
  readyDate: text('ready_date'),
  riskiest: text('riskiest'),
  priceLow: integer('price_low'),
  priceLikely: integer('price_likely'),
  priceHigh: integer('price_high'),
  currency: text('currency'),
  doubtful: integer('doubtful', { mode: 'boolean' }).notNull().default(false),
  createdAt: integer('created_at').notNull(),
  updatedAt: integer('updated_at').notNull(),
  /** Things the customer has still to be told. */
  toTell: integer('to_tell').notNull().default(0),
})

export const erasing = sqliteTable('erasing', { docket: text('docket').primaryKey() })

export const line = sqliteTable(
  'line',
  {
    docket: text('docket').notNull(),
    seq: integer('seq').notNull(),
    id: text('id').notNull(),
    v: integer('v').notNull(),
    kind: text('kind').notNull(),
    body: text('body', { mode: 'json' }).$type<unknown>().notNull(),
    by: text('by').notNull(),
    device: text('device'),
    n: integer('n'),
    at: integer('at').notNull(),
  },
  (t) => [primaryKey({ columns: [t.docket, t.seq] })],
)

export const person = sqliteTable('person', {
  id: text('id').primaryKey(),
  docket: text('docket').notNull(),
  name: text('name'),
  email: text('email'),
  phone: text('phone'),
  vin: text('vin'),
  plate: text('plate'),
  nameSearch: text('name_search'),
  phoneSearch: text('phone_search'),
})

export const freeText = sqliteTable('free_text', {
  id: text('id').primaryKey(),
  docket: text('docket').notNull(),
  field: text('field').notNull(),
  text: text('text').notNull(),
})

export const photo = sqliteTable('photo', {
  id: text('id').primaryKey(),
  docket: text('docket').notNull(),
  subject: text('subject').notNull(),
  mime: text('mime').notNull(),
  bytes: integer('bytes').notNull(),
  width: integer('width'),
  height: integer('height'),
  key: text('key').notNull(),
  at: integer('at').notNull(),
  by: text('by').notNull(),
})

export const estimate = sqliteTable('estimate', {
  digest: text('digest').primaryKey(),
  engine: text('engine').notNull(),
  script: text('script').notNull(),
  settingsRev: integer('settings_rev').notNull(),
  inputs: text('inputs', { mode: 'json' }).$type<unknown>().notNull(),
  result: text('result', { mode: 'json' }).$type<unknown>().notNull(),
  at: integer('at').notNull(),
})

export const settings = sqliteTable('settings', {
  rev: integer('rev').primaryKey(),
  body: text('body', { mode: 'json' }).$type<unknown>().notNull(),
  by: text('by').notNull(),
  at: integer('at').notNull(),
})

export const accessKinds = ['customer', 'bench', 'owner', 'signin'] as const
export type AccessKind = (typeof accessKinds)[number]

export const access = sqliteTable('access', {
  hash: text('hash').primaryKey(),
  kind: text('kind', { enum: accessKinds }).notNull(),
  docket: text('docket'),
  label: text('label').notNull(),
  createdAt: integer('created_at').notNull(),
  expiresAt: integer('expires_at'),
  usedAt: integer('used_at'),
  revokedAt: integer('revoked_at'),
  parent: text('parent'),
})

export const studioRights = ['owner', 'bench'] as const
export type StudioRights = (typeof studioRights)[number]

export const session = sqliteTable('session', {
  hash: text('hash').primaryKey(),
  access: text('access').notNull(),
  rights: text('rights', { enum: studioRights }).notNull(),
  createdAt: integer('created_at').notNull(),
  seenAt: integer('seen_at').notNull(),
  expiresAt: integer('expires_at').notNull(),
})

export const outboxStatuses = ['waiting', 'done', 'dead'] as const
export type OutboxStatus = (typeof outboxStatuses)[number]

export const outbox = sqliteTable('outbox', {
  id: text('id').primaryKey(),
  kind: text('kind').notNull(),
  docket: text('docket'),
  payload: text('payload', { mode: 'json' }).$type<unknown>().notNull(),
  dedupe: text('dedupe').notNull(),
  attempts: integer('attempts').notNull().default(0),
  nextAt: integer('next_at').notNull(),
  leaseUntil: integer('lease_until'),
  claim: text('claim'),
  status: text('status', { enum: outboxStatuses }).notNull().default('waiting'),
  /** When it happened; `next_at` moves with every try. */
  at: integer('at').notNull().default(0),
})

/** Where messages to the studio's own system go. */
export const hook = sqliteTable('hook', {
  id: integer('id').primaryKey(),
  url: text('url').notNull(),
  secret: text('secret').notNull(),
  oldSecret: text('old_secret'),
  oldUntil: integer('old_until'),
  createdAt: integer('created_at').notNull(),
  offAt: integer('off_at'),
})

export const idempotency = sqliteTable(
  'idempotency',
  {
    scope: text('scope').notNull(),
    key: text('key').notNull(),
    fingerprint: text('fingerprint').notNull(),
    status: integer('status'),
    body: text('body'),
    at: integer('at').notNull(),
    expiresAt: integer('expires_at').notNull(),
  },
  (t) => [primaryKey({ columns: [t.scope, t.key] })],
)

export const rate = sqliteTable(
  'rate',
  {
    bucket: text('bucket').notNull(),
    window: integer('window').notNull(),
    count: integer('count').notNull(),
  },
  (t) => [primaryKey({ columns: [t.bucket, t.window] })],
)

/** The studio's one calendar address, by the hash of its secret. */
export const feed = sqliteTable('feed', {
  id: integer('id').primaryKey(),
  hash: text('hash').notNull(),
  createdAt: integer('created_at').notNull(),
})

export const migration = sqliteTable('migration', {
  n: integer('n').primaryKey(),
  name: text('name').notNull(),
  hash: text('hash').notNull(),
  at: integer('at').notNull(),
})
