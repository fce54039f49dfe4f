/** A real car told in public, reduced to facts; kept outside the project. */
export type Case = {
  readonly id: string
  readonly situation: string
  readonly facts: Readonly<Record<string, unknown>>
  readonly reported_outcome: {
    readonly hours_range_num?: readonly [number | null, number | null]
    readonly hours?: unknown
  }
  readonly expected_flags: readonly string[]
  readonly is_single_job: boolean
}

/** What keyword rules read: the situation and the facts, in lower case; never the outcome or what is expected. */
export type Told = {
  readonly all: string
  /** Everything but what is said of film, so that "the film flakes" is not about paint. */
  readonly bare: string
  readonly fact: (name: string) => string
  readonly film: Readonly<Record<string, unknown>> | null
  readonly says: (words: RegExp) => boolean
}

const textOf = (v: unknown): string =>
  v === undefined || v === null
    ? ''
    : typeof v === 'object'
      ? Object.values(v).map(textOf).join('; ')
      : String(v)

export const toldOf = (c: Case): Told => {
  const { film, ...rest } = c.facts
  const there = typeof film === 'object' && film !== null && 'present' in film && film.present
  const bare = [c.situation, textOf(rest)].join(' . ').toLowerCase()
  const all = `${bare} . ${textOf(film).toLowerCase()}`
  return {
    all,
    bare,
    fact: (name) => textOf(c.facts[name]).toLowerCase(),
    film: there ? (film as Readonly<Record<string, unknown>>) : null,
    says: (words) => words.test(all),
  }
}

/** The options whose words are said, in the order of the table. */
export const said = (text: string, table: readonly (readonly [RegExp, string])[]): string[] => [
  ...new Set(table.filter(([words]) => words.test(text)).map(([, option]) => option)),
]

/** The first option whose words are said; undefined when none is. */
export const firstSaid = (
  text: string,
  table: readonly (readonly [RegExp, string])[],
): string | undefined => table.find(([words]) => words.test(text))?.[1]

/** A list when anything was said, else not known. */
export const orUnknown = (list: readonly string[]): readonly string[] | undefined =>
  list.length > 0 ? list : undefined
