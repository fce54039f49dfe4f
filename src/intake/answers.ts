/** What is stored for a question: a parsed value, or the plain statement that the owner does not know. */
export type Answer = { readonly value: unknown } | { readonly unsure: true }
export type Answers = Readonly<Record<string, Answer>>

export const isUnsure = (a: Answer | undefined): a is { readonly unsure: true } =>
  a !== undefined && 'unsure' in a
