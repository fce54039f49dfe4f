import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { beforeAll, expect, it } from 'vitest'
import { root } from './source-files'

// The linter says while typing what the syntax tests say at the gate. Planted in a folder of its own.
const PLANTED: readonly (readonly [path: string, source: string, rule: string])[] = [
  ['src/kernel/a.ts', `export { y } from '../intake/y'\n`, 'noRestrictedImports'],
  ['src/intake/b.ts', `export type { H } from 'hono'\n`, 'noRestrictedImports'],
  ['src/quote/paint/c.ts', `export * from '../../docket/y'\n`, 'noRestrictedImports'],
  ['src/jobsheet/d.ts', `export const f = () => import('../docket/y')\n`, 'noRestrictedImports'],
  ['src/docket/e.ts', `export { readFileSync } from 'node:fs'\n`, 'noRestrictedImports'],
  ['src/pages/f.ts', `export { y } from '../store/y'\n`, 'noRestrictedImports'],
  ['src/routes/g.ts', `import { z } from 'zod'\n\nexport const s = z\n`, 'noRestrictedImports'],
  ['src/quote/h.ts', 'export const now = Date.now()\n', 'noRestrictedGlobals'],
  ['src/kernel/i.ts', `export const n = new Intl.NumberFormat('en')\n`, 'noRestrictedGlobals'],
]
const ALLOWED: readonly (readonly [path: string, source: string])[] = [
  ['src/docket/j.ts', `import * as z from 'zod'\n\nexport const s = z.string()\n`],
  ['src/quote/k.ts', `export { y } from '../kernel/y'\n`],
]

type Diagnostic = {
  readonly category: string
  readonly location: { readonly path: string | { readonly file: string } }
}

let found: readonly string[]

beforeAll(() => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-lint-'))
  for (const [path, source] of [...PLANTED, ...ALLOWED]) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), source)
  }
  const config = JSON.parse(readFileSync(join(root, 'biome.json'), 'utf8')) as object
  writeFileSync(
    join(folder, 'biome.json'),
    JSON.stringify({ ...config, $schema: undefined, vcs: { enabled: false } }),
  )
  const biome = join(root, 'node_modules/@biomejs/biome/bin/biome')
  const { stdout } = spawnSync(process.execPath, [biome, 'lint', '--reporter=json', '.'], {
    cwd: folder,
    encoding: 'utf8',
  })
  const start = stdout.indexOf('{')
  const { diagnostics } = JSON.parse(stdout.slice(start)) as {
    readonly diagnostics: readonly Diagnostic[]
  }
  found = diagnostics.map(({ category, location }) => {
    const path = typeof location.path === 'string' ? location.path : location.path.file
    return `${path} ${category.split('/').at(-1)}`
  })
  rmSync(folder, { recursive: true, force: true })
})
it.each(PLANTED)('finds what is planted in %s: %s', (path, _source, rule) => {
  expect(found).toContain(`${path} ${rule}`)
})

it('finds nothing in what is allowed', () => {
  expect(found.filter((each) => ALLOWED.some(([path]) => each.startsWith(path)))).toEqual([])
})
