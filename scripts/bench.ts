import { cpus } from 'node:os'
import { estimate } from '../src/quote/estimate'
import { identicalInputs } from '../tests/engine/identical-inputs'
import { runScript } from './run-script'

const ROUNDS = 5

/** Milliseconds of each run of `work`, the first round left out as warming up. */
const times = (work: readonly (() => unknown)[]): readonly number[] => {
  const found: number[] = []
  for (let round = 0; round <= ROUNDS; round++) {
    for (const each of work) {
      const began = performance.now()
      each()
      if (round > 0) found.push(performance.now() - began)
    }
  }
  return found.sort((a, b) => a - b)
}

const at = (sorted: readonly number[], share: number): string =>
  `${(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(1)} ms`

/** A developer's measure, not a gate: how long an estimate takes on this machine. */
const main = (): void => {
  console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}`)
  const inputs = identicalInputs()
  const took = times(inputs.map((input) => () => estimate(input)))
  console.log(
    `estimate, ${inputs.length} cars of the corpus × ${ROUNDS}: median ${at(took, 0.5)}, ` +
      `95 % ${at(took, 0.95)}, longest ${at(took, 1)}`,
  )
}

runScript(import.meta.url, main)
