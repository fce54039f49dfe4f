import type { Phrase } from './question'

/**
 * One fault of a posted answer: where (JSON pointer into the body), which (its sentence is
 * `error.<code>`), and limits for the sentence. It never carries what was typed.
 */
export type Issue = {
  readonly pointer: string
  readonly code: string
  readonly params?: NonNullable<Phrase['params']>
}

export const issue = (code: string, pointer = '/value', params?: Phrase['params']): Issue => ({
  pointer,
  code,
  ...(params && { params }),
})
