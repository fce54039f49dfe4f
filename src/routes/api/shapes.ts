import * as z from 'zod'
import { offer } from '../../docket/kinds'
import { STATES, TURNS } from '../../docket/states'
import { KINDS } from '../../intake/question'
import { customerEstimateShape, estimateShape } from './estimate-shape'

/** Shapes of the answers: they stand in the API description, and tests hold every answer to them. */
const id = z.string()
const text = z.string()
const minor = z.int()
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
  /** What pictures would help with this car, in walking order. */
  subjects: maybe(z.array(z.strictObject({ value: z.string(), label: text, hint: text }))),
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

export const estimateAnswer = estimateShape
export const customerEstimateAnswer = customerEstimateShape
export const linkAnswer = z.strictObject({ link: z.string(), until: z.iso.date() })

export const submittedAnswer = z.strictObject({
  reference: z.string(),
  state,
  rev,
  estimate: customerEstimateShape,
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

export const askedAnswer = z.strictObject({ state, rev, link: z.string(), message: text })
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
const onDay = z.strictObject({ after: z.int(), date: z.iso.date(), told: z.boolean() })
export const dayAnswer = z.strictObject({
  state,
  rev,
  dated: z
    .strictObject({
      start: z.iso.date(),
      startMinute: maybe(z.int()),
      readyLikely: z.iso.date(),
      readyCautious: z.iso.date(),
    })
    .nullable(),
  why: z.string().nullable(),
  waiting: z.int(),
  done: z.array(z.strictObject({ step: z.string(), text })),
  lookAgain: z.array(onDay),
  told: z.array(
    z.strictObject({
      well: z.boolean(),
      day: z.int(),
      at: z.iso.datetime(),
      text: z.string().nullable(),
    }),
  ),
})
export const recordAnswer = z.looseObject({
  date: z.string(),
  panels: z.array(z.looseObject({ panel: id })),
  account: z.looseObject({ total: minor }),
})
export const photoAnswer = z.strictObject({ photo: id, rev })
export const settingsAnswer = z.looseObject({ rev: z.int() })
export const anyAnswer = z.looseObject({})
