import {
  and,
  desc,
  eq,
  getTableColumns,
  type InferSelectModel,
  or,
  type SQL,
  sql,
} from 'drizzle-orm'
import { build, rowOf, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { head, line, person } from './schema'
import { foldName, foldPhone, foldPlate } from './search-words'

/** What the lists show of a docket; always derived from its lines. */
export type Head = Readonly<InferSelectModel<typeof head>>

/** A row of the list with its person's name and number plate (null once erased), and the wish. */
export type ListedHead = Head & {
  readonly personName: string | null
  readonly plate: string | null
  readonly wish: string | null
}

const wishOf = sql`(select json_extract(w.body, '$.answer.value') from ${line} w where w.docket = ${head.docket} and w.kind = 'answered' and json_extract(w.body, '$.question') = 'wish' order by w.seq desc limit 1)`

/** Where the next page of a list starts: the last row of the page before. */
export type ListPlace = { readonly sortAt: number; readonly docket: string }

export type ListOptions = {
  readonly turn?: string
  /** Searched in reference, title, person's name, phone and number plate. */
  readonly q?: string
  readonly after?: ListPlace
  readonly limit: number
}

/** Writes the head of a docket, new or not. Put it before the lines of the same batch. */
export const upsertHead = (row: Head): Stmt => {
  const { docket: _, createdAt: __, ...changing } = row
  return toStmt(
    build.insert(head).values(row).onConflictDoUpdate({ target: head.docket, set: changing }),
  )
}

/** The head of one docket. */
export const selectHead = (docket: string): Query<Head> =>
  toQuery(head, build.select().from(head).where(eq(head.docket, docket)))

/** The head with this reference. */
export const selectHeadByReference = (reference: string): Query<Head> =>
  toQuery(head, build.select().from(head).where(eq(head.reference, reference)))

const listed = () =>
  build
    .select({
      ...getTableColumns(head),
      personName: sql`${person.name}`.as('person_name'),
      plate: sql`${person.plate}`.as('plate'),
      wish: wishOf.as('wish'),
    })
    .from(head)
    .leftJoin(person, eq(person.id, head.person))

const textOrNull = (v: unknown): string | null => (v === null || v === undefined ? null : String(v))

const toListed = (query: Parameters<typeof toStmt>[0]): Query<ListedHead> => ({
  stmt: toStmt(query),
  map: (rows) =>
    rows.map((row) => ({
      ...rowOf(head, row),
      personName: textOrNull(row.person_name),
      plate: textOrNull(row.plate),
      wish: textOrNull(row.wish),
    })),
})

/** One docket as the lists show it. */
export const selectListed = (docket: string): Query<ListedHead> =>
  toListed(listed().where(eq(head.docket, docket)))

/** One page of dockets, the latest `sortAt` first. */
export const listHeads = ({ turn, q, after, limit }: ListOptions): Query<ListedHead> =>
  toListed(
    listed()
      .where(
        and(
          turn === undefined ? undefined : eq(head.turn, turn),
          after && sql`(${head.sortAt}, ${head.docket}) < (${after.sortAt}, ${after.docket})`,
          q === undefined ? undefined : matches(q),
        ),
      )
      .orderBy(desc(head.sortAt), desc(head.docket))
      .limit(limit),
  )

/** The dockets of people with the same phone or e-mail: a customer who has been here before. */
export const selectHeadsOfPerson = (found: {
  readonly phone?: string | undefined
  readonly email?: string | undefined
}): Query<Head> => {
  const digits = foldPhone(found.phone ?? '')
  return toQuery(
    head,
    build
      .select(getTableColumns(head))
      .from(head)
      .innerJoin(person, eq(person.id, head.person))
      .where(
        or(
          digits === '' ? sql`0` : eq(person.phoneSearch, digits),
          found.email ? sql`lower(${person.email}) = lower(${found.email})` : undefined,
        ),
      )
      .orderBy(desc(head.sortAt)),
  )
}

const matches = (q: string): SQL | undefined => {
  const digits = foldPhone(q)
  const plate = foldPlate(q)
  return or(
    contains(head.reference, q),
    plate.length < 3 ? undefined : contains(person.plate, plate),
    contains(head.title, q),
    contains(person.nameSearch, foldName(q)),
    // Fewer digits would find a phone number for every year or size that is searched.
    digits.length < 4 ? undefined : contains(person.phoneSearch, digits),
  )
}

const contains = (column: unknown, part: string): SQL =>
  sql`${column} like ${`%${part.replace(/[\\%_]/g, '\\$&')}%`} escape '\\'`

/** How many dockets stand in each group. */
export const countHeads = (): Query<{ readonly turn: string; readonly count: number }> => ({
  stmt: toStmt(
    build
      .select({ turn: head.turn, count: sql`count(*)`.as('count') })
      .from(head)
      .groupBy(head.turn),
  ),
  map: (rows) => rows.map((row) => ({ turn: String(row.turn), count: Number(row.count) })),
})
