import type { Query } from './db'
import type { StoredLine } from './lines'

/** Dockets looked at for what a studio's own work says: the last ones handed over. */
const FINISHED = `select docket from head where state = 'handed-over'
  order by updated_at desc, docket desc limit ?`

/** Lines of the bench's steps and of what was agreed, of the dockets that were handed over last. */
export const selectFinishedLines = (most: number): Query<StoredLine> => ({
  stmt: {
    sql: `select docket, seq, id, v, kind, body, "by", device, n, at from line
      where docket in (${FINISHED})
        and kind in ('began', 'broke-off', 'done', 'struck', 'revised', 'sent', 'decided')
      order by docket, seq`,
    args: [most],
  },
  map: (rows) =>
    rows.map((row) => ({
      docket: String(row.docket),
      seq: Number(row.seq),
      id: String(row.id),
      v: Number(row.v),
      kind: String(row.kind),
      body: JSON.parse(String(row.body)) as unknown,
      by: String(row.by),
      ...(row.device === null ? {} : { device: String(row.device) }),
      ...(row.n === null ? {} : { n: Number(row.n) }),
      at: Number(row.at),
    })),
})

/** What those jobs were planned with: the steps, the range of the labour, and the paces set then. */
export type FinishedPlan = {
  readonly digest: string
  readonly steps: readonly { readonly id: string; readonly expectedMinutes: number }[]
  readonly labour: { readonly low: number; readonly high: number }
  /** Minutes of the labour that belong to no step. */
  readonly setUp: number
  readonly paces: Readonly<Record<string, { readonly pace?: number }>>
}

export const selectFinishedPlans = (most: number): Query<FinishedPlan> => ({
  stmt: {
    sql: `select digest, json_extract(result, '$.steps') as steps,
        json_extract(result, '$.labourMinutes') as labour,
        json_extract(result, '$.setUpMinutes') as set_up,
        json_extract(inputs, '$.settings.steps') as paces
      from estimate where digest in (select json_extract(body, '$.digest') from line
        where kind = 'revised' and docket in (${FINISHED}))`,
    args: [most],
  },
  map: (rows) =>
    rows.map((row) => ({
      digest: String(row.digest),
      steps: JSON.parse(String(row.steps)) as FinishedPlan['steps'],
      labour: JSON.parse(String(row.labour)) as FinishedPlan['labour'],
      setUp: Number(row.set_up ?? 0),
      paces: row.paces === null ? {} : (JSON.parse(String(row.paces)) as FinishedPlan['paces']),
    })),
})
