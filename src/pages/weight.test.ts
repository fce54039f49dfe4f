import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, it } from 'vitest'
import { buildAssets } from '../../scripts/build'
import { assetsOf } from './assets'
import { samplePages } from './samples'
import { toHtml } from './to-html'

const BUDGET = { page: 30_000, script: 6_000 } as const

it('the first pages of a customer stay small, with all they load', async () => {
  const out = mkdtempSync(join(tmpdir(), 'weight-'))
  try {
    const manifest = await buildAssets(out)
    const packed = Object.fromEntries(
      Object.entries(manifest).map(([name, file]) => [
        name,
        gzipSync(readFileSync(join(out, 'assets', file))).length,
      ]),
    )
    expect(packed['enhance.js']).toBeLessThanOrEqual(BUDGET.script)
    const pages = samplePages(assetsOf(manifest))
    for (const name of ['start', 'choice', 'contact']) {
      const html = toHtml(pages[name])
      const loaded = Object.entries(manifest).filter(([, file]) => html.includes(file))
      const sum = loaded.reduce((n, [asset]) => n + (packed[asset] ?? 0), gzipSync(html).length)
      expect(loaded.length).toBeGreaterThan(0)
      expect(sum).toBeLessThanOrEqual(BUDGET.page)
    }
  } finally {
    rmSync(out, { recursive: true, force: true })
  }
})
