/** The kind of finding that says paint came away with the film. */
export const FILM_LIFTS = 'film-lifts-paint'

/** Spots at which paint may lift before work on the film stops (a careful bench stops at the first). */
export const LIFTS_BEFORE_ASKING = 1

/** Steps that pull film or lettering. */
export const FILM_STEPS: readonly string[] = ['film-top', 'lettering', 'stickers']

export type FilmJob = {
  readonly findings: readonly { readonly suggests?: string; readonly at: number }[]
  readonly filmAnswers: readonly { readonly go: 'leave' | 'go-on'; readonly at: number }[]
}

export type FilmWord = {
  /** Spots at which paint lifted, in all. */
  readonly lifts: number
  /** 'ask': stop and ask; 'leave': the rest stays on; 'go-on': the owner takes the risk; null: nothing lifted. */
  readonly state: 'ask' | 'leave' | 'go-on' | null
}

/**
 * What holds for the film now. After so many lifted spots since the owner's last word the work stops
 * until the next one; leaving the rest on is always possible and ends it.
 */
export const filmWord = (job: FilmJob, most: number = LIFTS_BEFORE_ASKING): FilmWord => {
  const lifts = job.findings.filter((f) => f.suggests === FILM_LIFTS)
  const last = [...job.filmAnswers].sort((a, b) => a.at - b.at).at(-1)
  const since = lifts.filter((f) => f.at > (last?.at ?? -1)).length
  if (last?.go === 'leave') return { lifts: lifts.length, state: 'leave' }
  if (since >= most) return { lifts: lifts.length, state: 'ask' }
  return { lifts: lifts.length, state: last ? 'go-on' : null }
}
