import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { Miniflare, type MiniflareOptions } from 'miniflare'
import { startHrana } from '../../../dev/hrana'
import { COMPATIBILITY_DATE, workerOptions } from '../../../dev/worker-options'
import { workerOptions as bundleOptions } from '../../build'
import { buildWorker } from '../../build-worker'
import { OWNER_KEY } from './app-on'
import { childrenOf } from './cpu'
import { type Loaded, load } from './load'
import type { Both } from './on-node'
import type { Scene } from './scene'

const here = fileURLToPath(new URL('.', import.meta.url))

const bareScript = async (scene: Scene): Promise<string> => {
  const { outputFiles } = await build({
    ...bundleOptions,
    entryPoints: [join(here, 'bare-worker.ts')],
    minify: true,
    write: false,
    plugins: [
      {
        name: 'traffic',
        setup: ({ onResolve, onLoad }) => {
          onResolve({ filter: /^recorded-traffic$/ }, () => ({
            path: 'traffic',
            namespace: 'made',
          }))
          onLoad({ filter: /.*/, namespace: 'made' }, () => ({
            contents: `export const traffic = ${JSON.stringify(scene.replay)}`,
            loader: 'js',
          }))
        },
      },
    ],
  })
  return outputFiles[0]!.text
}

const measured = async (
  scene: Scene,
  name: string,
  options: (url: string) => MiniflareOptions,
): Promise<Readonly<Record<string, Loaded>>> => {
  const hrana = await startHrana({ file: scene.copy(name) })
  const edge = new Miniflare({
    ...options(hrana.url),
    handleRuntimeStdio: (stdout: Readable, stderr: Readable) => {
      stdout.resume()
      stderr.resume()
    },
  })
  try {
    const base = (await edge.ready).origin
    const pid = childrenOf(process.pid, 'workerd').at(-1) ?? null
    const found: Record<string, Loaded> = {}
    for (const route of scene.routes) found[route.id] = await load({ base, pid }, route)
    return found
  } finally {
    await edge.dispose()
    await hrana.close()
  }
}

/** The same routes in the edge's own runtime, the database behind our endpoint on this machine. */
export const onWorkerd = async (scene: Scene): Promise<Both> => {
  const script = await bareScript(scene)
  const bare = await measured(scene, 'bare-edge', (url) => ({
    modules: [{ type: 'ESModule', path: 'bare.js', contents: script }],
    compatibilityDate: COMPATIBILITY_DATE,
    bindings: { LIBSQL_URL: url },
  }))
  const built = await buildWorker()
  try {
    const ours = await measured(scene, 'ours-edge', (url) =>
      workerOptions(built, { LIBSQL_URL: url, OWNER_KEY, TRUST_PROXY: '1' }),
    )
    return Object.fromEntries(
      scene.routes.map(({ id }) => [id, { ours: ours[id]!, bare: bare[id]! }]),
    )
  } finally {
    await rm(built.folder, { recursive: true, force: true })
  }
}
