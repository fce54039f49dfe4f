import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildAssets } from '../../../scripts/build'

const BUDGET = { bench: 60_000, worker: 2_000 } as const

let out: string
let bench: string
let worker: string

beforeAll(async () => {
  out = mkdtempSync(join(tmpdir(), 'bench-bundle-'))
  const manifest = await buildAssets(out)
  const built = (name: string) =>
    readFileSync(join(out, 'assets', manifest[name] ?? 'missing'), 'utf8')
  bench = built('bench.js')
  worker = built('bench-worker.js')
})
afterAll(() => rmSync(out, { recursive: true, force: true }))

describe('the bench in the browser', () => {
  it('is small enough to come over a workshop’s signal', () => {
    console.log(`bench ${gzipSync(bench).length} bytes, worker ${gzipSync(worker).length}`)
    expect(gzipSync(bench).length).toBeLessThanOrEqual(BUDGET.bench)
    expect(gzipSync(worker).length).toBeLessThanOrEqual(BUDGET.worker)
  })

  it('brings neither the checker of shapes nor the catalogue of steps nor the questions', () => {
    for (const [what, mark] of [
      ['zod', 'invalid_type'],
      ['the steps', 'film-evidence'],
      ['the questions', 'fresh-paint-weeks'],
      ['all sentences', 'Matte paint is never polished'],
    ] as const)
      expect([what, bench.includes(mark)]).toEqual([what, false])
    expect(bench.includes('another-set')).toBe(true)
  })

  it('calls nothing the oldest browsers of the build lack', () => {
    // Not in Chrome 109, which the build names (array methods by copy came with 110, grouping with 117).
    const late = /\.(toSorted|toReversed|toSpliced|groupBy|fromAsync)\(/g
    expect([...`${bench}${worker}`.matchAll(late)].map((m) => m[0])).toEqual([])
  })

  it('has a worker that is one plain script', () => {
    expect(worker).not.toMatch(/\b(import|export)\b/)
  })
})
