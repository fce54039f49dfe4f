import { parseSync } from 'oxc-parser'

export type Node = { readonly type: string; readonly start: number } & Readonly<
  Record<string, unknown>
>

/** A module named in a file, however it is named; `from` is null when it is not a plain text. */
export type Named = { readonly from: string | null; readonly node: Node }

const isNode = (v: unknown): v is Node =>
  typeof v === 'object' && v !== null && typeof (v as Node).type === 'string'

/** Parses TypeScript or TSX; throws on a file that is not. */
export const parse = (path: string, source: string): Node => {
  const { program, errors } = parseSync(path, source)
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`)
  return program as unknown as Node
}

/** Calls `visit` for every node with the node it stands in and the field it stands under. */
export const eachNode = (
  root: Node,
  visit: (node: Node, parent: Node | null, field: string) => void,
): void => {
  const go = (node: Node, parent: Node | null, field: string): void => {
    visit(node, parent, field)
    for (const [key, value] of Object.entries(node)) {
      if (isNode(value)) go(value, node, key)
      else if (Array.isArray(value)) for (const each of value) if (isNode(each)) go(each, node, key)
    }
  }
  go(root, null, '')
}

const textOf = (v: unknown): string | null => {
  if (!isNode(v)) return null
  if (v.type === 'Literal' && typeof v.value === 'string') return v.value
  if (v.type !== 'TemplateLiteral') return null
  const [only, ...more] = v.quasis as readonly { readonly value: { readonly cooked: string } }[]
  return more.length === 0 ? (only?.value.cooked ?? null) : null
}

/** Every module a file names: imports, types, re-exports, dynamic imports, import types, require. */
export const namedModules = (root: Node): readonly Named[] => {
  const found: Named[] = []
  eachNode(root, (node) => {
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
      case 'ImportExpression':
      case 'TSImportType':
        found.push({ from: textOf(node.source), node })
        break
      case 'ExportNamedDeclaration':
        if (node.source) found.push({ from: textOf(node.source), node })
        break
      case 'TSExternalModuleReference':
        found.push({ from: textOf(node.expression), node })
        break
      case 'CallExpression': {
        const callee = node.callee as Node
        if (callee.type === 'Identifier' && callee.name === 'require')
          found.push({ from: textOf((node.arguments as readonly unknown[])[0]), node })
        break
      }
    }
  })
  return found
}
