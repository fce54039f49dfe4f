import { lengthFaults, questionFaults } from './file-faults'
import { importFaults, zodFaults } from './import-faults'
import { DOMAIN, RIM } from './layers'
import type { SourceFile } from './source-files'
import { parse } from './syntax'
import { clockFaults, envFaults, pureFaults, transactionFaults } from './word-faults'

const isTest = (path: string): boolean => /\.test\.tsx?$/.test(path)
const isUnder = (path: string, folder: string): boolean => path.startsWith(`src/${folder}/`)

/** All faults of one file, whatever rule they break. Tests and tools keep the zod rule only. */
export const faultsOf = ({ path, source }: SourceFile): readonly string[] => {
  const root = parse(path, source)
  const faults = [...zodFaults(path, root)]
  if (!path.startsWith('src/') || isTest(path)) return faults
  faults.push(...importFaults(path, root))
  // A browser's own store has transactions of another kind.
  if (!isUnder(path, 'client')) faults.push(...transactionFaults(path, root))
  faults.push(...lengthFaults(path, source, root))
  if (DOMAIN.some((folder) => isUnder(path, folder))) faults.push(...pureFaults(path, root))
  if (!RIM.includes(path)) faults.push(...envFaults(path, root))
  if (!RIM.includes(path) && !isUnder(path, 'client')) faults.push(...clockFaults(path, root))
  if (isUnder(path, 'intake/questions')) faults.push(...questionFaults(path, root))
  return faults
}
