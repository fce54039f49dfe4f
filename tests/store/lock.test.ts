import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, expect, it } from 'vitest'
import { LockedError, takeLock } from '../../src/store/lock'
import { makeFolder } from './stores'

const { folder, remove } = makeFolder()
afterAll(remove)

it('is held by one, and free again when released', () => {
  const path = join(folder, 'a.db')
  const lock = takeLock(path)
  expect(() => takeLock(path)).toThrow(LockedError)
  expect(() => takeLock(path)).toThrow(/another server is using this data folder/)
  lock.release()
  takeLock(path).release()
})

it('held by another process is refused, and freed by its death', { timeout: 120_000 }, async () => {
  const path = join(folder, 'b.db')
  const child = fileURLToPath(new URL('lock-child.ts', import.meta.url))
  const stdio = ['ignore', 'pipe', 'inherit'] as const
  const holder = spawn(process.execPath, ['--import', 'tsx', child, path], { stdio: [...stdio] })
  await once(holder.stdout as NodeJS.ReadableStream, 'data')
  expect(() => takeLock(path)).toThrow(LockedError)
  const ended = once(holder, 'close')
  holder.kill('SIGKILL')
  expect((await ended)[1]).toBe('SIGKILL')
  takeLock(path).release()
})
