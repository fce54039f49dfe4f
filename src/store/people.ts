import { eq, type InferSelectModel } from 'drizzle-orm'
import { build, toQuery, toStmt } from './build'
import type { Query, Stmt } from './db'
import { person } from './schema'
import { foldName, foldPhone } from './search-words'

/** Who a docket is about. Lines hold only its id. */
export type Person = Readonly<Omit<InferSelectModel<typeof person>, 'nameSearch' | 'phoneSearch'>>

/** Writes a person, new or not, with the folded words that lists are searched by. */
export const upsertPerson = (row: Person): Stmt => {
  const nameSearch = row.name === null ? null : foldName(row.name)
  const phoneSearch = row.phone === null ? null : foldPhone(row.phone)
  const { id: _, docket: __, ...set } = { ...row, nameSearch, phoneSearch }
  return toStmt(
    build
      .insert(person)
      .values({ ...row, nameSearch, phoneSearch })
      .onConflictDoUpdate({ target: person.id, set }),
  )
}

/** The people of a docket. */
export const selectPeople = (docket: string): Query<Person> => {
  const { stmt, map } = toQuery(
    person,
    build.select().from(person).where(eq(person.docket, docket)),
  )
  return {
    stmt,
    map: (rows) => map(rows).map(({ nameSearch: _, phoneSearch: __, ...rest }) => rest),
  }
}
