import { hasBodyFilm } from '../../intake/facts/film'
import { finishSystem } from '../../intake/facts/finish-system'
import { freshPaint } from '../../intake/facts/fresh-paint'
import { vehicleKind } from '../../intake/facts/vehicle-kind'
import { isWashed } from '../../intake/facts/wants'
import { colour } from '../../intake/questions/colour'
import { dangers } from '../../intake/questions/dangers'
import { defects } from '../../intake/questions/defects'
import { earlierProtection } from '../../intake/questions/earlier-protection'
import { hardSoft } from '../../intake/questions/hard-soft'
import { keptWashed } from '../../intake/questions/kept-washed'
import { polishedBefore } from '../../intake/questions/polished-before'
import { services } from '../../intake/questions/services'
import { use } from '../../intake/questions/use'
import { whereCar } from '../../intake/questions/where-car'
import { wish } from '../../intake/questions/wish'
import type { RiskRule } from '../rules'
import { atLeast, atMost, fires, has, is, polishing } from './read'

const PRACTICE = 'common practice, no source'

/** What polishing and sealing can and cannot reach. */
export const polishRisks: readonly RiskRule[] = [
  {
    id: 'show-limits',
    severity: 'decide',
    weight: 70,
    decision: true,
    when: (r) => fires(is(r, wish, 'show') && polishing(r) && finishSystem(r) !== 'lacquer'),
    source: PRACTICE,
  },
  {
    id: 'deep-marks',
    severity: 'know',
    weight: 66,
    when: (r) => fires(has(r, defects, 'nail-scratch', 'etching')),
    source: PRACTICE,
  },
  {
    id: 'deeper-appear',
    severity: 'know',
    weight: 52,
    when: (r) => fires(has(r, defects, 'haze', 'wash-marks', 'scratches') && polishing(r)),
    source: PRACTICE,
  },
  {
    id: 'contamination',
    severity: 'know',
    weight: 46,
    when: (r) => fires(has(r, defects, 'overspray', 'fallout')),
    caution: 'fallout-remover',
    source: PRACTICE,
  },
  {
    id: 'touch-up',
    severity: 'know',
    weight: 40,
    when: (r) => fires(has(r, defects, 'chips')),
    source: PRACTICE,
  },
  {
    id: 'sun-worn',
    severity: 'know',
    weight: 38,
    when: (r, c) => {
      if (!has(r, services, 'paint') && !hasBodyFilm(r)) return null
      if (is(r, colour, 'red-orange-yellow') && atLeast(r, c, 15)) return {}
      return fires(is(r, use, 'daily-outdoors') && atLeast(r, c, 12))
    },
    source: PRACTICE,
  },
  {
    id: 'rust',
    severity: 'decide',
    weight: 68,
    decision: true,
    when: (r) => fires(has(r, defects, 'rust')),
    source: PRACTICE,
  },
  {
    id: 'polished-often',
    severity: 'know',
    weight: 71,
    least: 0.5,
    when: (r) => fires(is(r, polishedBefore, 'several', 'often-or-dealer') && polishing(r)),
    source: PRACTICE,
  },
  {
    id: 'dealer-marks',
    severity: 'know',
    weight: 54,
    when: (r, c) =>
      fires(
        is(r, polishedBefore, 'often-or-dealer') ||
          (has(r, defects, 'haze') && is(r, polishedBefore, 'once', 'several')) ||
          (has(r, defects, 'haze', 'wash-marks') && atMost(r, c, 1)),
      ),
    source: PRACTICE,
  },
  {
    id: 'filler',
    severity: 'know',
    weight: 55,
    least: 0.5,
    when: (r) =>
      fires(
        polishing(r) && has(r, earlierProtection, 'silicone', 'scratch-remover', 'unknown-bottle'),
      ),
    source: PRACTICE,
  },
  {
    id: 'old-coating',
    severity: 'know',
    weight: 36,
    least: 0.5,
    when: (r) => fires(has(r, earlierProtection, 'coating') && has(r, services, 'paint')),
    source: PRACTICE,
  },
  {
    id: 'new-car',
    severity: 'know',
    weight: 45,
    when: (r, c) => fires(atMost(r, c, 1) && has(r, services, 'paint', 'protect')),
    source: PRACTICE,
  },
  {
    id: 'soft-paint',
    severity: 'know',
    weight: 53,
    least: 0.5,
    when: (r) => fires(is(r, hardSoft, 'marks-easily') && polishing(r)),
    source: PRACTICE,
  },
  {
    id: 'hard-paint',
    severity: 'know',
    weight: 43,
    when: (r) => fires(is(r, hardSoft, 'very-hard') && polishing(r)),
    source: PRACTICE,
  },
  {
    id: 'residue',
    severity: 'know',
    weight: 20,
    when: (r, c) => fires(polishing(r) && atLeast(r, c, 20)),
    source: PRACTICE,
  },
  {
    id: 'marks-return',
    severity: 'know',
    weight: 39,
    least: 0.5,
    when: (r) => fires(is(r, keptWashed, 'brush') && has(r, services, 'paint', 'protect')),
    source: PRACTICE,
  },
  {
    id: 'coating-rest',
    severity: 'know',
    weight: 41,
    when: (r) => fires(has(r, services, 'protect') && !has(r, dangers, 'matte') && !freshPaint(r)),
    source: PRACTICE,
  },
  {
    id: 'clean-shows-marks',
    severity: 'know',
    weight: 37,
    when: (r, c) =>
      fires(
        isWashed(r) &&
          !has(r, services, 'paint', 'protect') &&
          is(r, use, 'daily-outdoors', 'work') &&
          atLeast(r, c, 8) &&
          vehicleKind(r) === 'car',
      ),
    source: PRACTICE,
  },
  {
    id: 'weather',
    severity: 'know',
    weight: 49,
    when: (r) => fires(is(r, whereCar, 'at-home') && has(r, services, 'paint', 'protect', 'roof')),
    source: PRACTICE,
  },
]
