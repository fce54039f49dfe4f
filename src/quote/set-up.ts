import type { StudioSettings } from './context'
import type { RunStep } from './needs'
import { meanMinutes } from './plan-of'

/** Minutes of a usual working day, over the days on which the studio works at all. */
const workingDay = (s: StudioSettings): number => {
  const days = s.week
    .map((spans) => spans.reduce((sum, { from, to }) => sum + to - from, 0))
    .filter((minutes) => minutes > 0)
  const all = days.reduce((sum, minutes) => sum + minutes, 0)
  return days.length === 0 ? s.dayCapMinutes : Math.min(s.dayCapMinutes, all / days.length)
}

/**
 * Person-minutes of setting up and putting away, once for every day a person works on the car. They
 * are labour like any other, but belong to no single step.
 */
export const setUpMinutes = (
  runs: readonly RunStep[],
  s: StudioSettings,
  pace: (id: string) => number,
): number => {
  const mean = runs.reduce((sum, run) => sum + run.chance * meanMinutes(run, pace(run.rule.id)), 0)
  const useful = Math.max(60, workingDay(s) - s.setUpMinutesPerDay)
  return mean === 0 ? 0 : s.setUpMinutesPerDay * Math.ceil(mean / useful)
}
