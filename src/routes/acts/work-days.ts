import type { Taken } from '../../quote/plan'

/** One stretch a day: from the first hand laid on it to the last, and the most people at once. */
export const workDays = (work: Taken['work']): Taken['work'] => {
  const days = new Map<string, Taken['work'][number]>()
  for (const w of work) {
    const known = days.get(w.date)
    days.set(
      w.date,
      known === undefined
        ? w
        : {
            date: w.date,
            from: Math.min(known.from, w.from),
            to: Math.max(known.to, w.to),
            people: Math.max(known.people, w.people),
          },
    )
  }
  return [...days.values()]
}
