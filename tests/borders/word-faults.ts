import { eachNode, type Node } from './syntax'

/**
 * Arithmetic that gives the same bits on Node, workerd and browsers (measured), or is exact. Sine and
 * cosine are not: Node 20 and Chromium 147 differ in their last bit.
 */
export const MATH = new Set(
  'abs ceil floor round trunc sign max min imul sqrt exp log PI'.split(' '),
)

/** Names of the world outside: clock, chance, locale, machine. Never used, not even shadowed. */
const OUTSIDE = new Set(
  `Date Intl globalThis process performance crypto setTimeout setInterval queueMicrotask fetch eval
   Function require console navigator window document localStorage Buffer Deno Temporal WeakRef`.split(
    /\s+/,
  ),
)

const plainName = (node: Node): string | null => {
  const property = node.property as Node
  if (!node.computed) return String(property.name)
  return typeof property.value === 'string' ? property.value : null
}

/** A name that is only a label: a property after a dot, a key, not a variable. */
const isLabel = (parent: Node | null, field: string): boolean => {
  if (parent === null) return false
  if (parent.type === 'MemberExpression') return field === 'property' && !parent.computed
  if (field !== 'key') return false
  return !parent.computed && !(parent.type === 'Property' && parent.shorthand)
}

/** Everything in a file of the pure domain that could differ between two engines or two runs. */
export const pureFaults = (path: string, root: Node): readonly string[] => {
  const faults: string[] = []
  const say = (what: string) => faults.push(`${path}: ${what} in the pure domain`)
  eachNode(root, (node, parent, field) => {
    if (node.type === 'BinaryExpression' && node.operator === '**') say('**')
    if (node.type === 'AssignmentExpression' && node.operator === '**=') say('**=')
    if (node.type === 'MetaProperty' && (node.meta as Node).name === 'import') say('import.meta')
    if (node.type === 'MemberExpression') {
      const name = plainName(node)
      if (name?.startsWith('toLocale') || name === 'localeCompare') say(`.${name}`)
    }
    if (node.type !== 'Identifier' || isLabel(parent, field)) return
    const name = String(node.name)
    if (OUTSIDE.has(name)) say(name)
    if (name !== 'Math') return
    const member = parent?.type === 'MemberExpression' && field === 'object' ? parent : null
    const used = member && plainName(member)
    if (!used || !MATH.has(used)) say(used ? `Math.${used}` : 'Math itself')
  })
  return faults
}

/** The environment is read at the rim only. */
export const envFaults = (path: string, root: Node): readonly string[] => {
  const faults: string[] = []
  eachNode(root, (node, parent, field) => {
    if (node.type === 'Identifier' && node.name === 'process' && !isLabel(parent, field))
      faults.push(`${path}: process is read outside the rim`)
    if (node.type !== 'MemberExpression' || plainName(node) !== 'env') return
    const object = node.object as Node
    if (object.type === 'MetaProperty') faults.push(`${path}: import.meta.env is read`)
  })
  return faults
}

/** The clock and chance are handed in by the entries. */
export const clockFaults = (path: string, root: Node): readonly string[] => {
  const faults: string[] = []
  const called = (node: Node, object: string, name: string): boolean =>
    node.type === 'MemberExpression' &&
    (node.object as Node).name === object &&
    plainName(node) === name
  eachNode(root, (node) => {
    if (called(node, 'Date', 'now')) faults.push(`${path}: Date.now`)
    if (called(node, 'Math', 'random')) faults.push(`${path}: Math.random`)
    const bare = (node.arguments as readonly unknown[] | undefined)?.length === 0
    if ((node.type === 'NewExpression' || node.type === 'CallExpression') && bare)
      if ((node.callee as Node).name === 'Date') faults.push(`${path}: Date() without a time`)
  })
  return faults
}

/** A transaction held open over several trips does not work on the edge: batches only. */
export const transactionFaults = (path: string, root: Node): readonly string[] => {
  const faults: string[] = []
  eachNode(root, (node) => {
    if (node.type !== 'CallExpression') return
    const callee = node.callee as Node
    if (callee.type === 'MemberExpression' && plainName(callee) === 'transaction')
      faults.push(`${path}: .transaction(`)
  })
  return faults
}
