// Runs scripts/<name>.ts with what `npm ci --omit=dev` leaves: bundled by esbuild, then imported.
import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const [, , name = '', ...rest] = process.argv
const source = join(root, 'scripts', `${name}.ts`)
if (!/^[a-z0-9-]+$/.test(name) || !existsSync(source)) {
  console.error(`there is no scripts/${name}.ts`)
  process.exit(1)
}
const outfile = join(root, 'dist', 'scripts', `${name}.mjs`)
const bundle = {
  entryPoints: [source],
  outfile,
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  packages: 'external',
  format: 'esm',
  target: 'node20',
  jsx: 'automatic',
  jsxImportSource: 'hono/jsx',
  sourcemap: 'inline',
  logLevel: 'warning',
}
try {
  await build(bundle)
  process.argv = [process.argv[0], outfile, ...rest]
  await import(pathToFileURL(outfile).href)
} catch (error) {
  console.error(error instanceof Error ? error.message : error)
  process.exitCode = 1
}
