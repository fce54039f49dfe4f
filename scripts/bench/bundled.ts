import { type ChildProcess, fork } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../..', import.meta.url))

export type Bundle = { readonly file: string; readonly remove: () => Promise<void> }

/** Bundles a script of this folder, so that no loader is measured. */
export const bundle = async (path: string): Promise<Bundle> => {
  // Inside the project, so that packages left outside the bundle are found.
  const folder = await mkdtemp(join(root, 'node_modules/.bench-'))
  const file = join(folder, 'script.mjs')
  await build({
    entryPoints: [join(root, 'scripts/bench', path)],
    outfile: file,
    absWorkingDir: root,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    jsx: 'automatic',
    jsxImportSource: 'hono/jsx',
    logLevel: 'error',
  })
  return { file, remove: () => rm(folder, { recursive: true, force: true }) }
}

/** Starts a bundled script in a process of its own. */
export const start = (file: string, args: readonly string[] = []): ChildProcess =>
  fork(file, args, { cwd: tmpdir(), stdio: ['ignore', 'inherit', 'inherit', 'ipc'] })

/** The next message of a process; rejects when it ends without one. */
export const nextMessage = <T>(child: ChildProcess): Promise<T> =>
  new Promise((resolve, reject) => {
    const ended = (code: number | null): void =>
      reject(new Error(`a measured process ended: ${code}`))
    child.once('exit', ended)
    child.once('message', (message) => {
      child.off('exit', ended)
      resolve(message as T)
    })
  })

/** Runs a bundled script of this folder in a process of its own and gives the one message it sends. */
export const measureApart = async <T>(path: string): Promise<T> => {
  const { file, remove } = await bundle(path)
  try {
    const child = start(file)
    const found = await nextMessage<T>(child)
    child.disconnect()
    return found
  } finally {
    await remove()
  }
}

/** Sends what was measured to the process that asked. */
export const report = (found: unknown): void => {
  if (process.send) process.send(found)
  else console.log(JSON.stringify(found))
}
