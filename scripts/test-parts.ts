import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

/** A part of the tests: folders given to one run of vitest. */
export type Part = {
  readonly name: string
  readonly folders: readonly string[]
  /** Files share one loaded program: right for pure code, and it halves the time. */
  readonly shared?: true
}

const NAMED: readonly Part[] = [
  { name: 'borders', folders: ['tests/borders'] },
  { name: 'unit', folders: ['src', 'tests/corpus'], shared: true },
  { name: 'engine', folders: ['tests/engine'] },
  { name: 'store', folders: ['tests/store'] },
  { name: 'http', folders: ['tests/http'] },
  { name: 'edge', folders: ['tests/edge'] },
  { name: 'browser', folders: ['tests/browser'] },
]

const holdsTests = (folder: string): boolean =>
  existsSync(folder) &&
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).some((f) => /\.test\.tsx?$/.test(f))

/** Every part in its order. A folder of tests nobody named is a part of its own: none is left out. */
export const testParts = (root: string): readonly (Part & { readonly there: boolean })[] => {
  const named = new Set(NAMED.flatMap((part) => part.folders))
  const others = readdirSync(join(root, 'tests'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !named.has(`tests/${entry.name}`))
    .map((entry): Part => ({ name: entry.name, folders: [`tests/${entry.name}`] }))
    .filter((part) => part.folders.every((folder) => holdsTests(join(root, folder))))
  const browser = NAMED.length - 1
  return [...NAMED.slice(0, browser), ...others, ...NAMED.slice(browser)].map((part) => ({
    ...part,
    there: part.folders.some((folder) => holdsTests(join(root, folder))),
  }))
}
