import { existsSync } from 'node:fs'
import { j30File } from '../bench-j30'
import { proveComparisons } from './comparisons'
import { proveCorpus } from './corpus'
import { proveGrowth } from './growth'
import { proveJ30 } from './j30'
import { proveKills } from './kills'
import type { Proof } from './proof'
import { proveReady } from './ready'
import { proveSpread } from './spread'

const always = (): null => null

/** Every proof there is, the shortest first. */
export const proofs = (scale: number): readonly Proof[] => {
  const size = (full: number): number => Math.max(1, Math.round(full * scale))
  return [
    {
      id: 'j30',
      title: 'Scheduling against the public j30 instances (Kolisch and Sprecher 1997)',
      asked: 'no schedule shorter than the proven optimum; mean deviation from it below 1 %',
      missing: () => (existsSync(j30File) ? null : 'the instances are not on this machine'),
      run: proveJ30,
    },
    {
      id: 'ready',
      title: 'Ready times against a simulation',
      asked: 'within half a working day in at least 95 % of the ready times',
      missing: always,
      run: () => proveReady(size(200), 400),
    },
    {
      id: 'comparisons',
      title: 'Beside general tools that do the same work',
      asked:
        'the spread 100 times as fast as a plain Monte Carlo, the notes 8 times as a rules engine, the script 40 times as a state-machine library',
      missing: always,
      run: proveComparisons,
    },
    {
      id: 'corpus',
      title: 'Every estimate of the pair-wise corpus',
      asked:
        'in order, summing up, each line with source and true reasons; not surer for not knowing; no fewer minutes for a worse or larger car',
      missing: always,
      run: () => proveCorpus(Math.max(1, Math.round(1 / scale))),
    },
    {
      id: 'growth',
      title: 'The same requests with ever more dockets',
      asked:
        'what somebody waits for all day takes at most 3 times as long with the most dockets as with the fewest',
      missing: always,
      run: () => proveGrowth([1_000, 10_000, 100_000].map(size)),
    },
    {
      id: 'kills',
      title: 'A server killed while it writes',
      asked: 'no acknowledged line lost, no half batch, a sound file after every kill',
      missing: always,
      run: () => proveKills(size(200)),
    },
    {
      id: 'spread',
      title: 'The spread against a plain Monte Carlo that shares no code with it',
      asked: 'every percentile within 1 %, the mean price within 0.5 %',
      missing: always,
      run: () => proveSpread(size(200), Math.max(50_000, size(1_000_000))),
    },
  ]
}
