import { and, asc, eq, inArray, or, sql } from 'drizzle-orm'
import { build, toQuery } from './build'
import type { Query } from './db'
import type { Head } from './heads'
import { linesOf, type StoredLine } from './lines'
import { head, line } from './schema'

/** Lines the days of a job are told from; its answers and readings are not among them. */
export const DAY_KINDS = [
  'dated',
  'began',
  'broke-off',
  'done',
  'struck',
  'wanted',
  'supplied',
] as const

/** The one answer the days need: who brings the key of the locking nuts. */
const lockingKey = and(
  eq(line.kind, 'answered'),
  sql`json_extract(${line.body}, '$.question') = 'locking-key'`,
)

const inBay = () => build.select({ docket: head.docket }).from(head).where(eq(head.turn, 'bay'))

/** The heads of every car that has a day and is not handed over. */
export const selectDatedHeads = (): Query<Head> =>
  toQuery(head, build.select().from(head).where(eq(head.turn, 'bay')))

/** Their lines, of these kinds or all, by docket and place. */
export const selectDatedLines = (kinds?: readonly string[]): Query<StoredLine> =>
  linesOf(
    build
      .select()
      .from(line)
      .where(
        and(
          inArray(line.docket, inBay()),
          kinds ? or(inArray(line.kind, [...kinds]), lockingKey) : undefined,
        ),
      )
      .orderBy(asc(line.docket), asc(line.seq)),
  )
