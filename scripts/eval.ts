import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Case } from './eval/case'
import { type Score, scoreOf } from './eval/score'
import { runScript } from './run-script'

const percent = (part: number, whole: number): string =>
  whole === 0 ? 'none' : `${part} of ${whole} (${((100 * part) / whole).toFixed(0)} %)`

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b)
  const upper = Math.floor(sorted.length / 2)
  const high = sorted[upper] ?? Number.NaN
  return sorted.length % 2 === 1 ? high : (high + (sorted[upper - 1] ?? high)) / 2
}

const hour = (h: number | null): string => (h === null ? 'open' : h.toFixed(1))

const printHours = (timed: readonly Score[]): void => {
  for (const { id, hours } of timed) {
    if (hours === null) continue
    const { reported, low, likely, high, part, scope } = hours
    const verdict = scope !== null ? `not counted: ${scope}` : hours.inside ? 'inside' : 'MISSED'
    console.log(
      `  ${id.padEnd(9)} reported ${hour(reported[0])}–${hour(reported[1])} h, ours ${hour(low)}–${hour(high)} (likely ${hour(likely)}), ${part}: ${verdict}`,
    )
  }
}

const print = (scores: readonly Score[]): void => {
  const timed = scores.filter((s) => s.single && s.hours !== null)
  const counted = timed.flatMap(({ hours }) => (hours?.scope === null ? [hours] : []))
  const flags = scores.flatMap((s) => s.flags.map((f) => ({ id: s.id, ...f })))
  const met = flags.filter((f) => f.met)
  console.log('Hours')
  printHours(timed)
  console.log(
    `  reported hours inside low–high: ${percent(counted.filter((h) => h.inside).length, counted.length)}; asked 80 %`,
  )
  console.log(`  wholly inside: ${percent(counted.filter((h) => h.wholly).length, counted.length)}`)
  const scored = counted.map((h) => h.interval)
  console.log(
    `  mean interval score (80 % interval, hours; less is better): ${(scored.reduce((a, b) => a + b, 0) / scored.length).toFixed(1)}`,
  )
  const cars = scores.filter((s) => s.single && s.ratio !== null)
  console.log(
    `  median high / low of ${cars.length} single cars: ${median(cars.map((s) => s.ratio ?? 0)).toFixed(2)}; asked 2.2 at most`,
  )
  console.log('Flags')
  console.log(`  met: ${percent(met.length, flags.length)}; asked 90 %`)
  console.log('Missed flags')
  for (const f of flags.filter((each) => !each.met))
    console.log(
      `  ${f.id.padEnd(9)} ${f.flag.padEnd(28)} ${f.known ? 'nothing in the estimate says it' : 'no meaning set down for it'}`,
    )
}

/** How the estimates of cars told in public compare with what was reported of them. */
const main = (): void => {
  const file = process.argv[2]
  if (file === undefined || !existsSync(resolve(file))) {
    console.log(
      `NOT RUN: no cases at ${file ?? 'no path given'}; they are kept outside the project.`,
    )
    return
  }
  const cases = JSON.parse(readFileSync(resolve(file), 'utf8')) as readonly Case[]
  print(cases.map(scoreOf))
}

runScript(import.meta.url, main)
