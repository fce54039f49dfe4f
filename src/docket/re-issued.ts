import * as z from 'zod'
import { AFTER_NO } from '../jobsheet/polish-word'
import { POLISH_LEVELS } from '../quote/context'
import type { BodyOf } from './kinds'
import type { Line } from './line'
import { id, maybe, minor, text } from './line-shapes'
import { share } from './offer-shape'

/** Measuring shrank the result: what was promised and what can be had, asked before polishing. */
export const reIssued = z.strictObject({
  issue: id,
  revision: z.int().min(1),
  panels: z
    .array(
      z.strictObject({ panel: id, promised: z.enum(POLISH_LEVELS), now: z.enum(POLISH_LEVELS) }),
    )
    .max(40),
  /** Share of the visible marks that goes, as agreed and as expected now; null: none is promised. */
  promised: share.nullable(),
  now: share.nullable(),
  /** The whole price from now on; absent: as agreed. */
  price: maybe(z.strictObject({ net: minor, tax: minor, total: minor })),
  text: maybe(text),
})

/** The customer's word on it, once. */
export const reIssueDecided = z.strictObject({
  issue: id,
  decision: z.enum(['go-on', 'no']),
  /** With a no: what is done instead. */
  instead: maybe(z.enum(AFTER_NO)),
  name: text,
  how: z.enum(['link', 'phone']),
})

export type ReIssue = BodyOf<'re-issued'> & {
  readonly at: number
  readonly by: string
  readonly decision: (BodyOf<'re-issue-decided'> & { readonly at: number }) | null
}

export type ReIssued = {
  /** What measuring shrank, as the customer was asked, oldest first; a word once given stays. */
  readonly reIssues: readonly ReIssue[]
}

/** Folds office lines in their order; struck ones are out already. A later one takes the place of an open one. */
export const foldReIssued = (office: readonly Line[]): ReIssued => {
  const all: ReIssue[] = []
  for (const line of office) {
    if (line.kind === 're-issued') {
      const open = all.findIndex((r) => r.decision === null)
      if (open >= 0) all.splice(open, 1)
      const body = line.body as BodyOf<'re-issued'>
      all.push({ ...body, at: line.at, by: line.by, decision: null })
    }
    if (line.kind === 're-issue-decided') {
      const body = line.body as BodyOf<'re-issue-decided'>
      const i = all.findIndex((r) => r.issue === body.issue)
      const was = all[i]
      if (was && was.decision === null) all[i] = { ...was, decision: { ...body, at: line.at } }
    }
  }
  return { reIssues: all }
}
