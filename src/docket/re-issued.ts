import type { BodyOf } from './kinds'
import type { Line } from './line'

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
