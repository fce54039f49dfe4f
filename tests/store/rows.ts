import type { Head } from '../../src/store/heads'
import type { NewLine } from '../../src/store/lines'
import type { Person } from '../../src/store/people'

/** Rows with fixed values, for tests that care about a few of them. */
export const aHead = (docket: string, some: Partial<Head> = {}): Head => ({
  docket,
  rev: 0,
  state: 'answering',
  turn: 'theirs',
  sortAt: 1_000,
  reference: null,
  title: 'an invented coupé, 1992',
  person: null,
  receivedAt: null,
  wantedBy: null,
  jobDate: null,
  readyDate: null,
  riskiest: null,
  priceLow: null,
  priceLikely: null,
  priceHigh: null,
  currency: null,
  doubtful: false,
  toTell: 0,
  createdAt: 1_000,
  updatedAt: 1_000,
  ...some,
})

export const aLine = (id: string, some: Partial<NewLine> = {}): NewLine => ({
  id,
  v: 1,
  kind: 'answered',
  body: { question: 'body', value: 'coupe' },
  by: 'customer',
  at: 1_000,
  ...some,
})

export const aPerson = (id: string, docket: string, some: Partial<Person> = {}): Person => ({
  id,
  docket,
  name: null,
  email: null,
  phone: null,
  vin: null,
  plate: null,
  ...some,
})
