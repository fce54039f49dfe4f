import { existsSync } from 'node:fs'
import { STARTS } from '../../src/quote/plan/task'
import { compareJ30, j30File, readJ30 } from '../bench-j30'
import { atMost, type BenchSection, shown } from './section'

/** The planner on the public j30 instances with one start, the estimate's own number, and many. */
export const j30Section: BenchSection = {
  id: 'j30',
  title: 'The planner on the 480 public j30 instances (Kolisch and Sprecher 1997)',
  missing: () => (existsSync(j30File) ? null : 'the instances are not on this machine'),
  run: async () => {
    const instances = readJ30()
    compareJ30(instances, 1)
    const found = [1, STARTS, 60].map((starts) => ({ starts, ...compareJ30(instances, starts) }))
    const own = found[1]!
    return {
      figures: { found },
      head: ['starts', 'mean deviation %', 'optimum met', 'below it', 'ms an instance'],
      rows: found.map((f) => [
        String(f.starts),
        shown(100 * f.deviation),
        String(f.met),
        String(f.below),
        shown(f.ms),
      ]),
      targets: [
        atMost(
          `mean deviation with the estimate’s ${own.starts} starts`,
          100 * own.deviation,
          1,
          '%',
        ),
        atMost('schedules shorter than the proven optimum', own.below, 0, ''),
      ],
    }
  },
}
