import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Part } from './test-parts'

export type Counts = { readonly passed: number; readonly failed: number; readonly skipped: number }

type Report = {
  readonly numPassedTests: number
  readonly numFailedTests: number
  readonly numPendingTests: number
  readonly numTodoTests: number
  readonly testResults: readonly {
    readonly status: string
    readonly assertionResults: readonly { readonly status: string }[]
  }[]
}

/**
 * Counts of a vitest report. A file that broke before its tests, and a run that ended badly without
 * a failed test (an error outside of any), each count as a failure.
 */
export const countsOf = (report: Report, exitCode: number | null): Counts => {
  const broken = report.testResults.filter(
    (file) =>
      file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length
  const failed = report.numFailedTests + broken
  return {
    passed: report.numPassedTests,
    failed: failed === 0 && exitCode !== 0 ? 1 : failed,
    skipped: report.numPendingTests + report.numTodoTests,
  }
}

/** Runs one part with vitest, its output shown as it comes; a run without a report failed once. */
export const runPart = (root: string, part: Part): Counts => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-report-'))
  const file = join(folder, 'report.json')
  const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${file}`]
  const loading = part.shared ? ['--no-isolate'] : []
  const vitest = join(root, 'node_modules/vitest/vitest.mjs')
  try {
    const { status } = spawnSync(
      process.execPath,
      [vitest, 'run', ...part.folders, ...reporters, ...loading],
      {
        cwd: root,
        stdio: 'inherit',
        env: { ...process.env, CI: 'true', NODE_ENV: 'test', NO_COLOR: '1' },
      },
    )
    if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 }
    return countsOf(JSON.parse(readFileSync(file, 'utf8')) as Report, status)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
