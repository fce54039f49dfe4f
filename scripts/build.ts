import { cp, mkdir, rm, writeFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { type BuildOptions, build } from 'esbuild'
import type { Manifest } from '../src/pages/assets'

/** Browser files by the name pages ask for. */
const FILES: Readonly<Record<string, string>> = {
  'docket.css': 'src/pages/docket.css',
  'enhance.js': 'src/client/enhance.ts',
  'bench.js': 'src/client/bench.ts',
  'leave.js': 'src/client/leave.ts',
  'bench-worker.js': 'src/client/bench/worker.ts',
}

/** Files of the browser that change their name with their content, so they may be kept for ever. */
const HEADERS = `/assets/*
  Cache-Control: public, max-age=31536000, immutable
  X-Content-Type-Options: nosniff
  Cross-Origin-Resource-Policy: same-origin
  Service-Worker-Allowed: /bench/
`

/**
 * Builds the browser's files into `out`/assets with content hashes, and once more under `out`/edge as
 * the edge serves them (by address, with a `_headers` file). Gives the hashed names by name.
 */
export const buildAssets = async (out: string): Promise<Manifest> => {
  const folder = join(out, 'assets')
  const edge = join(out, 'edge')
  for (const each of [folder, edge]) {
    await rm(each, { recursive: true, force: true })
    await mkdir(each, { recursive: true })
  }
  const entries = Object.entries(FILES)
  const made = await build({
    entryPoints: entries.map(([, path]) => path),
    outdir: folder,
    entryNames: '[name]-[hash]',
    bundle: true,
    minify: true,
    format: 'esm',
    target: ['es2022', 'safari16', 'firefox115', 'chrome109'],
    jsx: 'automatic',
    jsxImportSource: 'hono/jsx',
    metafile: true,
    logLevel: 'warning',
  })
  const manifest: Record<string, string> = {}
  for (const [file, { entryPoint }] of Object.entries(made.metafile.outputs)) {
    const name = entries.find(([, path]) => path === entryPoint)?.[0]
    if (name) manifest[name] = basename(file)
  }
  for (const [name] of entries)
    if (manifest[name] === undefined) throw new Error(`${name} was not built`)
  await cp(folder, join(edge, 'assets'), { recursive: true })
  await writeFile(join(edge, '_headers'), HEADERS)
  await writeFile(join(folder, 'manifest.json'), `${JSON.stringify(manifest, null, 2)}\n`)
  return manifest
}

const shared = {
  bundle: true,
  format: 'esm',
  target: 'es2022',
  jsx: 'automatic',
  jsxImportSource: 'hono/jsx',
  logLevel: 'warning',
} as const

/** How the edge's server is bundled, wherever it is written to. */
export const workerOptions = {
  ...shared,
  entryPoints: ['src/worker.ts'],
  conditions: ['workerd', 'worker', 'browser'],
} as const satisfies BuildOptions

/** Bundles both servers; the edge's holds the manifest, so build the browser's files first. */
export const buildServers = async (out: string): Promise<void> => {
  await build({
    ...workerOptions,
    outfile: join(out, 'worker.js'),
    sourcemap: true,
    minifySyntax: true,
  })
  await build({
    ...shared,
    entryPoints: ['src/node.ts'],
    outfile: join(out, 'node.js'),
    sourcemap: true,
    platform: 'node',
    packages: 'external',
  })
}

const main = async (): Promise<void> => {
  const manifest = await buildAssets('dist')
  await buildServers('dist')
  console.log(`Built ${Object.keys(manifest).length} browser files and both servers into dist/`)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await main()
