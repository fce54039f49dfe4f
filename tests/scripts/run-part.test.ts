import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { countsOf } from '../../scripts/run-part'
import { testParts } from '../../scripts/test-parts'

const report = (
  passed: number,
  failed: number,
  files: readonly { readonly status: string; readonly tests: readonly string[] }[],
) => ({
  numPassedTests: passed,
  numFailedTests: failed,
  numPendingTests: 2,
  numTodoTests: 1,
  testResults: files.map(({ status, tests }) => ({
    status,
    assertionResults: tests.map((each) => ({ status: each })),
  })),
})

it('counts what vitest reports', () => {
  const files = [{ status: 'passed', tests: ['passed', 'pending'] }]
  expect(countsOf(report(9, 0, files), 0)).toEqual({ passed: 9, failed: 0, skipped: 3 })
})

it('counts a file that broke before its tests once, beside the failed tests', () => {
  const files = [
    { status: 'failed', tests: [] },
    { status: 'failed', tests: ['failed', 'failed'] },
  ]
  expect(countsOf(report(9, 2, files), 1)).toEqual({ passed: 9, failed: 3, skipped: 3 })
})

it('counts a run that ended badly without a failed test as one failure', () => {
  expect(countsOf(report(9, 0, []), 1).failed).toBe(1)
  expect(countsOf(report(9, 0, []), null).failed).toBe(1)
})

it('leaves out no folder of tests, and knows which parts have none', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-parts-'))
  for (const name of ['store', 'newly', 'helpers']) {
    mkdirSync(join(folder, 'tests', name), { recursive: true })
    const file = name === 'helpers' ? 'help.ts' : 'x.test.ts'
    writeFileSync(join(folder, 'tests', name, file), '')
  }
  const parts = testParts(folder)
  rmSync(folder, { recursive: true, force: true })
  expect(parts.filter((p) => p.there).map((p) => p.name)).toEqual(['store', 'newly'])
  expect(parts.filter((p) => !p.there).map((p) => p.name)).toContain('browser')
  expect(parts.at(-1)?.name).toBe('browser')
})
