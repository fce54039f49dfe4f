import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { root } from '../borders/source-files'
import { namedModules, parse } from '../borders/syntax'

/** Own bound in kB; the platform's is 3 MB on its free plan (its page on limits). */
const MOST_KB = 380

let folder: string
let ran: { readonly status: number | null; readonly output: string }
let bundle = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'jambside-edge-'))
  const wrangler = join(root, 'node_modules/wrangler/bin/wrangler.js')
  const out = join(folder, 'out')
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [wrangler, 'deploy', '--dry-run', '--outdir', out],
    {
      cwd: root,
      encoding: 'utf8',
      // Without an account and without a look at the network.
      env: {
        PATH: process.env.PATH,
        HOME: folder,
        CI: 'true',
        NO_COLOR: '1',
        WRANGLER_SEND_METRICS: 'false',
        WRANGLER_HIDE_BANNER: 'true',
      },
    },
  )
  ran = { status, output: `${stdout}\n${stderr}` }
  if (status === 0) bundle = readFileSync(join(out, 'worker.js'), 'utf8')
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

it('is accepted by a dry run of the deployment, without a warning', () => {
  expect(ran.output).toContain('--dry-run: exiting now')
  expect(ran.status).toBe(0)
  expect(ran.output).not.toMatch(/warning/i)
  for (const name of ['env.PHOTOS', 'env.LIBSQL_URL', 'env.PUBLIC_URL'])
    expect(ran.output).toContain(name)
})

it(`is a Worker of at most ${MOST_KB} kB compressed`, () => {
  expect(bundle.length).toBeGreaterThan(100_000)
  expect(gzipSync(bundle, { level: 9 }).length / 1000).toBeLessThanOrEqual(MOST_KB)
})

it('leaves no module to the platform: no node: and no other import', () => {
  const left = namedModules(parse('worker.js', bundle)).map(({ from }) => from)
  expect(left).toEqual([])
})

it('knows the date of the workerd that is pinned', () => {
  const date = /^compatibility_date = "(.*)"$/m.exec(
    readFileSync(join(root, 'wrangler.toml'), 'utf8'),
  )?.[1]
  expect(date).toMatch(/^\d{4}-\d{2}-\d{2}$/)
  // A runtime accepts dates up to a week after its own, which stands in its version.
  const { version } = JSON.parse(
    readFileSync(join(root, 'node_modules/workerd/package.json'), 'utf8'),
  ) as { version: string }
  const own = version.split('.')[1] ?? ''
  const day = (text: string) => Date.UTC(+text.slice(0, 4), +text.slice(4, 6) - 1, +text.slice(6))
  expect(day((date ?? '').replaceAll('-', '')) - day(own)).toBeLessThanOrEqual(7 * 86_400_000)
})
