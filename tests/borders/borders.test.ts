import { expect, it } from 'vitest'
import { faultsOf } from './faults-of'
import { TABLES } from './file-faults'
import { DRIVERS, RIM, ZOD_IN_DOMAIN } from './layers'
import { sourceFiles } from './source-files'

const src = sourceFiles('src')

it('keeps the import rule, the bans and the sizes in every file of src', () => {
  expect(src.length).toBeGreaterThan(300)
  expect(src.flatMap(faultsOf)).toEqual([])
})

it('imports zod as a whole in tests and tools too', () => {
  const others = ['tests', 'scripts', 'dev'].flatMap(sourceFiles)
  expect(others.length).toBeGreaterThan(30)
  expect(others.flatMap(faultsOf)).toEqual([])
})

it('names no file in its lists that is not there', () => {
  const paths = new Set(src.map((f) => f.path))
  const named = [...RIM, ...TABLES, ...ZOD_IN_DOMAIN, ...DRIVERS.map((d) => `${d}.ts`)]
  expect(named.filter((path) => !paths.has(path))).toEqual([])
})
