import type { Catalogue } from '../render'

/** The words of one question as they are written: options are a label, or a label and a hint. */
export type QuestionWords = {
  readonly prompt: string
  readonly why: string
  /** How to find out, where there is something to try. */
  readonly how?: string
  readonly o?: Readonly<Record<string, string | readonly [label: string, hint: string]>>
}

/** Nested words of questions as a flat catalogue: `q.<id>.prompt`, `.why`, `.how`, `.o.<value>`, `.o.<value>.hint`. */
export const flatQuestions = (all: Readonly<Record<string, QuestionWords>>): Catalogue => {
  const flat: Record<string, string> = {}
  for (const [id, { prompt, why, how, o }] of Object.entries(all)) {
    flat[`q.${id}.prompt`] = prompt
    flat[`q.${id}.why`] = why
    if (how !== undefined) flat[`q.${id}.how`] = how
    for (const [value, words] of Object.entries(o ?? {})) {
      const [label, hint] = typeof words === 'string' ? [words] : words
      flat[`q.${id}.o.${value}`] = label
      if (hint !== undefined) flat[`q.${id}.o.${value}.hint`] = hint
    }
  }
  return flat
}
