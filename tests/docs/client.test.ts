import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { build } from 'esbuild'
import { expect, it } from 'vitest'
import { writeClient } from '../../scripts/client'
import { openWorld } from '../support/world'
import { blocksOf, docPages, ROOT } from './pages-of-docs'

const run = promisify(execFile)

// The client is made by swagger-typescript-api from our OpenAPI document, checked by the compiler, and
// the example of the page is run with it against the program.
it('the typed client of the handbook compiles and walks', async () => {
  const [example] = docPages()
    .flatMap(blocksOf)
    .filter((b) => b.language === 'ts')
  const folder = mkdtempSync(join(tmpdir(), 'jambside-client-'))
  const world = await openWorld({ runtime: 'node' })
  try {
    await writeClient(join(folder, 'jambside.ts'), 'http://127.0.0.1')
    writeFileSync(join(folder, 'walk.ts'), example?.body ?? '')
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'))
    const options = [
      '--ignoreConfig',
      '--noEmit',
      '--strict',
      '--target',
      'es2022',
      '--module',
      'esnext',
    ]
    const rest = [
      '--moduleResolution',
      'bundler',
      '--lib',
      'es2022,dom,dom.iterable',
      '--skipLibCheck',
    ]
    await run(join(ROOT, 'node_modules/.bin/tsc'), [...options, ...rest, join(folder, 'walk.ts')])
    const outfile = join(folder, 'walk.mjs')
    await build({ entryPoints: [join(folder, 'walk.ts')], bundle: true, format: 'esm', outfile })
    const { walk } = (await import(pathToFileURL(outfile).href)) as {
      walk: (baseUrl: string) => Promise<string>
    }
    expect(await walk(world.baseUrl)).toMatch(/^\d+ to \d+ EUR$/)
  } finally {
    await world.close()
    rmSync(folder, { recursive: true, force: true })
  }
})
