import { has } from '../../intake/facts/has'
import { wants } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { polishes } from './polish-scope'
import { gaugeReads } from './readable'
import { step } from './step'

/** Readings are worth taking where paint is worked on and a gauge at hand reads its panels. */
const measures = (r: Reader, c: Context): boolean =>
  wants(r, 'paint') && !has(r, dangers, 'matte') && gaugeReads(r, c)

const clean: readonly string[] = [
  'dry',
  'film-top',
  'film-bumper',
  'adhesive',
  'clay',
  'decontamination',
]

export const measuring: readonly StepRule[] = [
  step({
    id: 'references',
    track: 'paint',
    order: 400,
    after: clean,
    source: sourceOf('references'),
    need: (r, c) => (measures(r, c) ? need('references', 1, 'car') : null),
  }),
  step({
    id: 'readings',
    track: 'paint',
    order: 404,
    after: [...clean, 'references'],
    source: sourceOf('readings'),
    need: (r, c) => (measures(r, c) ? need('readings', 1, 'car') : null),
  }),
  step({
    id: 'cold-reading',
    track: 'paint',
    order: 496,
    after: ['panel-wipe'],
    source: sourceOf('cold-reading'),
    // Warm paint and polishing oils both falsify a reading.
    need: (r, c) => (measures(r, c) && polishes(r, c) ? need('cold-reading', 1, 'car') : null),
  }),
]
