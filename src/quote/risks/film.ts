import { dangers } from '../../intake/questions/dangers'
import { filmAge } from '../../intake/questions/film-age'
import { filmKind } from '../../intake/questions/film-kind'
import { filmOver } from '../../intake/questions/film-over'
import { filmStartedWith } from '../../intake/questions/film-started-with'
import { filmState } from '../../intake/questions/film-state'
import { filmWhere } from '../../intake/questions/film-where'
import { services } from '../../intake/questions/services'
import { tint } from '../../intake/questions/tint'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

/** From this age on, film is taken off by time and not for a fixed price (common practice, no source). */
export const OLD_FILM_YEARS = 7

/** From this age on, paint under film and paint beside it may have aged differently (own estimate). */
export const EDGE_YEARS = 3

/** Film, lettering and glued parts that come off. */
export const filmRisks: readonly RiskRule[] = [
  {
    id: 'film-old',
    severity: 'decide',
    weight: 90,
    decision: true,
    when: (r) => {
      if (!has(r, dangers, 'film')) return null
      const years = r.value(filmAge)
      return fires(
        (years !== undefined && years >= OLD_FILM_YEARS) || has(r, filmState, 'cracked', 'dull'),
      )
    },
    caution: 'film-heat',
    source: 'common practice, no source',
  },
  {
    id: 'film-over-repaint',
    severity: 'decide',
    weight: 92,
    decision: true,
    when: (r) => fires(is(r, filmOver, 'repaint', 'bumper')),
    source: 'common practice, no source',
  },
  {
    id: 'film-edge',
    severity: 'know',
    weight: 58,
    when: (r) => {
      if (!has(r, dangers, 'film')) return null
      const years = r.value(filmAge)
      return fires(
        has(r, filmKind, 'clear-film', 'lettering', 'stickers') &&
          (years === undefined || years >= EDGE_YEARS),
      )
    },
    source: 'common practice, no source',
  },
  {
    id: 'film-started',
    severity: 'decide',
    weight: 82,
    decision: true,
    when: (r) => fires(has(r, filmState, 'started') && !has(r, filmStartedWith, 'blade')),
    source: 'common practice, no source',
  },
  {
    id: 'film-cuts',
    severity: 'decide',
    weight: 83,
    decision: true,
    when: (r) => fires(has(r, filmStartedWith, 'blade')),
    source: 'common practice, no source',
  },
  {
    id: 'under-wrap',
    severity: 'decide',
    weight: 62,
    decision: true,
    when: (r) => fires(has(r, filmKind, 'wrap') || has(r, filmWhere, 'whole-car')),
    source: 'common practice, no source',
  },
  {
    id: 'glass-lines',
    severity: 'know',
    weight: 42,
    when: (r) => fires(has(r, tint, 'film-on-glass', 'heated-glass') || has(r, filmWhere, 'glass')),
    source: 'common practice, no source',
  },
  {
    id: 'stickers-off',
    severity: 'know',
    weight: 36,
    when: (r) => fires(has(r, services, 'stickers') && !has(r, dangers, 'film')),
    caution: 'adhesive-solvent',
    source: 'common practice, no source',
  },
]
