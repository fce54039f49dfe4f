import { dangers } from '../questions/dangers'
import { filmAge } from '../questions/film-age'
import { filmKind } from '../questions/film-kind'
import { filmState } from '../questions/film-state'
import { filmWhere } from '../questions/film-where'
import type { Reader } from '../reader'
import { has } from './has'

export const FILM_CLASSES = ['young', 'ageing', 'brittle'] as const
export type FilmClass = (typeof FILM_CLASSES)[number]

/** Years at which film passes into the next class, and from which it comes off by the hour only. */
export const FILM_YEARS = { ageing: 5, byHour: 7, brittle: 10 } as const

/** How film of this age (years) and state comes off; an unknown age counts as ageing. */
export const filmClassOf = (years: number | undefined, state: readonly string[]): FilmClass => {
  if (state.includes('cracked') || (years ?? 0) >= FILM_YEARS.brittle) return 'brittle'
  if (years === undefined ? !state.includes('pliable') : years >= FILM_YEARS.ageing) return 'ageing'
  return state.includes('dull') ? 'ageing' : 'young'
}

/** The film's class; read only where film is in scope. */
export const filmClass = (r: Reader): FilmClass =>
  filmClassOf(r.value(filmAge), r.value(filmState) ?? [])

/** True when film is offered by the hour: seven years or more, not known, cracked, or begun by someone. */
export const filmByHour = (r: Reader): boolean => {
  const years = r.value(filmAge)
  return (
    years === undefined || years >= FILM_YEARS.byHour || has(r, filmState, 'cracked', 'started')
  )
}

/** True when film or wrap (not lettering or stickers alone) is to come off. */
export const hasFilm = (r: Reader): boolean => {
  if (!has(r, dangers, 'film')) return false
  const kinds = r.value(filmKind)
  return kinds === undefined || kinds.some((k) => k === 'clear-film' || k === 'wrap')
}

/** Where the film is; the front when the owner does not know. */
export const filmPlaces = (r: Reader): readonly string[] => {
  const where = r.value(filmWhere)
  return where === undefined || where.length === 0 ? ['front-bumper', 'bonnet'] : where
}

/** True when film or wrap comes off painted panels, not off glass alone. */
export const hasBodyFilm = (r: Reader): boolean =>
  hasFilm(r) && filmPlaces(r).some((place) => place !== 'glass')
