import { ageAs } from '../../intake/facts/age'
import { type FilmClass, filmClass, filmPlaces, hasBodyFilm } from '../../intake/facts/film'
import { has } from '../../intake/facts/has'
import { hasLettering, hasStickers } from '../../intake/facts/lettering'
import { filmOver } from '../../intake/questions/film-over'
import { filmState } from '../../intake/questions/film-state'
import type { EventRule } from '../rules'
import { event, three } from './event'

/** How likely film of each class takes paint along, and how likely its glue stays hard (own estimate). */
const lifts: Readonly<Record<FilmClass, number>> = { young: 0.04, ageing: 0.1, brittle: 0.22 }
const glue: Readonly<Record<FilmClass, number>> = { young: 0.08, ageing: 0.2, brittle: 0.35 }

/** Repainted panels and bumpers let go sooner; a removal someone began has often begun the damage. */
const over: Readonly<Record<string, number>> = { factory: 1, bumper: 2, repaint: 3 }
const STARTED = 0.12
const MOST = 0.75

export const filmEvents: readonly EventRule[] = [
  event('film-lifts-paint', (r) => {
    if (!hasBodyFilm(r)) return null
    const plain = lifts[filmClass(r)] * (r.as(filmOver, (under) => over[under] ?? 1) ?? 1)
    const begun = has(r, filmState, 'started') ? STARTED : 0
    return { chance: Math.min(MOST, plain + begun), minutes: three(20, 45, 150) }
  }),
  event('adhesive-fights', (r) => {
    if (!hasBodyFilm(r)) return null
    const places = Math.min(4, filmPlaces(r).length)
    return { chance: glue[filmClass(r)], minutes: three(30, 60, 150, 0.6 + 0.2 * places) }
  }),
  event('repair-under-decal', (r, c) => {
    if (!hasBodyFilm(r) && !hasLettering(r) && !hasStickers(r)) return null
    const old = ageAs(r, c.nowYear, (years) => years >= 10) ?? true
    return { chance: old ? 0.1 : 0.04, minutes: three(10, 25, 60) }
  }),
]
