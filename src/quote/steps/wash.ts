import { hasBodyFilm } from '../../intake/facts/film'
import { finishSystem } from '../../intake/facts/finish-system'
import { freshPaint } from '../../intake/facts/fresh-paint'
import { has } from '../../intake/facts/has'
import { hasLettering, hasStickers } from '../../intake/facts/lettering'
import { neglectFactor } from '../../intake/facts/neglect-factor'
import { layerFactor } from '../../intake/facts/old-layer'
import { peels } from '../../intake/facts/peeling'
import { sizeFactor } from '../../intake/facts/size-factor'
import { isWashed, wants, wantsOutside } from '../../intake/facts/wants'
import { dangers } from '../../intake/questions/dangers'
import { defects } from '../../intake/questions/defects'
import type { Reader } from '../../intake/reader'
import type { StepRule } from '../rules'
import { need, sourceOf, withRow } from './need'
import { openShare } from './polish-scope'
import { step } from './step'

/** Below this share of paint that may be rubbed, clay stays in its box (own estimate). */
const CLAY_LEAST = 0.2

const paintwork = (r: Reader): boolean => wants(r, 'paint', 'protect')
const before: readonly string[] = ['check-in', 'film-evidence', 'look-over']

export const wash: readonly StepRule[] = [
  step({
    id: 'wheels-arches',
    track: 'wheels',
    order: 200,
    after: before,
    source: sourceOf('wheels-arches'),
    cautions: () => ['wheel-cleaner', 'brake-surfaces'],
    need: (r) =>
      wantsOutside(r) ? need('wheels-arches', 1, 'car', 0.5 + 0.5 * sizeFactor(r)) : null,
  }),
  step({
    id: 'rinse',
    track: 'body',
    order: 210,
    after: [...before, 'wheels-arches', 'engine-bay', 'underside'],
    source: sourceOf('rinse'),
    cautions: (r) => (peels(r) ? ['no-jet-near-lifting-paint'] : []),
    need: (r) => (isWashed(r) ? need('rinse', 1, 'car', sizeFactor(r)) : null),
  }),
  step({
    id: 'wash',
    track: 'body',
    order: 214,
    after: ['rinse'],
    crewMax: 2,
    source: sourceOf('wash'),
    need: (r) =>
      isWashed(r)
        ? need('wash', 1, 'car', sizeFactor(r) * (has(r, dangers, 'matte') ? 1.4 : 1))
        : null,
  }),
  step({
    id: 'shuts',
    track: 'body',
    order: 218,
    after: ['wash'],
    source: sourceOf('shuts'),
    need: (r) => (paintwork(r) ? need('shuts', 1, 'car') : null),
  }),
  step({
    id: 'second-wash',
    track: 'body',
    order: 260,
    after: ['wash', 'film-top', 'film-bumper', 'lettering', 'adhesive', 'stickers'],
    source: sourceOf('second-wash'),
    need: (r) =>
      hasBodyFilm(r) || hasLettering(r) || hasStickers(r)
        ? need('second-wash', 1, 'car', sizeFactor(r))
        : null,
  }),
  step({
    id: 'decontamination',
    materials: ['fallout-remover'],
    track: 'body',
    order: 270,
    after: ['wash', 'second-wash', 'adhesive'],
    source: sourceOf('decontamination'),
    cautions: () => ['fallout-remover', 'acid-and-metal'],
    need: (r) => {
      const system = paintwork(r) ? finishSystem(r) : 'lacquer'
      if (system === 'lacquer') return null
      // On matte the chemistry does all the work, panel by panel, with no rubbing.
      const plain = need(
        'decontamination',
        1,
        'car',
        sizeFactor(r) * neglectFactor(r) * (system === 'matte' ? 2 : 1),
      )
      if (!plain || !has(r, defects, 'overspray', 'fallout')) return plain
      return withRow(plain, 'overspray', sizeFactor(r))
    },
  }),
  step({
    id: 'strip-layer',
    track: 'body',
    order: 273,
    after: ['decontamination', 'second-wash', 'wash'],
    source: sourceOf('strip-layer'),
    cautions: () => ['product-label', 'solvent'],
    need: (r) => {
      const left = paintwork(r) ? layerFactor(r) : 0
      if (left === 0) return null
      const system = finishSystem(r)
      if (system === 'lacquer' || system === 'matte' || freshPaint(r)) return null
      return need('strip-layer', 1, 'car', sizeFactor(r) * openShare(r) * left)
    },
  }),
  step({
    id: 'clay',
    materials: ['clay'],
    track: 'body',
    order: 276,
    after: ['decontamination', 'strip-layer', 'second-wash', 'wash'],
    source: sourceOf('clay'),
    need: (r) => {
      const system = paintwork(r) ? finishSystem(r) : 'matte'
      if (system === 'lacquer' || system === 'matte') return null
      const share = openShare(r)
      return share < CLAY_LEAST ? null : need('clay', 1, 'car', sizeFactor(r) * share)
    },
  }),
  step({
    id: 'dry',
    track: 'body',
    order: 280,
    after: ['wash', 'shuts', 'second-wash', 'decontamination', 'strip-layer', 'clay'],
    source: sourceOf('dry'),
    need: (r) => (isWashed(r) ? need('dry', 1, 'car', sizeFactor(r)) : null),
  }),
]
