import { finishSystem } from '../../intake/facts/finish-system'
import { freshPaint } from '../../intake/facts/fresh-paint'
import { peels } from '../../intake/facts/peeling'
import { clothTest } from '../../intake/questions/cloth-test'
import { colour } from '../../intake/questions/colour'
import { dangers } from '../../intake/questions/dangers'
import { defects } from '../../intake/questions/defects'
import { paintCheck } from '../../intake/questions/paint-check'
import { paintHistory } from '../../intake/questions/paint-history'
import { panelMaterial } from '../../intake/questions/panel-material'
import { services } from '../../intake/questions/services'
import { year } from '../../intake/questions/year'
import type { Reader } from '../../intake/reader'
import { type Context, owns } from '../context'
import type { RiskRule } from '../rules'
import { fires, has, is, polishing } from './read'

/** Model years before this may carry lead or chromate pigments (own estimate, after the bulletins). */
export const OLD_PIGMENT_BEFORE = 1980

const thin = (r: Reader, c: Context): boolean => {
  if (c.measured)
    return c.measured.panels.some(
      (p) => p.thin === true || (p.allows !== 'light' && p.allows !== 'two-step'),
    )
  return r.as(year, (y) => y >= 2017) === true && polishing(r)
}

/** What the paint is made of and what it cannot take. */
export const paintRisks: readonly RiskRule[] = [
  {
    id: 'matte',
    severity: 'stop',
    weight: 98,
    when: (r) => fires(has(r, dangers, 'matte')),
    source: 'common practice, no source',
  },
  {
    id: 'fresh-paint',
    severity: 'stop',
    weight: 96,
    when: (r) => fires(freshPaint(r)),
    source: 'common practice, no source: 30-90 days by the data sheet of the paint',
  },
  {
    id: 'peel',
    severity: 'stop',
    weight: 94,
    when: (r) => fires(peels(r)),
    source: 'common practice, no source',
  },
  {
    id: 'lacquer',
    severity: 'stop',
    weight: 86,
    when: (r) => fires(finishSystem(r) === 'lacquer'),
    caution: 'old-lacquer',
    source: 'own estimate',
  },
  {
    id: 'edges-through',
    severity: 'decide',
    weight: 84,
    decision: true,
    when: (r) => fires(has(r, defects, 'burn-through')),
    source: 'common practice, no source',
  },
  {
    id: 'single-stage',
    severity: 'know',
    weight: 78,
    when: (r) => fires(finishSystem(r).startsWith('single-stage') && !is(r, clothTest, 'part')),
    source: 'common practice, no source',
  },
  {
    id: 'mixed-paint',
    severity: 'know',
    weight: 77,
    when: (r) => fires(is(r, clothTest, 'part')),
    source: 'common practice, no source',
  },
  {
    id: 'old-pigment',
    severity: 'know',
    weight: 76,
    when: (r) => {
      const y = r.value(year)
      return fires(y !== undefined && y < OLD_PIGMENT_BEFORE && polishing(r))
    },
    caution: 'old-paint-dust',
    source:
      'Australian Department of the Environment, fact sheet on lead in vehicle paint; paint maker compliance bulletin',
  },
  {
    id: 'repainted',
    severity: 'know',
    weight: 72,
    when: (r) =>
      fires(
        (is(r, paintHistory, 'part', 'all') || is(r, paintCheck, 'painted-again')) &&
          has(r, services, 'paint', 'protect') &&
          !freshPaint(r),
      ),
    source: 'common practice, no source',
  },
  {
    id: 'thin',
    severity: 'know',
    weight: 74,
    when: (r, c) => fires(thin(r, c)),
    source: 'own estimate',
  },
  {
    id: 'unreadable',
    severity: 'know',
    weight: 64,
    least: 0.5,
    when: (r, c) => {
      const material = r.value(panelMaterial)
      if (material === 'plastic-composite') return {}
      return fires(material === 'aluminium' && !owns(c, 'gauge-dual'))
    },
    source: 'ASTM D7091: magnetic gauges read on steel, eddy-current gauges on other metals',
  },
  {
    id: 'black-shows',
    severity: 'know',
    weight: 56,
    when: (r) => fires(is(r, colour, 'black', 'dark') && polishing(r)),
    source: 'common practice, no source',
  },
]
