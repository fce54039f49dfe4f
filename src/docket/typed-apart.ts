/** Fields that hold what a person typed; the words go apart, the line keeps where. */
export const TYPED = ['text', 'name', 'notes', 'why', 'warnings', 'valuables'] as const

/** Kinds whose reason stands in the line itself. */
export const keepsWords = (kind: string): boolean => kind === 'struck' || kind === 'unreadable'

export type Apart = {
  readonly body: Readonly<Record<string, unknown>>
  readonly texts: readonly { readonly id: string; readonly field: string; readonly text: string }[]
}

/** A bench line's body as it is kept: what was typed stands apart, under ids of the caller's making. */
export const typedApart = (
  kind: string,
  given: Readonly<Record<string, unknown>>,
  newId: () => string,
): Apart => {
  if (keepsWords(kind)) return { body: given, texts: [] }
  const body: Record<string, unknown> = { ...given }
  const texts: { id: string; field: string; text: string }[] = []
  for (const field of TYPED) {
    const text = body[field]
    if (typeof text !== 'string') continue
    const id = newId()
    body[field] = { text: id }
    texts.push({ id, field, text })
  }
  return { body, texts }
}
