/** A stretch [from, to) on some axis of minutes. */
export type TimeSpan = { readonly from: number; readonly to: number }

/** Spans that touch or overlap made one, in order of start. */
export const joinSpans = (spans: readonly TimeSpan[]): readonly TimeSpan[] => {
  const sorted = [...spans].sort((a, b) => a.from - b.from || a.to - b.to)
  const out: { from: number; to: number }[] = []
  for (const span of sorted) {
    const last = out.at(-1)
    if (last && span.from <= last.to) last.to = Math.max(last.to, span.to)
    else out.push({ from: span.from, to: span.to })
  }
  return out
}
