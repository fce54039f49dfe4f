import type { Words } from '../words/render'
import type { Assets } from './assets'

export type NavLink = { readonly href: string; readonly text: string; readonly here?: boolean }

/** What every page needs from around it. */
export type Frame = {
  readonly words: Words
  readonly assets: Assets
  readonly studioName: string
  /** The studio's picture as a data URL. */
  readonly logo?: string
  /** Where the studio's name leads; absent: plain text. */
  readonly home?: string
  /** Right of the name: a reference, a place, who is signed in. */
  readonly who?: string
  /** Printed on every sheet; absent: the studio's name alone. */
  readonly reference?: string
  /** A short message above everything, e.g. that an answer came too late. */
  readonly notice?: string
  readonly nav?: readonly NavLink[]
}

/** One fault of a form: the field's name and the sentence said at the top and beside the field. */
export type FieldError = { readonly field: string; readonly message: string }

/** What was typed, by field name, so that a refused form comes back as it was. */
export type Kept = Readonly<Record<string, readonly string[]>>

export const keptOne = (kept: Kept | undefined, name: string, otherwise = ''): string =>
  kept?.[name]?.[0] ?? otherwise
