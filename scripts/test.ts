import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { availableParallelism, platform, release } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Counts, runPart } from './run-part'
import { runScript } from './run-script'
import { testParts } from './test-parts'

const root = fileURLToPath(new URL('..', import.meta.url))

const version = (name: string): string => {
  const file = join(root, 'node_modules', name, 'package.json')
  return `${name} ${(JSON.parse(readFileSync(file, 'utf8')) as { version: string }).version}`
}

const build = (): number =>
  spawnSync(process.execPath, [join(root, 'scripts/run.mjs'), 'build'], {
    cwd: root,
    stdio: 'inherit',
  }).status ?? 1

const sum = (all: readonly Counts[]): Counts => ({
  passed: all.reduce((n, c) => n + c.passed, 0),
  failed: all.reduce((n, c) => n + c.failed, 0),
  skipped: all.reduce((n, c) => n + c.skipped, 0),
})

const line = (c: Counts): string => `${c.passed} passed, ${c.failed} failed, ${c.skipped} skipped`

/** Runs the named parts, or all; the last line says the sum over them. */
const main = (wanted: readonly string[]): void => {
  const cores = availableParallelism()
  console.log(`Node ${process.version} on ${platform()} ${release()}, ${cores} cores`)
  console.log(['vitest', 'workerd', 'miniflare', 'hono', 'libsql'].map(version).join(', '))
  const parts = testParts(root).filter((p) => wanted.length === 0 || wanted.includes(p.name))
  if (parts.length === 0) throw new Error(`no part is named ${wanted.join(' or ')}`)
  const counts: Counts[] = []
  const lines: string[] = []
  const say = (name: string, c: Counts, began: number, note = ''): void => {
    counts.push(c)
    const seconds = ((performance.now() - began) / 1000).toFixed(1)
    lines.push(`${name.padEnd(10)} ${seconds.padStart(6)} s  ${note || line(c)}`)
  }
  const began = performance.now()
  const built = build() === 0
  say('build', { passed: 0, failed: built ? 0 : 1, skipped: 0 }, began, built ? 'built' : 'failed')
  for (const part of parts) {
    console.log(`\n== ${part.name} (${part.folders.join(', ')})`)
    const start = performance.now()
    if (part.there) say(part.name, runPart(root, part), start)
    else {
      const note = `NOT RUN: no tests in ${part.folders.join(', ')}`
      say(part.name, { passed: 0, failed: 0, skipped: 1 }, start, note)
    }
  }
  const total = sum(counts)
  console.log(
    `\n${lines.join('\n')}\n${((performance.now() - began) / 1000).toFixed(0)} s in all\n`,
  )
  console.log(line(total))
  if (total.failed > 0) process.exitCode = 1
}

runScript(import.meta.url, () => main(process.argv.slice(2)))
