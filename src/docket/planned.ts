import * as z from 'zod'
import { day } from './line-shapes'

const maybe = z.exactOptional
const id = z.string().min(1).max(64)
const minutes = z.int().min(0).max(1_000_000)
const moment = z.strictObject({ date: day, minute: z.int().min(0).max(1440) })
const holds = z.array(z.strictObject({ from: moment, until: moment })).max(400)

const task = z.strictObject({
  id,
  minutes: z.number().min(0).max(1_000_000),
  crewMax: z.union([z.literal(1), z.literal(2)]),
  machine: z.boolean(),
  needs: z.strictObject({ bay: z.boolean(), lift: z.boolean() }),
  after: z
    .array(
      z.strictObject({
        id,
        lag: minutes,
        lagKind: z.enum(['elapsed', 'working']),
        block: z.enum(['bay', 'car']),
      }),
    )
    .max(100),
  pausable: z.boolean(),
  outside: maybe(z.boolean()),
})

/**
 * What a dated job was planned from and what it takes of the studio, so that its days can be held
 * against those of other cars, and reckoned again when it comes out otherwise.
 */
export const planned = z.strictObject({
  tasks: z.array(task).max(400),
  /** Median and eightieth percentile of the labour as shares of its mean. */
  labour: z.strictObject({ median: z.number().min(0), p80: z.number().min(0) }),
  taken: z.strictObject({
    work: z
      .array(
        z.strictObject({
          date: day,
          from: z.int().min(0).max(1440),
          to: z.int().min(0).max(1440),
          people: z.int().min(1).max(6),
        }),
      )
      .max(2000),
    bay: holds,
    lift: holds,
  }),
  /** When it is ready at the mean, by the studio's clock. */
  ready: moment,
  /** Steps by the name the studio gave them. */
  names: maybe(z.record(id, z.string().max(200))),
  /** Work of outside trades, by its line of the quote. */
  trades: maybe(z.record(id, z.string().max(200))),
})
export type Planned = z.infer<typeof planned>
