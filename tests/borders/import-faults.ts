import { posix } from 'node:path'
import { DOMAIN, DRIVERS, LAYERS, RIM, ZOD_IN_DOMAIN } from './layers'
import { type Node, namedModules } from './syntax'

const layerOf = (path: string): string =>
  (path.split('/')[1] ?? '').replace(/\.(ts|tsx|json|css)$/, '')

const fits = (name: string, allowed: readonly string[]): boolean =>
  allowed.some((a) => (a.endsWith('*') ? name.startsWith(a.slice(0, -1)) : a === name))

const packageFault = (path: string, name: string): string | null => {
  const layer = layerOf(path)
  if (name === 'zod' && (DOMAIN as readonly string[]).includes(layer))
    return ZOD_IN_DOMAIN.includes(path) ? null : `${layer} may not import zod here`
  return fits(name, LAYERS[layer]?.packages ?? []) ? null : `${layer} may not import ${name}`
}

const fileFault = (path: string, target: string): string | null => {
  const layer = layerOf(path)
  if (!target.startsWith('src/')) {
    // The edge has no file system: its entry carries the names of the built files with it.
    if (path === 'src/worker.ts' && target === 'dist/assets/manifest.json') return null
    return `${layer} may not import ${target}, which is outside src`
  }
  const to = layerOf(target)
  if (DRIVERS.includes(target) && layer !== 'store' && !RIM.includes(path))
    return `only the entries choose a driver: ${target}`
  if (to === layer) return null
  const allowed = LAYERS[layer]?.layers ?? []
  if (allowed.includes(to)) return null
  if (allowed.some((a) => a.includes('/') && target.startsWith(`src/${a}/`))) return null
  return `${layer} may not import ${to}`
}

/** Faults of a file's imports against the import rule, one text each. `path` from the root. */
export const importFaults = (path: string, root: Node): readonly string[] => {
  if (LAYERS[layerOf(path)] === undefined) return [`${path}: no layer of this name is known`]
  return namedModules(root).flatMap(({ from }) => {
    if (from === null) return [`${path}: imports a module whose name is not a plain text`]
    const fault = from.startsWith('.')
      ? fileFault(path, posix.normalize(posix.join(posix.dirname(path), from)))
      : packageFault(path, from)
    return fault === null ? [] : [`${path}: ${fault}`]
  })
}

/** `import * as z from 'zod'` is the only form that keeps the unused half out of the bundle. */
export const zodFaults = (path: string, root: Node): readonly string[] =>
  namedModules(root).flatMap(({ from, node }) => {
    if (from !== 'zod' && !from?.startsWith('zod/')) return []
    const kinds = ((node.specifiers ?? []) as readonly Node[]).map((s) => s.type)
    const plain = node.type === 'ImportDeclaration' && kinds.join() === 'ImportNamespaceSpecifier'
    return plain ? [] : [`${path}: zod is imported as a whole (import * as z)`]
  })
