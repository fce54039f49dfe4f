import { mkdirSync, writeFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { sections } from './bench/all'
import { type BenchSection, type Measured, tableText } from './bench/section'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))

type Ran = {
  readonly section: BenchSection
  readonly seconds: number
  readonly measured: Measured | null
  readonly notRun: string | null
}

const runOne = async (section: BenchSection): Promise<Ran> => {
  const notRun = section.missing()
  if (notRun !== null) return { section, seconds: 0, measured: null, notRun }
  const began = performance.now()
  const measured = await section.run()
  return { section, seconds: (performance.now() - began) / 1000, measured, notRun: null }
}

const say = ({ section, seconds, measured, notRun }: Ran): void => {
  console.log(`\n${section.title}`)
  if (measured === null) {
    console.log(`NOT RUN: ${notRun}`)
    return
  }
  console.log(tableText(measured.head, measured.rows))
  for (const note of measured.notes ?? []) console.log(note)
  for (const t of measured.targets)
    console.log(`${t.met ? 'met    ' : 'NOT MET'} ${t.what}: ${t.found} (wanted ${t.wanted})`)
  console.log(`(${seconds.toFixed(0)} s)`)
}

/**
 * `bench [--json=file] [section…]`: a developer's measure, not a gate. Figures are comparisons within
 * one run on one machine; the JSON goes to dist/bench.json unless said otherwise.
 */
const main = async (): Promise<void> => {
  const args = process.argv.slice(2)
  const wanted = args.filter((a) => !a.startsWith('--'))
  const unknown = wanted.filter((id) => !sections.some((s) => s.id === id))
  if (unknown.length > 0)
    throw new Error(`no section ${unknown.join(', ')}: ${sections.map((s) => s.id).join(', ')}`)
  const out = args.find((a) => a.startsWith('--json='))?.slice(7) ?? join(root, 'dist/bench.json')
  const machine = `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}`
  console.log(machine)
  const ran: Ran[] = []
  for (const section of sections) {
    if (wanted.length > 0 && !wanted.includes(section.id)) continue
    const one = await runOne(section)
    say(one)
    ran.push(one)
  }
  mkdirSync(dirname(out), { recursive: true })
  const found = ran.map(({ section, seconds, measured, notRun }) => [
    section.id,
    { seconds, notRun, figures: measured?.figures ?? null, targets: measured?.targets ?? [] },
  ])
  const report = { machine, at: new Date().toISOString(), sections: Object.fromEntries(found) }
  writeFileSync(out, `${JSON.stringify(report, null, 2)}\n`)
  const targets = ran.flatMap((r) => r.measured?.targets ?? [])
  const missed = targets.filter((t) => !t.met).length
  console.log(`\n${targets.length - missed} targets met, ${missed} not met; figures in ${out}`)
}

runScript(import.meta.url, main)
