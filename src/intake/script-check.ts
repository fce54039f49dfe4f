import type { Answers } from './answers'
import type { Question } from './question'
import { type Reader, reader } from './reader'
import type { Script } from './replay'

/** What `q` itself reads when deciding whether it is asked, as question ids. */
const readBy = (q: Question<unknown>, inner: Reader): readonly string[] => {
  const seen: string[] = []
  const note = <T extends { readonly id: string }>(other: T): T => {
    seen.push(other.id)
    return other
  }
  q.asked({
    value: (other) => inner.value(note(other)),
    as: (other, seen) => inner.as(note(other), seen),
    unsettled: (other) => inner.unsettled(note(other)),
    asks: (other) => inner.asks(note(other)),
  })
  return seen
}

/** Faults of one question by itself: options, weights, limits. */
const ownFaults = (q: Question<unknown>): string[] => {
  const faults: string[] = []
  const listed = q.kind === 'choice' || q.kind === 'multi'
  if (listed !== (q.options !== undefined)) faults.push(`${q.id}: options belong to a choice`)
  if (q.options && new Set(q.options).size !== q.options.length)
    faults.push(`${q.id}: an option twice`)
  if (q.alone?.some((o) => !q.options?.includes(o))) faults.push(`${q.id}: alone names no option`)
  if (q.units && q.unit && !q.units.includes(q.unit)) faults.push(`${q.id}: unit not among units`)
  if (q.likely) {
    const sum = q.likely.reduce((s, [, w]) => s + w, 0)
    if (Math.abs(sum - 1) > 1e-9) faults.push(`${q.id}: weights sum to ${sum}`)
    if (q.likelySource === undefined) faults.push(`${q.id}: weights without a source`)
    if (!q.unsureAllowed) faults.push(`${q.id}: weights but unsure is not allowed`)
    for (const [v] of q.likely)
      for (const o of listed ? (Array.isArray(v) ? v : [v]) : [])
        if (!q.options?.includes(o as string)) faults.push(`${q.id}: likely ${String(o)} unknown`)
  }
  return faults
}

/**
 * Faults of a script as sentences for its editor; empty when it is sound. `samples` are answer
 * sets it is tried on: a question none of them is asked in counts as unreachable, and `asked` may
 * read only questions that stand before it (or are given).
 */
export const checkScript = (script: Script, samples: readonly Answers[]): readonly string[] => {
  const faults = script.questions.flatMap(ownFaults)
  const at = new Map(script.questions.map((q, i) => [q.id, i]))
  if (at.size !== script.questions.length) faults.push('an id stands twice')
  const given = new Set(script.given?.map((q) => q.id))
  const late = new Map<string, Set<string>>()
  const reached = new Set<string>()
  for (const answers of samples) {
    const r = reader(answers)
    script.questions.forEach((q, i) => {
      if (r.asks(q)) reached.add(q.id)
      for (const id of readBy(q, r))
        if (!given.has(id) && (at.get(id) ?? Number.POSITIVE_INFINITY) >= i)
          late.set(q.id, (late.get(q.id) ?? new Set()).add(id))
    })
  }
  script.questions.forEach((q) => {
    for (const id of late.get(q.id) ?? [])
      faults.push(`${q.id}: reads ${id}, which is not asked before it`)
    if (!reached.has(q.id)) faults.push(`${q.id}: never asked`)
  })
  return faults
}
