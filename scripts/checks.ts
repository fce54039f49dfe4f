import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseSync } from 'oxc-parser'
import { runScript } from './run-script'

const root = fileURLToPath(new URL('..', import.meta.url))

/** How a comment beside a test says where its figures are from. */
const SOURCES =
  /\b(?:ISO(?:\/IEC)?|IEC|ASTM|SSPC|NIST|GUM|JCGM|CFR|RFC ?\d|OWASP|ASVS|WCAG|WHATWG|W3C|IETF|ITU|Peppol|EN ?16931|Operations Research|PSPLIB|Kolisch|Kincaid|published|handbook|bulletin|draft-|Standard Webhooks|EPA|OSHA|NIOSH|UBA|IICRC|AMS|SAE|eCFR)\b/
const PRACTICE = /common practice/i
const MEMORY = /from memory/i
const OWN = /own estimate|own judgement/i

/** Libraries from npm that compute the same thing independently. */
const REFERENCES: Readonly<Record<string, string>> = {
  'decimal.js': 'decimal.js (exact decimals)',
  highs: 'highs (optimal schedules)',
  'ical.js': 'ical.js (reads calendar files)',
  'vin-validator': 'vin-validator (check digits)',
  'axe-core': 'axe-core (accessibility rules)',
  standardwebhooks: 'standardwebhooks (signatures)',
  '@stdlib/stats-base-dists-normal-cdf': '@stdlib (normal distribution)',
  '@stdlib/stats-base-dists-t-quantile': '@stdlib (Student t)',
  '@seriousme/openapi-schema-validator': 'openapi-schema-validator (OpenAPI 3.1)',
  'flesch-kincaid': 'flesch-kincaid (reading grade)',
}

export type Check = {
  readonly file: string
  readonly title: string
  readonly against: 'outside' | 'practice' | 'memory' | 'own'
  readonly source: string
}

type Node = { readonly type: string; readonly start: number; readonly end: number }

const isNode = (v: unknown): v is Node =>
  v !== null && typeof v === 'object' && typeof (v as Node).type === 'string'

const walk = (node: Node, see: (n: Node) => void): void => {
  see(node)
  for (const value of Object.values(node)) {
    if (Array.isArray(value)) for (const v of value) if (isNode(v)) walk(v, see)
    if (isNode(value)) walk(value, see)
  }
}

/** The name a call is made by: `it`, `it.each(…)`, `describe.each(…)`. */
const calledBy = (source: string, node: Node): string | undefined =>
  /^(it|test|describe|check)\b/.exec(source.slice(node.start, node.end))?.[1]

const titleOf = (node: Node): string | undefined => {
  const [first] = (node as unknown as { arguments: readonly Node[] }).arguments
  const literal = first as (Node & { value?: unknown }) | undefined
  return typeof literal?.value === 'string' ? literal.value : undefined
}

const classOf = (text: string): Check['against'] | undefined =>
  MEMORY.test(text)
    ? 'memory'
    : PRACTICE.test(text)
      ? 'practice'
      : SOURCES.test(text)
        ? 'outside'
        : OWN.test(text)
          ? 'own'
          : undefined

const plain = (comment: string): string =>
  comment
    .split('\n')
    .map((l) => l.replace(/^\s*\*?\s?/, '').trim())
    .join(' ')
    .replace(/\s+/g, ' ')
    .replaceAll('|', '\\|')
    .trim()

/** Comments that follow one another are read as one text. */
const joined = (source: string, comments: readonly (Node & { value: string })[]) => {
  const all: { start: number; end: number; text: string }[] = []
  for (const c of comments) {
    const last = all.at(-1)
    const between = last ? source.slice(last.end, c.start) : ''
    if (last && between.trim() === '' && between.split('\n').length <= 2) {
      all[all.length - 1] = {
        start: last.start,
        end: c.end,
        text: `${last.text} ${plain(c.value)}`,
      }
    } else all.push({ start: c.start, end: c.end, text: plain(c.value) })
  }
  return all
}

/** The checks of one test file whose comments, or whose imports, name where the truth is from. */
export const checksOf = (file: string, source: string): readonly Check[] => {
  const { program, comments } = parseSync(file, source)
  const calls: { node: Node; title: string }[] = []
  walk(program as unknown as Node, (node) => {
    if (node.type !== 'CallExpression' || calledBy(source, node) === undefined) return
    const title = titleOf(node)
    if (title !== undefined) calls.push({ node, title })
  })
  const found = joined(source, comments as never).flatMap((comment): readonly Check[] => {
    const against = classOf(comment.text)
    if (against === undefined) return []
    const inside = calls.filter((c) => c.node.start <= comment.start && comment.end <= c.node.end)
    const next = calls.find((c) => c.node.start >= comment.end)
    const near = inside.sort((a, b) => b.node.start - a.node.start)[0]
    const right = next !== undefined && source.slice(comment.end, next.node.start).trim() === ''
    const title = (right ? next.title : (near?.title ?? next?.title)) ?? ''
    return [{ file, title, against, source: comment.text }]
  })
  const imports = [...source.matchAll(/from '([^']+)'/g)].flatMap(([, name = '']) => {
    const source = REFERENCES[name]
    return source === undefined ? [] : [{ file, title: '', against: 'outside' as const, source }]
  })
  return [...found, ...imports]
}

const testFiles = (): readonly string[] =>
  ['src', 'tests']
    .flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map(
        (f) => `${folder}/${f.replaceAll('\\', '/')}`,
      ),
    )
    .filter((f) => /\.test\.tsx?$/.test(f))
    .sort()

const HEADINGS: readonly (readonly [Check['against'], string])[] = [
  ['outside', 'Against something published, or a library of others'],
  ['practice', 'Common practice, no source'],
  ['memory', 'Values from memory'],
  ['own', 'Our own estimate: not an outside check'],
]

/** The page, made from the comments beside the tests; what has none is counted at the end. */
export const checksPage = (): string => {
  const files = testFiles()
  const all = files.flatMap((f) => checksOf(f, readFileSync(join(root, f), 'utf8')))
  const parts = HEADINGS.map(([against, heading]) => {
    const rows = all.filter((c) => c.against === against)
    const lines = rows.map((c) => `| [${c.file}](../${c.file}) | ${c.title} | ${c.source} |`)
    return `## ${heading}\n\n${rows.length} places.\n\n| file | test | what it is held against |\n| --- | --- | --- |\n${lines.join('\n')}\n`
  })
  const named = new Set(all.map((c) => c.file))
  const rest = files.filter((f) => !named.has(f))
  return `# What is checked, and against what

Made from the comments beside the tests by \`npm run checks\`; a test holds it to them. The other ${rest.length} of ${files.length} test files check our own promises: shapes, rights, words, that nothing is lost. The long proofs stand in [proof.md](proof.md).

${parts.join('\n')}
## What is missing

- No figure of ours was compared with jobs measured in a studio; [eval.md](eval.md) compares with what was told of real cars.
- No gauge was held against a car; the paint model is checked as arithmetic, its starting values are estimates.
- No hosted libSQL server and no real edge network took part.
- Nobody with a screen reader, and nobody with wet gloves, has used it; axe-core and key presses stand in for them.
`
}

runScript(import.meta.url, () => writeFileSync(join(root, 'docs/checks.md'), checksPage()))
