import { STARTS } from '../../src/quote/plan/task'
import { compareJ30, readJ30 } from '../bench-j30'
import { percent } from './figures'
import type { Found } from './proof'

/** How far the schedules lie from the proven optima, with the starts the program uses. */
export const proveJ30 = (): Found => {
  const found = compareJ30(readJ30(), STARTS)
  return {
    holds: found.below === 0 && found.deviation < 0.01,
    figures: [
      ['instances', String(found.instances)],
      ['optimum met', `${found.met}`],
      ['mean deviation from the optimum', percent(found.deviation)],
      ['schedules shorter than the optimum', String(found.below)],
    ],
  }
}
