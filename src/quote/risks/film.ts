import { comesOff, filmByHour } from '../../intake/facts/film'
import { dangers } from '../../intake/questions/dangers'
import { filmAge } from '../../intake/questions/film-age'
import { filmOver } from '../../intake/questions/film-over'
import { filmState } from '../../intake/questions/film-state'
import { filmWhere } from '../../intake/questions/film-where'
import { services } from '../../intake/questions/services'
import { tint } from '../../intake/questions/tint'
import type { RiskRule } from '../rules'
import { fires, has, is } from './read'

/** From this age on, paint under film and paint beside it may have aged differently (own estimate). */
export const EDGE_YEARS = 3

/** Film, lettering and glued parts that come off. */
export const filmRisks: readonly RiskRule[] = [
  {
    id: 'film-old',
    severity: 'decide',
    weight: 90,
    decision: true,
    when: (r) => fires(comesOff(r) && (filmByHour(r) || has(r, filmState, 'dull'))),
    caution: 'film-heat',
    source: 'common practice, no source',
  },
  {
    id: 'film-over-repaint',
    severity: 'decide',
    weight: 92,
    decision: true,
    when: (r) =>
      fires(
        comesOff(r) && (is(r, filmOver, 'repaint', 'bumper') || has(r, filmWhere, 'whole-car')),
      ),
    source: 'common practice, no source',
  },
  {
    id: 'film-edge',
    severity: 'know',
    weight: 79,
    when: (r) => {
      if (!has(r, dangers, 'film')) return fires(has(r, services, 'stickers'))
      if (!comesOff(r)) return null
      const years = r.value(filmAge)
      return fires(years === undefined || years >= EDGE_YEARS)
    },
    caution: 'adhesive-solvent',
    source: 'common practice, no source',
  },
  {
    id: 'film-started',
    severity: 'decide',
    weight: 82,
    decision: true,
    when: (r) => fires(has(r, filmState, 'started')),
    source: 'common practice, no source',
  },
  {
    id: 'glass-lines',
    severity: 'know',
    weight: 42,
    least: 0.5,
    when: (r) =>
      fires(has(r, tint, 'film-on-glass', 'film-on-screen') || has(r, filmWhere, 'glass')),
    source: 'common practice, no source',
  },
]
