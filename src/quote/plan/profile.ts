/**
 * What is free of each resource over time: steps at `time[k]` holding until `time[k + 1]`,
 * the last one without end. Flat typed arrays, as this is the inner loop of every plan.
 */
export type Profile = {
  count: number
  readonly width: number
  readonly time: Int32Array
  readonly free: Int32Array
}

/** A profile for at most `tasks` bookings of resources with the given capacities. */
export const makeProfile = (tasks: number, capacity: readonly number[]): Profile => {
  const slots = 2 * tasks + 2
  const width = capacity.length
  const profile = {
    count: 1,
    width,
    time: new Int32Array(slots),
    free: new Int32Array(slots * width),
  }
  clearProfile(profile, capacity)
  return profile
}

/** Everything free again. */
export const clearProfile = (profile: Profile, capacity: readonly number[]): void => {
  profile.count = 1
  profile.time[0] = 0
  for (let r = 0; r < profile.width; r++) profile.free[r] = capacity[r]!
}

/** Earliest start at or after `from` at which the demand fits for the whole span. */
export const earliestFit = (
  profile: Profile,
  from: number,
  span: number,
  demand: readonly number[],
): number => {
  const { time, free, count, width } = profile
  if (span === 0) return from
  let k = count - 1
  while (time[k]! > from) k--
  let start = from
  for (; k < count; k++) {
    let fits = true
    const base = k * width
    for (let r = 0; r < width; r++) {
      if (free[base + r]! < demand[r]!) {
        fits = false
        break
      }
    }
    if (!fits) start = time[k + 1]!
    else if (k + 1 >= count || time[k + 1]! >= start + span) return start
  }
  throw new Error('demand above capacity')
}

const cutAt = (profile: Profile, at: number): number => {
  const { time, free, width } = profile
  let k = profile.count - 1
  while (time[k]! > at) k--
  if (time[k] === at) return k
  time.copyWithin(k + 1, k, profile.count)
  free.copyWithin((k + 1) * width, k * width, profile.count * width)
  profile.count++
  time[k + 1] = at
  return k + 1
}

/** Takes the demand out of the profile over [start, start + span). */
export const book = (
  profile: Profile,
  start: number,
  span: number,
  demand: readonly number[],
): void => {
  if (span === 0) return
  const first = cutAt(profile, start)
  const last = cutAt(profile, start + span)
  for (let k = first; k < last; k++) {
    for (let r = 0; r < profile.width; r++) profile.free[k * profile.width + r]! -= demand[r]!
  }
}
