import { BenchBody } from '../../pages/bench/bench-page'
import type { BenchView, Unsent } from '../../pages/bench/bench-view'
import { type Carried, foldOf, viewOf } from '../../pages/bench/carried'
import { sheetStepName } from '../../pages/bench/current-step'
import { type FormLine, formLines } from '../../pages/bench/form-lines'
import type { SheetWords } from '../../pages/bench/sheet-words'
import { words as bind, type Words } from '../../words/render'
import { sayFaults } from '../../words/say-faults'
import { ownLines } from './own-lines'
import type { Queued } from './queue'

export type Refusal = {
  readonly errors: readonly { readonly field: string; readonly message: string }[]
  readonly kept: Readonly<Record<string, readonly string[]>>
}

/** The sheet's own sentences before those all sheets share. */
export const wordsOf = (carried: Carried, given: SheetWords): Words =>
  bind([carried.words, given.catalogue], given.formats)

/** What was typed into a line, in its own words. */
const whatOf = ({ kind, body }: Queued, words: Words): string => {
  const values = Object.values(body).map((v) => (typeof v === 'object' ? JSON.stringify(v) : v))
  return [words.has(`line.${kind}`) ? '' : kind, ...values].filter(Boolean).join(' · ')
}

const unsentOf = (all: readonly Queued[], words: Words, why: Unsent['why'] | null): Unsent => ({
  n: why === null ? 0 : all.filter((q) => !q.sent && q.refused === undefined).length,
  why: why ?? 'away',
  refused: all.flatMap((q) =>
    q.refused === undefined
      ? []
      : [
          {
            id: q.id,
            what: whatOf(q, words),
            why: words.has(`page.unsent.${q.refused}`)
              ? words.say(`page.unsent.${q.refused}`)
              : q.refused,
          },
        ],
  ),
})

/** What this device wrote to this docket and the studio did not refuse. */
const ownOf = (carried: Carried, all: readonly Queued[]) =>
  ownLines(
    all.filter((q) => q.docket === carried.id && q.refused === undefined),
    carried.rev,
  )

/** The sheet with what this device wrote. `why` is null while lines are on their way: nothing to tell yet. */
export const sheetView = (
  carried: Carried,
  all: readonly Queued[],
  words: Words,
  step: string | null,
  why: Unsent['why'] | null,
): BenchView => {
  return {
    ...viewOf(carried, step, ownOf(carried, all)),
    unsent: unsentOf(all, words, why),
  }
}

/** The page's body as the server would send it. */
export const sheetMarkup = (
  view: BenchView,
  words: Words,
  once: string,
  refusal: Refusal | null,
): string =>
  String(
    <BenchBody
      frame={{ words, assets: (name) => name, studioName: '' }}
      view={view}
      once={once}
      {...(refusal ?? {})}
    />,
  )

export const titleOf = (view: BenchView, words: Words): string => {
  const step = view.sheet.steps.find((s) => s.id === view.current)
  return step ? sheetStepName(words, step) : words.say('page.steps.all-done')
}

export type Read =
  | { readonly ok: true; readonly lines: readonly FormLine[] }
  | { readonly ok: false; readonly refusal: Refusal }

/** A form of the sheet read as the server reads it. */
export const readForm = (
  fields: FormData,
  carried: Carried,
  queued: readonly Queued[],
  words: Words,
  now: number,
): Read => {
  const typed = [...fields].filter((f): f is [string, string] => typeof f[1] === 'string')
  const all = (name: string) => typed.filter(([n]) => n === name).map(([, value]) => value)
  const form = { get: (name: string) => all(name)[0] ?? null, all }
  const { bench } = foldOf(carried, ownOf(carried, queued))
  const { paint, limits } = carried
  const read = formLines({ paint, bench, now, ...(limits ? { limits } : {}) }, form, words)
  if (read.ok) return { ok: true, lines: read.value }
  const errors = sayFaults(read.error, words).map(({ pointer, message }) => ({
    field: pointer.split('/').at(-1) ?? 'value',
    message,
  }))
  const kept = Object.fromEntries(typed.map(([name]) => [name, all(name)]))
  return { ok: false, refusal: { errors, kept } }
}
