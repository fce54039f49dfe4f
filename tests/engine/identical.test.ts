import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Miniflare } from 'miniflare'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bundleEstimate } from './bundle-estimate'
import { estimatesOf, type mathBits } from './estimate-module'
import { identicalInputs } from './identical-inputs'
import { MATH_NAMES } from './math-arguments'

type Bundle = { readonly estimatesOf: typeof estimatesOf; readonly mathBits: typeof mathBits }

let miniflare: Miniflare
let folder: string
let inNode: Bundle

beforeAll(async () => {
  const script = await bundleEstimate()
  folder = mkdtempSync(join(tmpdir(), 'jambside-engine-'))
  const file = join(folder, 'estimate.mjs')
  writeFileSync(file, script)
  inNode = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as Bundle
  miniflare = new Miniflare({ modules: true, script, compatibilityDate: '2026-05-03' })
})
afterAll(async () => {
  await miniflare.dispose()
  rmSync(folder, { recursive: true, force: true })
})

const inWorkerd = async (asked: unknown): Promise<unknown> => {
  const body = JSON.stringify(asked)
  const answer = await miniflare.dispatchFetch('http://engine/', { method: 'POST', body })
  if (answer.status !== 200) throw new Error(await answer.text())
  return answer.json()
}

describe('the same bytes in Node and in workerd', () => {
  it('of thirty estimates over the corpus, with and without readings and adjustments', async () => {
    // Sent as JSON to one of them, so both get what JSON keeps.
    const inputs = JSON.parse(JSON.stringify(identicalInputs())) as ReturnType<
      typeof identicalInputs
    >
    const here = inNode.estimatesOf(inputs)
    expect(here).toHaveLength(30)
    expect(new Set(here).size).toBeGreaterThan(25)
    expect(await inWorkerd({ inputs })).toEqual(here)
    // And bundling has changed nothing.
    expect(estimatesOf(inputs)).toEqual(here)
  })

  it.each(MATH_NAMES)('of Math.%s over 8000 arguments', async (name) => {
    const here = inNode.mathBits(name)
    expect(here).toHaveLength(8000 * 16)
    expect((await inWorkerd({ math: name })) === here).toBe(true)
  })
})
