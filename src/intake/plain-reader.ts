import { type Answers, isUnsure } from './answers'
import type { Question } from './question'
import type { Reader } from './reader'

/**
 * Reads answers without recording what was read: for where the conversation stands, which nobody
 * asks the reasons of. Says the same as the recording reader when nothing is chosen for it.
 */
export const plainReader = (answers: Answers): Reader => {
  const asked = new Map<string, boolean>()
  const asks = (q: Question<never>): boolean => {
    const known = asked.get(q.id)
    if (known !== undefined) return known
    const now = q.asked(self)
    asked.set(q.id, now)
    return now
  }
  const value = <T>(q: Question<T>): T | undefined => {
    if (!asks(q as Question<never>)) return undefined
    const a = answers[q.id]
    return a === undefined || isUnsure(a) ? undefined : ((a.value ?? undefined) as T | undefined)
  }
  const self: Reader = {
    value,
    as: (q, seen) => {
      const known = value(q)
      return known === undefined ? undefined : seen(known)
    },
    unsettled: (q) => {
      if (!asks(q as Question<never>)) return false
      const a = answers[q.id]
      return a === undefined || isUnsure(a)
    },
    asks: (q) => asks(q as Question<never>),
  }
  return self
}
