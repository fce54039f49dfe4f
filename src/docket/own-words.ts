import type { LineKind } from './kinds'

/**
 * Words somebody may have typed that stand in a line itself, by kind and path (`*`: every one of a
 * list): the rest of what is typed stands in tables of its own. They may name a person, so an
 * erasure takes them out. A test holds this list against the shapes of all kinds.
 */
export const OWN_WORDS: Readonly<Partial<Record<LineKind, readonly string[]>>> = {
  revised: [
    'adjustments.*.why',
    'adjustments.*.name',
    'dropped.*.why',
    'dropped.*.name',
    'offer.lines.*.name',
    'options.*.adjustments.*.why',
    'options.*.adjustments.*.name',
    'options.*.offer.lines.*.name',
  ],
  'handed-over': ['open.*'],
  reading: ['spot'],
  recorded: ['value'],
  'stayed-overnight': ['where', 'keys'],
  'timer-set': ['what'],
  unreadable: ['why'],
  found: ['place'],
  removed: ['item', 'place', 'stored'],
  struck: ['why'],
  wanted: ['thing'],
  supplied: ['thing'],
}

/** What stands where words were taken out. */
export const BLANK = '–'

const at = (value: unknown, path: readonly string[], change: (text: string) => string): unknown => {
  const [step, ...rest] = path
  if (step === undefined) return typeof value === 'string' ? change(value) : value
  if (step === '*') return Array.isArray(value) ? value.map((v) => at(v, rest, change)) : value
  if (value === null || typeof value !== 'object' || !Object.hasOwn(value, step)) return value
  const inner = (value as Readonly<Record<string, unknown>>)[step]
  return { ...value, [step]: at(inner, rest, change) }
}

const pathsOf = (kind: string): readonly string[] =>
  Object.hasOwn(OWN_WORDS, kind) ? (OWN_WORDS[kind as LineKind] ?? []) : []

/** A line's body with the words somebody typed taken out; null where there are none to take. */
export const blankOwnWords = (kind: string, body: unknown): unknown => {
  let taken = false
  const blank = (text: string): string => {
    taken ||= text !== BLANK
    return BLANK
  }
  const out = pathsOf(kind).reduce((b, path) => at(b, path.split('.'), blank), body)
  return taken ? out : null
}

/** The words somebody typed into a line itself. */
export const ownWordsIn = (kind: string, body: unknown): readonly string[] => {
  const found: string[] = []
  for (const path of pathsOf(kind))
    at(body, path.split('.'), (text) => {
      if (text !== BLANK) found.push(text)
      return text
    })
  return found
}
