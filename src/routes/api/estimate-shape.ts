import * as z from 'zod'
import { POLISH_LEVELS } from '../../quote/context'
import { SEVERITIES } from '../../quote/rules'

const id = z.string()
const text = z.string()
const minor = z.int()
const because = z.array(z.string())
const maybe = z.exactOptional
const params = z.record(z.string(), z.union([z.string(), z.number(), z.array(z.string())]))

const range = z.strictObject({ low: minor, likely: minor, high: minor, mean: minor })
const three = z.strictObject({
  optimistic: z.number(),
  mode: z.number(),
  pessimistic: z.number(),
})
const phrase = z.strictObject({ key: z.string(), params, text })
const quoteLine = z.strictObject({
  step: z.string(),
  name: maybe(z.string()),
  amount: minor,
  minutes: z.int(),
  byTime: maybe(z.strictObject({ capMinutes: z.int(), capAmount: minor })),
})
/** From the facts in `because` to the figure: a rule, the table row it took, and its source. */
const reasons = maybe(
  z.array(
    z.strictObject({
      rule: z.string(),
      row: maybe(z.record(z.string(), z.union([z.string(), z.number()]))),
      source: z.string(),
    }),
  ),
)
const moment = z.strictObject({ date: z.string(), minute: z.int() })

/** The estimate as the contract shows it. */
export const estimateShape = z.looseObject({
  currency: z.string(),
  price: range,
  labourMinutes: range,
  offer: z.strictObject({
    lines: z.array(quoteLine),
    net: minor,
    tax: minor,
    total: minor,
    chanceEnough: z.number(),
    deposit: minor,
    low: minor,
    likely: minor,
    high: minor,
    because: maybe(because),
    reasons,
  }),
  plan: z.looseObject({
    because: maybe(because),
    reasons,
    people: z.int(),
    days: z.array(z.looseObject({ date: z.string() })),
    readyLikely: z.iso.datetime(),
    readyCautious: z.iso.datetime(),
    readyLikelyLocal: moment,
    readyCautiousLocal: moment,
    elapsedMinutes: z.int(),
    personMinutes: z.int(),
  }),
  scope: z.looseObject({ level: z.enum(POLISH_LEVELS), panels: z.array(z.string()), text }),
  steps: z.array(
    z.looseObject({
      id,
      minutes: three,
      quantity: z.strictObject({ amount: z.number(), unit: z.string() }),
      because,
      reasons,
      cautions: z.array(z.strictObject({ id, text })),
      after: z.array(z.string()),
      lagMinutes: z.int(),
      text,
    }),
  ),
  couldAdd: z.array(
    z.looseObject({
      id,
      probability: z.number(),
      minutes: z.int(),
      price: minor,
      because,
      reasons,
      text,
    }),
  ),
  riskNotes: z.array(
    z.looseObject({ id, severity: z.enum(SEVERITIES), because, reasons, source: z.string(), text }),
  ),
  expectation: z.looseObject({
    removedShare: z.strictObject({ low: z.number(), high: z.number() }).nullable(),
    text,
  }),
  openPoints: z.array(z.looseObject({ id, text })),
  narrowing: z.array(z.looseObject({ question: id, share: z.number() })),
  paint: z.strictObject({
    panels: z.array(
      z.looseObject({
        panel: id,
        topcoat: z.strictObject({ mean: z.number(), sd: z.number() }).nullable(),
        light: z.number(),
        strong: z.number(),
        deepest: z.string().nullable(),
        verdict: z.string(),
        why: z.array(phrase),
        because,
        reasons,
      }),
    ),
    reasons,
  }),
  basis: z.strictObject({
    engine: z.string(),
    script: z.string(),
    settingsRev: z.int(),
    today: z.string(),
    digest: maybe(z.string()),
  }),
})

const sparse = z.looseObject({
  currency: z.string(),
  steps: z.array(z.looseObject({ id, because, text })),
  couldAdd: z.array(z.looseObject({ id, probability: z.number(), because, text })),
  riskNotes: z.array(z.looseObject({ id, severity: z.enum(SEVERITIES), because, text })),
  expectation: z.looseObject({ text }),
  narrowing: z.array(z.strictObject({ question: id, text })),
})

/** What the customer gets of it, by what the studio shows before it has looked. */
export const customerEstimateShape = z.union([
  estimateShape.extend({ shows: z.literal('range') }),
  sparse.extend({
    shows: z.literal('from'),
    offer: z.strictObject({ low: minor }),
    price: maybe(z.never()),
    labourMinutes: maybe(z.never()),
  }),
  sparse.extend({
    shows: z.literal('after-review'),
    offer: maybe(z.never()),
    price: maybe(z.never()),
    plan: maybe(z.never()),
    labourMinutes: maybe(z.never()),
  }),
])
