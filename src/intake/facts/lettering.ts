import { dangers } from '../questions/dangers'
import { filmKind } from '../questions/film-kind'
import type { Reader } from '../reader'
import { has } from './has'
import { wants } from './wants'

/** True when lettering or decals are on the body. */
export const hasLettering = (r: Reader): boolean =>
  has(r, dangers, 'film') && has(r, filmKind, 'lettering')

/** True when single stickers come off: asked for, or named among what is stuck on. */
export const hasStickers = (r: Reader): boolean =>
  wants(r, 'stickers') || (has(r, dangers, 'film') && has(r, filmKind, 'stickers'))
