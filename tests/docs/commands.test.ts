import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fillDemo } from '../../dev/demo/fill-demo'
import { OWNER_KEY, openWorld, type World } from '../support/world'
import { type Block, blocksOf, docPages, ROOT } from './pages-of-docs'

const run = promisify(execFile)

/** Commands that are not run here, by how they begin, and why. Each must still be on a page. */
const NOT_RUN: Readonly<Record<string, string>> = {
  'npm ci && npm start': 'it would replace the packages these tests run on; the gate runs npm ci',
  'npm test': 'it is what runs this test',
  'npm run deploy': 'needs an account at the edge',
  'npx wrangler secret put': 'needs an account at the edge',
  'npm run signin -- --remote': 'needs a database in the network',
}

const reasonNot = ({ body }: Block): string | undefined =>
  Object.entries(NOT_RUN).find(([start]) => body.startsWith(start))?.[1]

const blocks = docPages()
  .flatMap(blocksOf)
  .filter((b) => b.language === 'sh')

describe('the commands of the written pages', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jambside-docs-'))
  let world: World

  beforeAll(async () => {
    world = await openWorld({ runtime: 'node' })
    await fillDemo(join(folder, 'data'), 'http://studio.example', Date.UTC(2026, 8, 16, 15))
  })
  afterAll(async () => {
    await world.close()
    rmSync(folder, { recursive: true, force: true })
  })

  /** The command with our server and our folders in place of the ones it names. */
  const here = (body: string): string =>
    body
      .replaceAll(/(?:http:\/\/)?localhost:8787/g, world.baseUrl)
      .replaceAll('/mnt/backup', join(folder, 'backup'))
      .replaceAll('/var/lib/jambside', join(folder, 'restored'))
      .replaceAll('npm run client', `npm run client -- ${join(folder, 'client.ts')}`)

  it('are run, or it is said why not', () => {
    expect(blocks.filter((b) => reasonNot(b) === undefined).length).toBeGreaterThanOrEqual(5)
    const dead = Object.keys(NOT_RUN).filter(
      (start) => !blocks.some((b) => b.body.startsWith(start)),
    )
    expect(dead).toEqual([])
  })

  for (const [n, block] of blocks.entries()) {
    const why = reasonNot(block)
    if (why !== undefined) continue
    it(`${block.page}, block ${n + 1}: ${block.body.split('\n')[0]}`, async () => {
      const env = { ...process.env, OWNER_KEY, DATA_DIR: join(folder, 'data'), PORT: '0' }
      const { stdout } = await run('bash', ['-eo', 'pipefail', '-c', here(block.body)], {
        cwd: ROOT,
        env,
      })
      expect(stdout.trim()).not.toBe('')
      expect(stdout).not.toContain('undefined')
    })
  }
})
