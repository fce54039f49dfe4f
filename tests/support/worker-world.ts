import { copyFileSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import type { Readable } from 'node:stream'
import { Miniflare } from 'miniflare'
import { expect } from 'vitest'
import { startHrana } from '../../dev/hrana'
import { workerOptions } from '../../dev/worker-options'
import { buildWorker } from '../../scripts/build-worker'
import { copyBase } from './base-db'
import { OWNER_KEY, type World, type WorldOptions } from './world'

type Scheduled = { readonly scheduled: (event: { readonly cron: string }) => Promise<unknown> }

/** The built Worker in the real edge runtime, its database behind our own endpoint. */
export const openWorkerWorld = async (options: WorldOptions): Promise<World> => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-edge-'))
  const file = join(folder, 'jambside.db')
  if (options.from) copyFileSync(options.from.file, file)
  else await copyBase(file)
  const hrana = await startHrana({ file })
  const built = await buildWorker()
  const logs: string[] = []
  const miniflare = new Miniflare({
    ...workerOptions(built, {
      LIBSQL_URL: hrana.url,
      OWNER_KEY,
      TRUST_PROXY: options.trustProxy ? '1' : '0',
      ...(options.publicUrl ? { PUBLIC_URL: options.publicUrl } : {}),
    }),
    handleRuntimeStdio: (stdout: Readable, stderr: Readable) => {
      for (const stream of [stdout, stderr])
        createInterface({ input: stream }).on('line', (line) => logs.push(line))
    },
  })
  const baseUrl = (await miniflare.ready).origin
  return {
    runtime: 'worker',
    baseUrl,
    ownerKey: OWNER_KEY,
    fetch: (path, init = {}) => fetch(`${baseUrl}${path}`, { redirect: 'manual', ...init }),
    logs: () => logs,
    file,
    trips: () => {
      const { pipelines, writes } = hrana.counts()
      return { reads: pipelines - writes, writes }
    },
    resetTrips: () => hrana.reset(),
    hrana,
    tend: async () => {
      const worker = await miniflare.getWorker()
      // Its work after the event is waited for by the runtime, not by this call: look at the log.
      const before = logs.filter((l) => l.includes('"upkeep"')).length
      await (worker as unknown as Scheduled).scheduled({ cron: '23 * * * *' })
      await expect.poll(() => logs.filter((l) => l.includes('"upkeep"')).length).toBe(before + 1)
    },
    close: async () => {
      await miniflare.dispose()
      await hrana.close()
      for (const each of [folder, built.folder]) rmSync(each, { recursive: true, force: true })
    },
  }
}
