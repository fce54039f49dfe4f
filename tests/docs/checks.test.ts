import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { checksOf, checksPage } from '../../scripts/checks'
import { ROOT } from './pages-of-docs'

it('the page of checks is what stands beside the tests now', () => {
  expect(readFileSync(join(ROOT, 'docs/checks.md'), 'utf8')).toBe(checksPage())
})

it('a comment goes to the test below it, or to the one around it', () => {
  const library = 'highs'
  const text = `import { solve } from '${library}'
describe('all', () => {
  // ISO 4217: two places.
  it('one', () => {})
  it('two', () => {
    // common practice, no source
    expect(1).toBe(1)
  })
})`
  expect(checksOf('a.test.ts', text)).toEqual([
    { file: 'a.test.ts', title: 'one', against: 'outside', source: 'ISO 4217: two places.' },
    { file: 'a.test.ts', title: 'two', against: 'practice', source: 'common practice, no source' },
    { file: 'a.test.ts', title: '', against: 'outside', source: 'highs (optimal schedules)' },
  ])
})
