import { dangers } from '../questions/dangers'
import { filmAge } from '../questions/film-age'
import { filmKind } from '../questions/film-kind'
import { filmState } from '../questions/film-state'
import { filmWhere } from '../questions/film-where'
import type { Reader } from '../reader'
import { has } from './has'
import { wants } from './wants'

export const FILM_CLASSES = ['young', 'ageing', 'brittle'] as const
export type FilmClass = (typeof FILM_CLASSES)[number]

/** Years at which film passes into the next class, and from which it comes off by the hour only. */
export const FILM_YEARS = { ageing: 5, byHour: 7, brittle: 10 } as const

const LIMITS = [FILM_YEARS.brittle, FILM_YEARS.ageing] as const
/** What decides of the film's state, what weighs most first. */
const STATES = ['cracked', 'dull', 'pliable'] as const

/** How film of this age (years) and state comes off; an unknown age counts as ageing unless it is pliable. */
export const filmClassOf = (
  years: number | undefined,
  state: (typeof STATES)[number] | 'other',
): FilmClass => {
  if (state === 'cracked' || (years ?? 0) >= FILM_YEARS.brittle) return 'brittle'
  if (state === 'dull') return 'ageing'
  const old = years === undefined ? state !== 'pliable' : years >= FILM_YEARS.ageing
  return old ? 'ageing' : 'young'
}

/** The film's class; read only where film is in scope. */
export const filmClass = (r: Reader): FilmClass =>
  filmClassOf(
    r.as(filmAge, (years) => LIMITS.find((from) => years >= from) ?? 0),
    r.as(filmState, (state) => STATES.find((s) => state.includes(s)) ?? 'other') ?? 'other',
  )

/** True when film is offered by the hour: seven years or more, not known, cracked, or begun by someone. */
export const filmByHour = (r: Reader): boolean => {
  const old = r.as(filmAge, (years) => years >= FILM_YEARS.byHour) ?? true
  return old || has(r, filmState, 'cracked', 'started')
}

/** True when film or wrap (not lettering or stickers alone) is to come off. */
export const hasFilm = (r: Reader): boolean => {
  if (!has(r, dangers, 'film')) return false
  return r.as(filmKind, (kinds) => kinds.some((k) => k === 'clear-film' || k === 'wrap')) ?? true
}

/** Where the film is; the front when the owner does not know. */
export const filmPlaces = (r: Reader): readonly string[] => {
  const where = r.value(filmWhere)
  return where === undefined || where.length === 0 ? ['front-bumper', 'bonnet'] : where
}

/**
 * True when what is stuck on is taken off: that was asked for, or the paint under it is worked on. On a
 * car that comes for its cabin or its wheels it stays where it is.
 */
export const comesOff = (r: Reader): boolean =>
  has(r, dangers, 'film') && wants(r, 'paint', 'protect', 'stickers')

/** True when film or wrap comes off painted panels, not off glass alone. */
export const hasBodyFilm = (r: Reader): boolean =>
  comesOff(r) &&
  hasFilm(r) &&
  (r.as(filmWhere, (at) => at.length === 0 || at.some((place) => place !== 'glass')) ?? true)
