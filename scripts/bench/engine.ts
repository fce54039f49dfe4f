import { measureApart } from './bundled'
import type { EngineMeasured } from './engine-measure'
import { atLeast, atMost, type BenchSection, shown } from './section'

const PARTS = ['estimate', 'spread', 'plan', 'notes'] as const

/** Spread, plan, notes and the whole estimate, beside a plain Monte Carlo of the same car. */
export const engineSection: BenchSection = {
  id: 'estimate',
  title: 'One estimate, three cars (milliseconds)',
  missing: () => null,
  run: async () => {
    const found = await measureApart<EngineMeasured>('engine-measure.ts')
    const settled = found.settled!
    return {
      figures: found,
      head: ['answers', 'part', 'p50', 'p99', '10^5 plain draws', 'times', 'heap KiB'],
      rows: Object.entries(found).flatMap(([car, m]) =>
        PARTS.map((part) => [
          part === 'estimate' ? `${car}, ${m.steps} steps, ${m.unknowns} open` : '',
          part,
          shown(m[part].p50),
          shown(m[part].p99),
          part === 'estimate' || part === 'spread' ? shown(m.monteCarlo) : '',
          part === 'estimate' || part === 'spread' ? `${m.ratio[part].toFixed(0)} ×` : '',
          part === 'estimate' ? String(Math.round(m.heapBytes / 1024)) : '',
        ]),
      ),
      targets: [
        atMost('spread, settled, p50', settled.spread.p50, 1, 'ms'),
        atMost('estimate, settled, p50', settled.estimate.p50, 2, 'ms'),
        atMost('estimate, settled, p99', settled.estimate.p99, 5, 'ms'),
        ...Object.entries(found).map(([car, m]) =>
          atLeast(`spread against 10^5 plain draws, ${car}`, m.ratio.spread, 100),
        ),
      ],
    }
  },
}
