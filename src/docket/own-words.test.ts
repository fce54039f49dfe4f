import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import { kinds, type LineKind } from './kinds'
import { BLANK, blankOwnWords, OWN_WORDS, ownWordsIn } from './own-words'

type Node = {
  readonly type?: string
  readonly maxLength?: number
  readonly pattern?: string
  readonly enum?: unknown
  readonly const?: unknown
  readonly properties?: Readonly<Record<string, Node>>
  readonly items?: Node
  readonly anyOf?: readonly Node[]
  readonly oneOf?: readonly Node[]
}

/** Where a shape takes any text: no fixed list, no pattern. */
const free = (node: Node, path = ''): readonly (readonly [path: string, most: number])[] => {
  const below = (name: string) => (path === '' ? name : `${path}.${name}`)
  const own =
    node.type === 'string' && !node.pattern && !node.enum && node.const === undefined
      ? [[path, node.maxLength ?? Number.POSITIVE_INFINITY] as const]
      : []
  return [
    ...own,
    ...Object.entries(node.properties ?? {}).flatMap(([name, n]) => free(n, below(name))),
    ...(node.items ? free(node.items, below('*')) : []),
    ...[...(node.anyOf ?? []), ...(node.oneOf ?? [])].flatMap((n) => free(n, path)),
  ]
}

/** Texts of any length that are nobody's own words: why. */
const NOBODYS: Readonly<Record<string, string>> = {
  'opened.language': 'the name of a language',
  'revised.terms': 'the studio’s terms, the same for everybody',
  'revised.offer.currency': 'three letters',
  'revised.options.*.offer.currency': 'three letters',
  'answered-own.prompt': 'the studio’s question, the same for everybody',
  'dated.readyLikely': 'a time',
  'dated.readyCautious': 'a time',
  'crew-changed.readyLikely': 'a time',
  'crew-changed.readyCautious': 'a time',
  'checked-in.fuel': 'how full the tank is',
  'polished.machine': 'a tool',
  'polished.pad': 'a tool',
  'polished.abrasive': 'a product',
  'polished.speed': 'a setting of a tool',
  'removed.thickness': 'a measure',
}

/** An id or a key of ours is declared with this length; typed words are not. */
const KEY_LENGTH = 64

const found = Object.entries(kinds).flatMap(([kind, shape]) =>
  free(z.toJSONSchema(shape, { io: 'input' }) as Node)
    .filter(([, most]) => most !== KEY_LENGTH)
    .map(([path]) => `${kind}.${path}`),
)

describe('the words that stand in lines', () => {
  it('are all in the list, or it is said why they are nobody’s', () => {
    const listed = Object.entries(OWN_WORDS).flatMap(([kind, paths]) =>
      paths.map((path) => `${kind}.${path}`),
    )
    expect([...new Set(found)].sort()).toEqual([...listed, ...Object.keys(NOBODYS)].sort())
  })

  it('are taken out, and the line stays one of its kind', () => {
    const struck = { line: 'l1', why: 'Robin rang' }
    expect(ownWordsIn('struck', struck)).toEqual(['Robin rang'])
    const body = blankOwnWords('struck', struck)
    expect(body).toEqual({ line: 'l1', why: BLANK })
    expect(kinds.struck.safeParse(body).success).toBe(true)
    expect(blankOwnWords('struck', body)).toBeNull()
    const handed = { account: { net: 1, tax: 0, total: 1 }, open: ['Robin’s key', 'the mats'] }
    expect(blankOwnWords('handed-over', handed)).toMatchObject({ open: [BLANK, BLANK] })
  })

  it('of a kind without any, or of none, are none', () => {
    for (const kind of ['done', '__proto__', 'toString'] as LineKind[]) {
      expect(blankOwnWords(kind, { step: 'wash' })).toBeNull()
      expect(ownWordsIn(kind, { step: 'wash' })).toEqual([])
    }
  })
})
