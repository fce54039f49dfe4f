import { measureApart } from './bundled'
import type { RulesMeasured } from './rules-measure'
import { atLeast, type BenchSection, shown } from './section'

/** Our notes beside a general rules engine with the same conditions. */
export const rulesSection: BenchSection = {
  id: 'rules',
  title: 'Risk notes beside a general rules engine, json-rules-engine (milliseconds a car)',
  missing: () => null,
  run: async () => {
    const found = await measureApart<RulesMeasured>('rules-measure.ts')
    const ratio = found.engine.p50 / found.ours.p50
    return {
      figures: { ...found, ratio },
      head: ['who', 'p50', 'p99'],
      rows: [
        ['ours, with reasons and weights', shown(found.ours.p50), shown(found.ours.p99)],
        ['the engine, facts worked out before', shown(found.engine.p50), shown(found.engine.p99)],
      ],
      targets: [atLeast(`${found.notes} notes against the engine`, ratio, 8)],
      notes: [`Both raise the same ${found.raised} notes on ${found.cars} cars.`],
    }
  },
}
