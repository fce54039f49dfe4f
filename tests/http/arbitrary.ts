import fc from 'fast-check'
import * as z from 'zod'

type Node = {
  readonly $ref?: string
  readonly type?: string
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly anyOf?: readonly Node[]
  readonly oneOf?: readonly Node[]
  readonly properties?: Readonly<Record<string, Node>>
  readonly required?: readonly string[]
  readonly additionalProperties?: Node | boolean
  readonly items?: Node
  readonly maxItems?: number
  readonly minItems?: number
  readonly minimum?: number
  readonly maximum?: number
  readonly minLength?: number
  readonly maxLength?: number
  readonly pattern?: string
}

/** Stands in every hostile text; an answer that refuses never has it. */
export const ECHO = 'zz-echo-zz'

const HOSTILE = [
  `<script>${ECHO}</script>`,
  `"><img src=x onerror=${ECHO}>`,
  `' OR 1=1 -- ${ECHO}`,
  `javascript:${ECHO}`,
  `=${ECHO}`,
  `${ECHO}\r\nset-cookie: a=b`,
  `\u0000${ECHO}`,
  `\u202e${ECHO}\ud83d\ude97`,
  `__proto__`,
  '',
  ' ',
  'x'.repeat(5000),
] as const

const hostile = fc.constantFrom(...HOSTILE)
const odd = fc.oneof(
  hostile,
  fc.constantFrom(null, true, -1, 0, 1e308, Number.MAX_SAFE_INTEGER, 0.1, [], {}, [[]]),
)

const textOf = (node: Node): fc.Arbitrary<unknown> => {
  if (node.pattern !== undefined) return fc.stringMatching(new RegExp(node.pattern))
  const maxLength = Math.min(node.maxLength ?? 200, 400)
  return fc.oneof(
    fc.string({ minLength: Math.min(node.minLength ?? 0, maxLength), maxLength, unit: 'grapheme' }),
    hostile,
  )
}

const wholeOf = ({ minimum = -1e6, maximum = 1e9 }: Node): fc.Arbitrary<unknown> =>
  fc.integer({
    min: Math.max(minimum, -2_000_000_000),
    max: Math.min(Math.max(maximum, minimum), 2_000_000_000),
  })

const objectOf = (node: Node, depth: number): fc.Arbitrary<unknown> => {
  const own = Object.entries(node.properties ?? {}).map(
    ([name, n]) => [name, arbitraryOf(n, depth + 1)] as const,
  )
  if (own.length === 0 && typeof node.additionalProperties === 'object')
    return fc.dictionary(
      fc.oneof(fc.string({ maxLength: 20 }), hostile),
      arbitraryOf(node.additionalProperties, depth + 1),
      { maxKeys: 4 },
    )
  return fc.record(Object.fromEntries(own), { requiredKeys: [...(node.required ?? [])] })
}

/** Values of a JSON Schema as zod writes it. */
const arbitraryOf = (node: Node, depth = 0): fc.Arbitrary<unknown> => {
  if (depth > 8 || node.$ref !== undefined) return odd
  if (node.const !== undefined) return fc.constant(node.const)
  if (node.enum) return fc.constantFrom(...node.enum)
  const either = node.anyOf ?? node.oneOf
  if (either) return fc.oneof(...either.map((n) => arbitraryOf(n, depth + 1)))
  switch (node.type) {
    case 'string':
      return textOf(node)
    case 'integer':
      return wholeOf(node)
    case 'number':
      return fc.double({ min: node.minimum ?? -1e9, max: node.maximum ?? 1e9, noNaN: true })
    case 'boolean':
      return fc.boolean()
    case 'array':
      return fc.array(arbitraryOf(node.items ?? {}, depth + 1), {
        minLength: Math.min(node.minItems ?? 0, 4),
        maxLength: Math.min(node.maxItems ?? 4, 4),
      })
    case 'object':
      return objectOf(node, depth)
    case 'null':
      return fc.constant(null)
    default:
      return odd
  }
}

/** One value of a body put in another's place, taken out, or added. */
const spoilt = (body: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc
    .tuple(body, fc.nat(50), odd, fc.constantFrom('swap', 'drop', 'add'))
    .map(([b, at, bad, how]) => {
      if (b === null || typeof b !== 'object' || Array.isArray(b)) return bad
      const names = Object.keys(b)
      const name =
        how === 'add' || names.length === 0 ? 'extra' : (names[at % names.length] ?? 'extra')
      const { [name]: _, ...rest } = b as Record<string, unknown>
      return how === 'drop' ? rest : { ...rest, [name]: bad }
    })

/** Bodies for a shape: fitting it, nearly fitting it, and anything at all. */
export const bodyOf = (shape: z.ZodType): fc.Arbitrary<unknown> => {
  const fits = arbitraryOf(z.toJSONSchema(shape, { io: 'input', unrepresentable: 'any' }) as Node)
  return fc.oneof(
    { weight: 5, arbitrary: fits },
    { weight: 4, arbitrary: spoilt(fits) },
    { weight: 1, arbitrary: odd },
  )
}
