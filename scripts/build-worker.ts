import { mkdtemp } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build, type Plugin } from 'esbuild'
import type { Manifest } from '../src/pages/assets'
import { buildAssets, workerOptions } from './build'

export type BuiltWorker = {
  /** The one module of the Worker, minified as for a deployment. */
  readonly script: string
  /** Browser files by address, with their `_headers`, as the edge serves them. */
  readonly assets: string
  readonly manifest: Manifest
  /** The folder everything of this build stands in; the caller removes it. */
  readonly folder: string
}

/** The manifest of this build in place of the one under dist/, which another build may be writing. */
const manifestPlugin = (manifest: Manifest): Plugin => ({
  name: 'manifest',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /dist\/assets\/manifest\.json$/ }, () => ({
      path: 'manifest',
      namespace: 'built',
    }))
    onLoad({ filter: /.*/, namespace: 'built' }, () => ({
      contents: JSON.stringify(manifest),
      loader: 'json',
    }))
  },
})

/** Builds the Worker and its browser files into a folder of their own; dist/ is left alone. */
export const buildWorker = async (): Promise<BuiltWorker> => {
  const folder = await mkdtemp(join(tmpdir(), 'jambside-worker-'))
  const manifest = await buildAssets(folder)
  const { outputFiles } = await build({
    ...workerOptions,
    absWorkingDir: fileURLToPath(new URL('..', import.meta.url)),
    minify: true,
    write: false,
    outfile: join(folder, 'worker.js'),
    plugins: [manifestPlugin(manifest)],
  })
  const script = outputFiles[0]?.text
  if (script === undefined) throw new Error('the Worker was not built')
  return { script, assets: join(folder, 'edge'), manifest, folder }
}
