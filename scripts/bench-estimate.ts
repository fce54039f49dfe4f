import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Answers } from '../src/intake/answers'
import { reader } from '../src/intake/reader'
import { script } from '../src/intake/script'
import { session } from '../src/intake/session'
import type { Context } from '../src/quote/context'
import { estimate } from '../src/quote/estimate'
import { events } from '../src/quote/events'
import { runEvent, runStep } from '../src/quote/needs'
import { meanMinutes, planOf } from '../src/quote/plan-of'
import { refusalsOf } from '../src/quote/refusals'
import { pickNotes, risks } from '../src/quote/risks'
import { spread } from '../src/quote/spread'
import { spreadOf } from '../src/quote/spread-of'
import { steps } from '../src/quote/steps'
import { DEFAULT_PROFILE, engineSettings } from '../src/quote/studio-profile'
import { plainMonteCarlo } from '../tests/montecarlo/plain-monte-carlo'

const settings = engineSettings(DEFAULT_PROFILE, 0, [])
const context: Context = { settings, nowYear: 2026 }
const DRAWS = 100_000

const told: Answers = {
  body: { value: 'saloon' },
  size: { value: 'mid' },
  dangers: { value: [] },
  year: { value: 2018 },
  services: { value: ['paint', 'protect', 'cabin'] },
  'cabin-state': { value: 'family' },
  wish: { value: 'improve' },
  'paint-history': { value: 'original' },
  colour: { value: 'mid' },
  defects: { value: ['wash-marks', 'scratches'] },
  use: { value: 'weekend' },
  'begun-year': { value: 2026 },
}
const unsure: Answers = {
  ...told,
  dangers: { unsure: true },
  'cabin-state': { unsure: true },
  'paint-history': { unsure: true },
  defects: { unsure: true },
}

/** What is asked and still open answered by its likeliest option. */
const settledFrom = (given: Answers): Answers => {
  const all: Record<string, Answers[string]> = { ...given }
  for (const q of script.questions) {
    if (q.likely === undefined || all[q.id] !== undefined || !reader(all).asks(q)) continue
    const [value] = q.likely.reduce((best, each) => (each[1] > best[1] ? each : best))
    all[q.id] = { value }
  }
  return all
}

type Times = { readonly p50: number; readonly p99: number }

/** Milliseconds at the 50th and 99th percentile of `runs` calls, after as many that do not count. */
const timed = (runs: number, work: () => unknown): Times => {
  for (let i = 0; i < runs; i++) work()
  const all = Array.from({ length: runs }, () => {
    const began = performance.now()
    work()
    return performance.now() - began
  }).sort((a, b) => a - b)
  const at = (p: number): number => all[Math.min(runs - 1, Math.floor(p * runs))]!
  return { p50: at(0.5), p99: at(0.99) }
}

/** Heap bytes one call leaves behind before anything is collected: the median of several. */
const heapOf = (work: () => unknown): number => {
  const taken = Array.from({ length: 51 }, () => {
    const before = process.memoryUsage().heapUsed
    work()
    return process.memoryUsage().heapUsed - before
  })
  return taken.sort((a, b) => a - b)[25]!
}

const measure = (answers: Answers, runs: number) => {
  const whole = () =>
    estimate({ answers, settings, today: '2026-06-01', readings: [], adjustments: [] })
  const read = session(answers)
  const ran = steps
    .map((rule) => runStep(rule, refusalsOf(rule.id), read, context))
    .filter((run) => run.chance > 0)
  const docket = spreadOf(
    ran,
    events.map((e) => runEvent(e, read, context)).filter((e) => e.chance > 0),
    {
      carSd: 0.12,
      ratePerHour: settings.ratePerHour,
      minimumMoney: settings.minimumCharge,
      fixedMoney: 0,
      pace: () => 1,
      setUp: 30,
    },
  )
  const planned = ran
    .filter((run) => run.chance >= 0.5)
    .map((run) => ({ run, minutes: meanMinutes(run, 1) }))
  const ratios = { median: 0.98, p80: 1.15 }
  const times = {
    estimate: timed(runs, whole),
    spread: timed(runs, () => spread(docket)),
    plan: timed(runs, () => planOf(planned, settings, '2026-06-02', settings.people, ratios)),
    notes: timed(runs, () => pickNotes(risks, answers, context)),
  }
  const began = performance.now()
  plainMonteCarlo(docket, DRAWS, 1)
  const drawn = performance.now() - began
  return {
    steps: ran.length,
    unknowns: docket.unknowns.length,
    ...times,
    monteCarlo: drawn,
    ratio: { spread: drawn / times.spread.p50, estimate: drawn / times.estimate.p50 },
    heapBytes: heapOf(whole),
  }
}

const report = (): void => {
  const found = {
    settled: measure(settledFrom(told), 300),
    'first answers': measure(told, 100),
    'very unsure': measure(unsure, 20),
  }
  console.log(JSON.stringify(found))
  for (const [name, m] of Object.entries(found)) {
    console.log(`\n${name}: ${m.steps} steps, ${m.unknowns} unknowns, milliseconds`)
    for (const part of ['estimate', 'spread', 'plan', 'notes'] as const)
      console.log(
        `  ${part.padEnd(12)} p50 ${m[part].p50.toFixed(3).padStart(9)}   p99 ${m[part].p99.toFixed(3).padStart(9)}`,
      )
    const [few, all] = [m.ratio.spread.toFixed(0), m.ratio.estimate.toFixed(0)]
    console.log(
      `  ${DRAWS} plain draws: ${m.monteCarlo.toFixed(0)} ms, ${few} × spread, ${all} × estimate`,
    )
    console.log(`  ${Math.round(m.heapBytes / 1024)} KiB of heap an estimate`)
  }
}

/** Bundles this file, so that no loader is measured, and runs the bundle. */
const bundleAndRun = async (): Promise<void> => {
  const { build } = await import('esbuild')
  const folder = mkdtempSync(join(tmpdir(), 'bench-estimate-'))
  try {
    const outfile = join(folder, 'bench.mjs')
    await build({
      entryPoints: [fileURLToPath(import.meta.url)],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      external: ['esbuild'],
      logLevel: 'error',
    })
    const { status } = spawnSync(process.execPath, [outfile, 'measure'], { stdio: 'inherit' })
    process.exitCode = status ?? 1
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

if (process.argv[2] === 'measure') report()
else await bundleAndRun()
