import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { VERSION } from '../../src/routes/version'
import { root } from './source-files'

const text = (path: string) => readFileSync(join(root, path), 'utf8')

it('says the version of package.json', () => {
  expect(VERSION).toBe((JSON.parse(text('package.json')) as { version: string }).version)
})

it('numbers each decision once and lists every one of them', () => {
  const files = readdirSync(join(root, 'docs/decisions')).filter((f) => f !== 'README.md')
  expect(files.filter((f) => !/^\d{4}-[a-z0-9-]+\.md$/.test(f))).toEqual([])
  const numbers = files.map((f) => f.slice(0, 4))
  expect(numbers.length).toBeGreaterThanOrEqual(2)
  expect(new Set(numbers).size).toBe(numbers.length)
  const index = text('docs/decisions/README.md')
  expect(files.filter((f) => !index.includes(`](${f})`))).toEqual([])
  for (const file of files) {
    const page = text(`docs/decisions/${file}`)
    for (const part of ['# ', '## Context', '## Decision', '## Consequences'])
      expect(page, file).toContain(`${part}`)
  }
})
