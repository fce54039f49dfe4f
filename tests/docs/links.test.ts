import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type DocPage, docPages, ROOT } from './pages-of-docs'

const withoutBlocks = (text: string): string => text.replace(/^```[\s\S]*?^```$/gm, '')

/** Links to files of ours, with the heading they name. */
const linksOf = ({ path, text }: DocPage) =>
  [...withoutBlocks(text).matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, to = '']) => to)
    .filter((to) => !/^[a-z]+:/.test(to))
    .map((to) => {
      const [file = '', heading] = to.split('#')
      return { to, file: file === '' ? path : normalize(join(dirname(path), file)), heading }
    })

/** A heading as the name it gets in a rendered page. */
const nameOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .trim()
    .replaceAll(' ', '-')

const headingsOf = (file: string): readonly string[] =>
  [...readFileSync(join(ROOT, file), 'utf8').matchAll(/^#+ (.*)$/gm)].map(([, h = '']) => nameOf(h))

/** Files and folders named in code marks, by their first folder. */
const PATH = /^(?:src|tests|scripts|docs|dev|migrations|\.ci)\/[\w./-]*$/
const pathsOf = ({ text }: DocPage): readonly string[] =>
  [...withoutBlocks(text).matchAll(/`([^`\s]+)`/g)]
    .map(([, code = '']) => code)
    .filter((c) => PATH.test(c))

const pages = docPages()

describe('the written pages', () => {
  it('are found', () => {
    expect(pages.length).toBeGreaterThan(15)
    expect(pages.flatMap(linksOf).length).toBeGreaterThan(30)
    expect(pages.flatMap(pathsOf).length).toBeGreaterThan(20)
  })

  it.each(pages.map((p) => [p.path, p] as const))('%s links and names what is there', (_, page) => {
    const dead = linksOf(page).filter(
      ({ file, heading }) =>
        !existsSync(join(ROOT, file)) ||
        (heading !== undefined && !headingsOf(file).includes(heading)),
    )
    expect(dead.map((d) => d.to)).toEqual([])
    expect(pathsOf(page).filter((path) => !existsSync(join(ROOT, path)))).toEqual([])
  })

  it('names no npm script that is not there', () => {
    const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
      scripts: Record<string, string>
    }
    const named = pages.flatMap(({ text }) =>
      [...text.matchAll(/npm run ([\w:-]+)/g)].map(([, name = '']) => name),
    )
    expect(new Set(named).size).toBeGreaterThan(8)
    expect([...new Set(named)].filter((name) => !(name in scripts))).toEqual([])
  })
})
