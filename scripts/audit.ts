import { spawnSync } from 'node:child_process'
import { runScript } from './run-script'

type Report = {
  readonly metadata?: { readonly vulnerabilities?: Readonly<Record<string, number>> }
  readonly error?: { readonly code?: string; readonly summary?: string }
  readonly message?: string
}

/** What `npm audit --json` said: known weaknesses by severity, or why it could not say. */
export const readAudit = (text: string): { readonly line: string; readonly failed: boolean } => {
  const report = JSON.parse(text === '' ? '{}' : text) as Report
  const found = report.metadata?.vulnerabilities
  if (found === undefined) {
    const why = report.message ?? report.error?.summary ?? report.error?.code ?? 'no answer'
    return { line: `NOT RUN: the registry does not answer an audit (${why})`, failed: false }
  }
  const grave = (found.high ?? 0) + (found.critical ?? 0)
  const line = Object.entries(found)
    .map(([severity, n]) => `${n} ${severity}`)
    .join(', ')
  return { line, failed: grave > 0 }
}

runScript(import.meta.url, () => {
  const { stdout } = spawnSync('npm', ['audit', '--omit=dev', '--json'], { encoding: 'utf8' })
  const { line, failed } = readAudit(stdout)
  console.log(line)
  if (failed) process.exitCode = 1
})
