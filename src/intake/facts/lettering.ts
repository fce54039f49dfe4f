import { dangers } from '../questions/dangers'
import { filmKind } from '../questions/film-kind'
import type { Reader } from '../reader'
import { comesOff } from './film'
import { has } from './has'
import { wants } from './wants'

/** True when lettering or decals come off the body. */
export const hasLettering = (r: Reader): boolean => comesOff(r) && has(r, filmKind, 'lettering')

/** True when single stickers come off: named among what is stuck on, or asked for where nothing was named. */
export const hasStickers = (r: Reader): boolean =>
  has(r, dangers, 'film') ? comesOff(r) && has(r, filmKind, 'stickers') : wants(r, 'stickers')
