import { measureApart } from './bundled'
import type { ScriptMeasured } from './script-measure'
import { atLeast, type BenchSection, shown } from './section'

/** The conversation beside a state-machine library stepping the same questions and gates. */
export const scriptSection: BenchSection = {
  id: 'script',
  title: 'The conversation beside a state-machine library, xstate (milliseconds)',
  missing: () => null,
  run: async () => {
    const found = await measureApart<ScriptMeasured>('script-measure.ts')
    const { half, whole } = found
    const ratio = (m: ScriptMeasured['half']): number => m.machine.p50 / m.ours.p50
    const row = (m: ScriptMeasured['half']) => [
      `${m.answers} answers`,
      shown(m.ours.p50),
      shown(m.ours.p99),
      shown(m.machine.p50),
      shown(m.machine.p99),
      `${shown(ratio(m))} ×`,
      shown(m.machineStep.p50),
    ]
    return {
      figures: { ...found, ratio: { half: ratio(half), whole: ratio(whole) } },
      head: ['stored', 'ours p50', 'p99', 'library p50', 'p99', 'times', 'its last step alone'],
      rows: [row(half), row(whole)],
      targets: [atLeast('the whole script stepped to its end', ratio(whole), 40)],
      notes: [
        `Both ask the same ${whole.answers} of ${found.questions} questions in the same order, and the`,
        'library steps through our own gates. A server that keeps nothing between two requests does',
        'what stands under "library"; one that kept the machine in memory would do its last step alone.',
      ],
    }
  },
}
