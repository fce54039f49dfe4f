import * as z from 'zod'
import { offer } from '../../docket/kinds'
import { STATES, TURNS } from '../../docket/states'
import { KINDS } from '../../intake/question'
import { POLISH_LEVELS } from '../../quote/context'
import { SEVERITIES } from '../../quote/rules'

/** Shapes of the answers: they stand in the API description, and tests hold every answer to them. */
const id = z.string()
const text = z.string()
const minor = z.int()
const because = z.array(z.string())
const maybe = z.exactOptional
const params = z.record(z.string(), z.union([z.string(), z.number(), z.array(z.string())]))

export const questionShape = z.strictObject({
  id,
  kind: z.enum(KINDS),
  topic: z.string(),
  stage: z.string(),
  prompt: text,
  why: text,
  how: maybe(text),
  options: maybe(z.array(z.strictObject({ value: z.string(), label: text, hint: maybe(text) }))),
  unit: maybe(z.string()),
  units: maybe(z.array(z.string())),
  min: maybe(z.number()),
  max: maybe(z.number()),
  unsureAllowed: z.boolean(),
  optional: z.boolean(),
})

const answered = z.strictObject({
  question: id,
  value: maybe(z.json()),
  unsure: maybe(z.literal(true)),
  text,
})
const progress = z.strictObject({ answered: z.int(), expected: z.int() })
const rev = z.int()
const state = z.enum(STATES)

export const openedAnswer = z.strictObject({
  id,
  key: z.string(),
  state,
  rev,
  script: z.string(),
  question: questionShape.nullable(),
  progress,
})

export const enquiryAnswer = z.strictObject({
  id,
  state,
  rev,
  script: z.string(),
  reference: maybe(z.string()),
  answers: z.array(answered),
  setAside: z.array(answered),
  question: questionShape.nullable(),
  needed: z.array(z.string()),
  progress,
  link: maybe(z.string()),
  reply: maybe(z.strictObject({ key: z.string(), params, text })),
})

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
const moment = z.strictObject({ date: z.string(), minute: z.int() })

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
  }),
  plan: z.looseObject({
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
      cautions: z.array(z.strictObject({ id, text })),
      after: z.array(z.string()),
      lagMinutes: z.int(),
      text,
    }),
  ),
  couldAdd: z.array(
    z.looseObject({ id, probability: z.number(), minutes: z.int(), price: minor, because, text }),
  ),
  riskNotes: z.array(
    z.looseObject({ id, severity: z.enum(SEVERITIES), because, source: z.string(), text }),
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
      }),
    ),
  }),
  basis: z.strictObject({
    engine: z.string(),
    script: z.string(),
    settingsRev: z.int(),
    today: z.string(),
    digest: maybe(z.string()),
  }),
})
export const estimateAnswer = estimateShape

export const submittedAnswer = z.strictObject({
  reference: z.string(),
  state,
  rev,
  estimate: estimateShape,
})

const diff = z.strictObject({
  added: z.array(z.string()),
  removed: z.array(z.string()),
  changed: z.array(
    z.strictObject({
      step: z.string(),
      amount: z.strictObject({ from: minor, to: minor }),
      minutes: z.strictObject({ from: z.int(), to: z.int() }),
    }),
  ),
  total: z.strictObject({ from: minor.nullable(), to: minor }),
})

export const revisionAnswer = z.looseObject({
  revision: z.int(),
  rev,
  offer,
  validUntil: z.string(),
  diff,
})
export const sentAnswer = z.strictObject({
  revision: z.int(),
  rev,
  state,
  link: z.string(),
  message: z.string(),
})
export const quoteAnswer = z.looseObject({
  reference: z.string().nullable(),
  revision: z.int(),
  state,
  rev,
  offer,
  lines: z.array(z.looseObject({ step: z.string(), text, amount: minor })),
  validUntil: z.string(),
  decide: z.array(z.looseObject({ id, text })),
})
export const stateAnswer = z.looseObject({ state, rev })

export const listAnswer = z.strictObject({
  dockets: z.array(z.looseObject({ id, state, turn: z.enum(TURNS), rev, title: z.string() })),
  next: z.string().nullable(),
})
export const linesAnswer = z.strictObject({
  lines: z.array(z.looseObject({ seq: z.int(), kind: z.string() })),
  rev,
})
export const docketAnswer = z.looseObject({
  id,
  state,
  rev,
  answers: z.array(answered),
  moves: z.array(state),
})
export const sheetAnswer = z.looseObject({
  id,
  state,
  rev,
  steps: z.array(z.looseObject({ id, state: z.string(), text })),
  panels: z.array(z.looseObject({ panel: id, verdict: z.string() })),
  checks: z.array(z.looseObject({ id, state: z.string(), text })),
})
export const benchAnswer = z.strictObject({
  added: z.array(z.string()),
  already: z.array(z.string()),
  rev,
  state,
})
export const extraAnswer = z.looseObject({
  extra: id,
  total: minor,
  within: z.boolean(),
  rev,
  state,
})
export const recordAnswer = z.looseObject({
  date: z.string(),
  panels: z.array(z.looseObject({ panel: id })),
  account: z.looseObject({ total: minor }),
})
export const photoAnswer = z.strictObject({ photo: id, rev })
export const settingsAnswer = z.looseObject({ rev: z.int() })
export const anyAnswer = z.looseObject({})
