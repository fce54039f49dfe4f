import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))

export type SourceFile = { readonly path: string; readonly source: string }

/** Every TypeScript file under a folder of the repository, by path from its root. */
export const sourceFiles = (folder: string): readonly SourceFile[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `${folder}/${name}`)
    .sort()
    .map((path) => ({ path, source: readFileSync(join(root, path), 'utf8') }))
