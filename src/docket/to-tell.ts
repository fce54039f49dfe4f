import type { BodyOf } from './kinds'
import type { Line } from './line'

export const TELLS = [
  'quote',
  'question',
  'look-over',
  'turned-down',
  'reply',
  'extra',
  'day',
  'smaller',
] as const
export type Tell = (typeof TELLS)[number]

/** Something a customer should hear of and nobody has told them yet; `line` is the line it is about. */
export type ToTell = {
  readonly line: string
  readonly what: Tell
  readonly at: number
  /** The question, extra or smaller result it is about. */
  readonly about: string | null
}

export type Telling = { readonly toTell: readonly ToTell[] }

const MOVED: Readonly<Record<string, Tell>> = {
  'look-over': 'look-over',
  'turned-down': 'turned-down',
}
/** What a customer took back or we closed needs no more telling. */
const OVER: readonly string[] = ['withdrawn', 'lapsed', 'called-off', 'not-brought']

/**
 * What the studio still has to tell the customer. A line of its own takes something off (told by
 * message, phone or in person); so does the customer's own answer to it, and a newer one of its kind.
 */
export const foldToTell = (office: readonly Line[]): Telling => {
  let open: ToTell[] = []
  const drop = (gone: (t: ToTell) => boolean): void => {
    open = open.filter((t) => !gone(t))
  }
  const add = (line: Line, what: Tell, about: string | null = null): void => {
    open.push({ line: line.id, what, at: line.at, about })
  }
  for (const line of office) {
    const mine = line.by === 'customer'
    switch (line.kind) {
      case 'sent':
        drop((t) => t.what === 'quote' || t.what === 'look-over')
        add(line, 'quote')
        break
      case 'decided':
        drop((t) => t.what === 'quote')
        break
      case 're-asked':
        add(line, 'question', (line.body as BodyOf<'re-asked'>).question)
        break
      case 'answered':
        if (mine)
          drop(
            (t) => t.what === 'question' && t.about === (line.body as BodyOf<'answered'>).question,
          )
        break
      case 'photo-added':
        if (mine) drop((t) => t.what === 'question' && t.about === 'photos')
        break
      case 'moved': {
        const { to } = line.body as BodyOf<'moved'>
        if (OVER.includes(to)) open = []
        drop((t) => t.what === 'look-over' || t.what === 'turned-down')
        const what = MOVED[to]
        if (what && !mine) add(line, what)
        break
      }
      case 'replied':
        add(line, 'reply')
        break
      case 'extra-asked': {
        const { extra, within } = line.body as BodyOf<'extra-asked'>
        if (!within) add(line, 'extra', extra)
        break
      }
      case 'extra-decided':
        drop((t) => t.about === (line.body as BodyOf<'extra-decided'>).extra)
        break
      case 'dated':
        drop((t) => t.what === 'day')
        add(line, 'day')
        break
      case 're-issued':
        drop((t) => t.what === 'smaller')
        add(line, 'smaller')
        break
      case 're-issue-decided':
        drop((t) => t.what === 'smaller')
        break
      case 'handed-over':
        open = []
        break
      case 'told': {
        const { lines } = line.body as BodyOf<'told'>
        drop((t) => lines.includes(t.line))
        break
      }
    }
  }
  return { toTell: open }
}
