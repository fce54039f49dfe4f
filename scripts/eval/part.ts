import type { StudioSettings } from '../../src/quote/context'
import { steps } from '../../src/quote/steps'
import { type Case, toldOf } from './case'

/** The part of a job that reported hours are about. */
export type Part = { readonly name: string; readonly holds: (step: string) => boolean }

const machine = new Set(steps.filter((s) => s.machine && s.id !== 'test-spot').map((s) => s.id))
const film: readonly string[] = [
  'film-test-corner',
  'film-top',
  'film-bumper',
  'adhesive',
  'lettering',
]
const leak: readonly string[] = ['moisture-map', 'water-test', 'drains', 'leak-proof']

/** Told hours seldom cover arrival, washing and hand-over; what their words name is compared alone. */
export const partOf = (c: Case): Part | null => {
  const hours = String(c.reported_outcome.hours ?? '').toLowerCase()
  if (/diagnos|finding the leak/.test(hours))
    return { name: 'leak finding', holds: (s) => leak.includes(s) }
  if (/machine (hours|time)|hours of (polish|machine)/.test(hours) && !/clock/.test(hours))
    return { name: 'machine work', holds: (s) => machine.has(s) }
  const named = /film|peel|hood|bonnet|fender|bumper|\bcap\b/.test(hours)
  if (toldOf(c).film !== null && named)
    return { name: 'film and adhesive', holds: (s) => film.includes(s) }
  return null
}

/** As good as no time, and yet done: what was switched off would take what it protects along. */
const NO_TIME = 1e-6

/** Settings in which only the part takes time, without daily set-up. */
export const onlyPart = (settings: StudioSettings, part: Part): StudioSettings => ({
  ...settings,
  setUpMinutesPerDay: 0,
  steps: Object.fromEntries(steps.map((s) => [s.id, { pace: part.holds(s.id) ? 1 : NO_TIME }])),
})
