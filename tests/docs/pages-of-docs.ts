import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT = fileURLToPath(new URL('../..', import.meta.url))

export type DocPage = { readonly path: string; readonly text: string }
export type Block = {
  readonly page: string
  readonly language: string
  readonly body: string
}

/** Every page a reader may open: README, DEVELOPERS and all of docs/. */
export const docPages = (): readonly DocPage[] =>
  [
    'README.md',
    'DEVELOPERS.md',
    ...readdirSync(join(ROOT, 'docs'), { recursive: true, encoding: 'utf8' })
      .filter((f) => f.endsWith('.md'))
      .map((f) => `docs/${f}`),
  ].map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }))

/** The fenced blocks of a page, in order. */
export const blocksOf = ({ path, text }: DocPage): readonly Block[] =>
  [...text.matchAll(/^```(\w*)\n([\s\S]*?)^```$/gm)].map(([, language = '', body = '']) => ({
    page: path,
    language,
    body,
  }))
