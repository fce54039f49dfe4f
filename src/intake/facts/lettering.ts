import { dangers } from '../questions/dangers'
import { filmKind } from '../questions/film-kind'
import type { Reader } from '../reader'
import { has } from './has'
import { wants } from './wants'

/** True when lettering or decals are on the body. */
export const hasLettering = (r: Reader): boolean =>
  has(r, dangers, 'film') && has(r, filmKind, 'lettering')

/** True when single stickers come off: named among what is stuck on, or asked for where nothing was named. */
export const hasStickers = (r: Reader): boolean =>
  has(r, dangers, 'film') ? has(r, filmKind, 'stickers') : wants(r, 'stickers')
