import { eachNode, type Node } from './syntax'

export const LONGEST = 250

/** Tables of data, longer than a file with thinking in it may be. */
export const TABLES: readonly string[] = [
  'src/pages/samples.tsx',
  'src/store/migrations.ts',
  'src/words/en/pages.ts',
  'src/words/en/questions.ts',
  'src/words/en/replies.ts',
  'src/words/en/risks.ts',
  'src/words/en/steps.ts',
]

const BRANCHING = new Set([
  'IfStatement',
  'ForStatement',
  'ForOfStatement',
  'ForInStatement',
  'WhileStatement',
  'DoWhileStatement',
  'SwitchStatement',
  'TryStatement',
])

/** Too long, unless it is a table that only holds data. Tests with their value tables are not asked. */
export const lengthFaults = (path: string, source: string, root: Node): readonly string[] => {
  const lines = source.trimEnd().split('\n').length
  if (!TABLES.includes(path))
    return lines > LONGEST ? [`${path}: ${lines} lines, at most ${LONGEST}`] : []
  const faults: string[] = []
  eachNode(root, (node) => {
    if (BRANCHING.has(node.type)) faults.push(`${path}: a table has no ${node.type}`)
  })
  return faults
}

const kebab = (name: string): string =>
  name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`).replace(/^-/, '')

/** A question's file is named after the one question it exports. */
export const questionFaults = (path: string, root: Node): readonly string[] => {
  const file = path.split('/').at(-1)?.replace(/\.ts$/, '')
  const names: string[] = []
  eachNode(root, (node) => {
    if (node.type !== 'ExportNamedDeclaration') return
    const declaration = node.declaration as Node | null
    if (declaration?.type !== 'VariableDeclaration') return
    for (const d of declaration.declarations as readonly Node[]) {
      const init = d.init as Node | null
      const called = init?.type === 'CallExpression' ? (init.callee as Node).name : ''
      if (called === 'question') names.push(String((d.id as Node).name))
    }
  })
  if (names.length !== 1) return [`${path}: exports ${names.length} questions, not one`]
  return names[0] !== undefined && kebab(names[0]) === file ? [] : [`${path}: exports ${names[0]}`]
}
