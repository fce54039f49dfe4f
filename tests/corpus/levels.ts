import type { Answer } from '../../src/intake/answers'
import type { Question } from '../../src/intake/question'
import type { Draw } from './random'

const YEARS = [1958, 1985, 1998, 2003, 2008, 2021]
const GIVEN: Readonly<Record<string, readonly unknown[]>> = {
  date: ['2026-06-05'],
  money: [0, 60_000],
  text: ['The left door, please.'],
  vin: ['1M8GDM9AXKP042788'],
  photos: [['a', 'b']],
  contact: [
    { name: 'Ada', email: 'ada@example.test' },
    { name: 'Ben', phone: '+44 20 7946 0000' },
  ],
  yesNo: [true, false],
}

const single = (q: Question<unknown>): readonly unknown[] => {
  if (q.kind === 'choice') return q.options ?? []
  if (q.kind === 'year') return YEARS
  if (q.kind === 'number')
    return [...new Set([q.min, ...(q.likely ?? []).map(([v]) => v), q.max])].filter(
      (v) => v !== undefined,
    )
  return GIVEN[q.kind] ?? []
}

/** Everything that can be told apart about an answer: an option picked, none, unsure, left out. */
export const levelsOf = (q: Question<unknown>): readonly string[] => [
  ...(q.kind === 'multi'
    ? [...(q.options ?? []), 'none']
    : single(q).map((v) => (typeof v === 'string' ? v : JSON.stringify(v)))),
  ...(q.unsureAllowed ? ['unsure'] : []),
  ...(q.optional ? ['left-out'] : []),
]

const text = (v: unknown): string => (typeof v === 'string' ? v : JSON.stringify(v))

/** The levels an answer shows. */
export const shows = (q: Question<unknown>, a: Answer): readonly string[] => {
  if ('unsure' in a) return ['unsure']
  if (a.value === null) return ['left-out']
  if (q.kind !== 'multi') return [text(a.value)]
  const picked = a.value as readonly string[]
  return picked.length === 0 ? ['none'] : picked
}

/** An answer that shows `level`; the other options of a multi are drawn. */
export const answerWith = (q: Question<unknown>, level: string, draw: Draw): Answer => {
  if (level === 'unsure') return { unsure: true }
  if (level === 'left-out') return { value: null }
  if (q.kind !== 'multi') return { value: single(q).find((v) => text(v) === level) }
  if (level === 'none') return { value: [] }
  const more = [0, 0, 1, 1, 2, 4][draw(6)] ?? 0
  const alone = q.alone ?? []
  const picked = new Set([level])
  for (let i = 0; i < more && !alone.includes(level); i += 1) {
    const other = q.options?.[draw(q.options.length)]
    if (other !== undefined && !alone.includes(other)) picked.add(other)
  }
  return { value: q.options?.filter((o) => picked.has(o)) }
}

export const anyAnswer = (q: Question<unknown>, draw: Draw): Answer => {
  const levels = levelsOf(q)
  return answerWith(q, levels[draw(levels.length)] ?? 'unsure', draw)
}
