import type { Catalogue, Formats, Words } from '../../words/render'

/** What a device is given to show sheets with: sentences and how figures are written. */
export type SheetWords = { readonly formats: Formats; readonly catalogue: Catalogue }

/** A sheet's own notes come with the sheet: all of them would be a third of the bytes. */
const WANTED =
  /^(page|panel|verdict|step|caution|mask|material|check|format|sequence|paint|error|line|problem|wanted|unit|order|finding|level)\.|^q\.[a-z0-9-]+\.prompt$/

export const sheetWords = (words: Words): SheetWords => ({
  formats: words.formats,
  catalogue: words.slice((key) => WANTED.test(key)),
})

/** The sentences of these notes. */
export const noteWords = (words: Words, notes: readonly { readonly id: string }[]): Catalogue => {
  const ids = new Set(notes.map((n) => n.id))
  return words.slice((key) => key.startsWith('risk.') && ids.has(key.split('.')[1] ?? ''))
}

/** FNV-1a over the text, in 32 bits: other words, another name (parameters by the function's authors). */
const digest = (text: string): string => {
  let h = 0x811c9dc5
  for (let i = 0; i < text.length; i += 1) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193)
  return (h >>> 0).toString(36)
}

/** The name of these words; a device that has them need not ask again. */
export const wordsTag = (given: SheetWords): string => {
  const text = JSON.stringify(given)
  return `${digest(text)}-${text.length.toString(36)}`
}
