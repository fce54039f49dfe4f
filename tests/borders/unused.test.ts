import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { expect, it } from 'vitest'
import { root } from './source-files'

// knip follows every import from the entries of knip.json and tells what nobody uses.
it('keeps no file, export or dependency that nobody uses', async () => {
  const found = await promisify(execFile)('node_modules/.bin/knip', ['--no-progress'], {
    cwd: root,
  }).catch((error: { stdout?: string }) => error)
  expect(found.stdout?.trim() ?? 'knip did not run').toBe('')
})
