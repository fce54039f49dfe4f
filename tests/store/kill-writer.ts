import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readOne } from '../../src/store/db'
import { openFileDb } from '../../src/store/file'
import { selectHead } from '../../src/store/heads'
import { selectMaxSeq } from '../../src/store/lines'
import { migrate } from '../../src/store/migrate'
import { makeFolder } from './stores'

/** What was found after one kill; all faults must be 0 or 'ok'. */
export type KillReport = {
  readonly acknowledged: number
  readonly kept: number
  readonly lost: number
  readonly halfBatches: number
  readonly integrity: string
  readonly danglingReferences: number
}

const child = fileURLToPath(new URL('writer-child.ts', import.meta.url))

/**
 * Lets a process write batches, kills it with SIGKILL after each number of acknowledgements in
 * `kills`, and looks at what the file holds each time. The next process goes on with the same file.
 */
export const killWriter = async (kills: readonly number[]): Promise<readonly KillReport[]> => {
  const { folder, remove } = makeFolder()
  const path = join(folder, 'killed.db')
  const fresh = await openFileDb(path)
  await migrate(fresh, 1)
  await fresh.close()
  const reports: KillReport[] = []
  for (const count of kills) {
    const first = (reports.at(-1)?.kept ?? 0) + 1
    const acknowledged = await writeUntilKilled(path, first, count)
    reports.push(await inspect(path, acknowledged))
  }
  remove()
  return reports
}

/** Resolves with the last number the process said before it was killed. */
const writeUntilKilled = (path: string, first: number, count: number): Promise<number> =>
  new Promise((resolve, reject) => {
    const args = ['--import', 'tsx', child, path, String(first)]
    const writer = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] })
    let said = ''
    const lastSaid = () => Number(said.split('\n').at(-2) ?? 0)
    writer.stdout.setEncoding('utf8').on('data', (chunk: string) => {
      said += chunk
      if (lastSaid() >= first + count - 1) writer.kill('SIGKILL')
    })
    writer.on('error', reject)
    writer.on('close', (code, signal) => {
      if (signal === 'SIGKILL') resolve(lastSaid())
      else reject(new Error(`the writer ended by itself with code ${code}`))
    })
  })

const inspect = async (path: string, acknowledged: number): Promise<KillReport> => {
  const db = await openFileDb(path)
  const kept = (await readOne(db, selectMaxSeq('d1'))) ?? 0
  const head = await readOne(db, selectHead('d1'))
  const sql = [
    'SELECT count(*) AS n FROM line',
    'SELECT count(*) AS n FROM free_text',
    'PRAGMA integrity_check',
    'PRAGMA foreign_key_check',
  ]
  const [lines, texts, integrity, dangling] = await db.read(sql.map((s) => ({ sql: s, args: [] })))
  await db.close()
  const counts = [Number(lines?.[0]?.n), Number(texts?.[0]?.n), head?.rev ?? 0]
  return {
    acknowledged,
    kept,
    lost: Math.max(0, acknowledged - kept),
    halfBatches: Math.max(...counts.map((count) => Math.abs(count - kept))),
    integrity: String(integrity?.[0]?.integrity_check),
    danglingReferences: dangling?.length ?? 0,
  }
}
