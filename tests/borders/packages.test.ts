import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8'))

type Locked = {
  readonly version?: string
  readonly resolved?: string
  readonly integrity?: string
  readonly inBundle?: boolean
  readonly hasInstallScript?: boolean
}
const own = read('package.json') as {
  readonly dependencies: Readonly<Record<string, string>>
  readonly devDependencies: Readonly<Record<string, string>>
  readonly allowScripts: Readonly<Record<string, boolean>>
}
const lock = read('package-lock.json') as { readonly packages: Readonly<Record<string, Locked>> }
const installed = Object.entries(lock.packages).filter(
  // What comes inside another package comes under that one's hash.
  ([path, p]) => path !== '' && !p.inBundle,
)
const nameOf = (path: string): string => path.split('node_modules/').at(-1) ?? ''

describe('the packages', () => {
  it('are named at one exact version, the one in the lock file', () => {
    for (const [name, version] of Object.entries({ ...own.dependencies, ...own.devDependencies })) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/)
      expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version)
    }
  })

  it('each have the hash of what they are, and none comes from a place of its own', () => {
    expect(installed.length).toBeGreaterThan(100)
    for (const [path, { resolved, integrity }] of installed) {
      expect(integrity, path).toMatch(/^sha512-/)
      // Left out by choice: whoever installs takes their own registry, and the hash decides.
      expect(resolved, path).toBeUndefined()
    }
  })

  it('run a script when installed only where that was decided by name', () => {
    const scripted = installed.filter(([, p]) => p.hasInstallScript).map(([path]) => nameOf(path))
    expect([...new Set(scripted)].sort()).toEqual(
      [...new Set([...Object.keys(own.allowScripts)])].sort(),
    )
  })
})
