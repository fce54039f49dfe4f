/** A figure as it stands in the JSON. */
export type Figures = { readonly [name: string]: unknown }

/** What a section measured: figures for a program, a table for a reader, and the targets it met. */
export type Measured = {
  readonly figures: Figures
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly targets: readonly Target[]
  /** How to read the table, a sentence or two. */
  readonly notes?: readonly string[]
}

export type Target = {
  readonly what: string
  readonly wanted: string
  readonly found: string
  readonly met: boolean
}

/** One part of `npm run bench`. To add one: write it beside the others and name it in `all.ts`. */
export type BenchSection = {
  readonly id: string
  readonly title: string
  /** Why it cannot run here; null: it can. */
  readonly missing: () => string | null
  readonly run: () => Promise<Measured>
}

const isNumber = (text: string): boolean => /^[-\d]/.test(text)

/** A table with columns as wide as they must be; figures to the right. */
export const tableText = (
  head: readonly string[],
  rows: readonly (readonly string[])[],
): string => {
  const all = [head, ...rows]
  const widths = head.map((_, i) => Math.max(...all.map((row) => (row[i] ?? '').length)))
  return all
    .map((row) =>
      widths
        .map((w, i) => {
          const cell = row[i] ?? ''
          return i > 0 && isNumber(rows[0]?.[i] ?? '') ? cell.padStart(w) : cell.padEnd(w)
        })
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}

/** At most so much: the target with the figure found beside it. */
export const atMost = (what: string, found: number, limit: number, unit: string): Target => ({
  what,
  wanted: `≤ ${limit} ${unit}`,
  found: `${shown(found)} ${unit}`,
  met: found <= limit,
})

/** At least so many times as fast. */
export const atLeast = (what: string, found: number, limit: number): Target => ({
  what,
  wanted: `≥ ${limit} ×`,
  found: `${shown(found)} ×`,
  met: found >= limit,
})

/** Three digits that say something. */
export const shown = (n: number): string =>
  n >= 100 ? n.toFixed(0) : n >= 10 ? n.toFixed(1) : n >= 1 ? n.toFixed(2) : n.toFixed(3)
