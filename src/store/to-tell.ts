import { asc, gt, inArray } from 'drizzle-orm'
import { build, toQuery } from './build'
import type { Query } from './db'
import type { Head } from './heads'
import { linesOf, type StoredLine } from './lines'
import { head, line } from './schema'

/** Dockets shown on the list of what is to be told; those that wait longest first. */
const SHOWN = 50

const waiting = () =>
  build
    .select({ docket: head.docket })
    .from(head)
    .where(gt(head.toTell, 0))
    .orderBy(asc(head.updatedAt), asc(head.docket))
    .limit(SHOWN)

/** Heads of dockets whose customer has still to be told something. */
export const selectToTellHeads = (): Query<Head> =>
  toQuery(
    head,
    build
      .select()
      .from(head)
      .where(gt(head.toTell, 0))
      .orderBy(asc(head.updatedAt), asc(head.docket))
      .limit(SHOWN),
  )

/** Their lines, by docket and place. */
export const selectToTellLines = (): Query<StoredLine> =>
  linesOf(
    build
      .select()
      .from(line)
      .where(inArray(line.docket, waiting()))
      .orderBy(asc(line.docket), asc(line.seq)),
  )
