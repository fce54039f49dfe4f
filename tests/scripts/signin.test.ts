import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { signInLink } from '../../scripts/signin'
import { LINK_MS } from '../../src/routes/acts/sign-in'
import { sha256 } from '../../src/routes/http/keys'
import { isLive, selectAccess } from '../../src/store/accesses'
import { dataPaths } from '../../src/store/data-dir'
import { readOne } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { takeLock } from '../../src/store/lock'
import { migrate } from '../../src/store/migrate'

const NOW = 1_790_000_000_000

it('puts a link beside a running server that holds ten minutes and keeps only its hash', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-signin-'))
  const paths = dataPaths(folder)
  const lock = takeLock(paths.lock)
  const server = await openFileDb(paths.database)
  await migrate(server, NOW)
  // The tool's own connection, while the server's is open and the folder is locked.
  const tool = await openFileDb(paths.database)
  const bytes = (n: number) => new Uint8Array(n).fill(7)
  const link = await signInLink(tool, 'http://studio.test', NOW, bytes)
  await tool.close()
  const code = link.replace('http://studio.test/in/', '')
  expect(code).toMatch(/^[A-Za-z0-9_-]{43}$/)
  const row = await readOne(server, selectAccess(await sha256(code)))
  expect(row).toMatchObject({ kind: 'signin', label: 'owner:owner', expiresAt: NOW + LINK_MS })
  expect(JSON.stringify(row)).not.toContain(code)
  expect(LINK_MS).toBe(600_000)
  expect(row && isLive(row, NOW + LINK_MS - 1)).toBe(true)
  expect(row && isLive(row, NOW + LINK_MS)).toBe(false)
  await server.close()
  lock.release()
  rmSync(folder, { recursive: true, force: true })
})
