import { finishSystem } from '../../intake/facts/finish-system'
import { freshPaint } from '../../intake/facts/fresh-paint'
import { protection } from '../../intake/facts/protection'
import { sizeFactor } from '../../intake/facts/size-factor'
import { wants } from '../../intake/facts/wants'
import { wish } from '../../intake/questions/wish'
import type { StepRule } from '../rules'
import { need, sourceOf } from './need'
import { step } from './step'

/** All paint work is done and read, and nothing wet or dusty is still to come in the cabin. */
const ready: readonly string[] = [
  'dry',
  'stickers',
  'lettering',
  'film-top',
  'film-bumper',
  'adhesive',
  'gap-rinse',
  'panel-wipe',
  'cold-reading',
  'touch-up',
  'trim',
  'show-details',
]
const settledCabin: readonly string[] = [
  'cabin-air',
  'cabin-vacuum',
  'seats-textile',
  'carpet-extraction',
  'dry-reading',
  'mould-again',
  'rodent-wipe',
  'odour-source',
]

export const protectionSteps: readonly StepRule[] = [
  step({
    id: 'trim',
    track: 'finish',
    order: 520,
    after: ['dry', 'panel-wipe', 'mask-trim'],
    source: sourceOf('trim'),
    cautions: () => ['no-dressing'],
    need: (r) => (wants(r, 'protect') && !freshPaint(r) ? need('trim', 1, 'car') : null),
  }),
  step({
    id: 'show-details',
    track: 'finish',
    order: 528,
    after: ['panel-wipe', 'cold-reading', 'touch-up', 'trim', 'glass-outside'],
    crewMax: 2,
    source: sourceOf('show-details'),
    cautions: () => ['product-label'],
    // Badges, gaps, grilles and brightwork by hand: what a show is judged by, priced apart.
    need: (r) =>
      wants(r, 'paint') && r.value(wish) === 'show' && finishSystem(r) !== 'matte'
        ? need('show-details', 1, 'car', sizeFactor(r))
        : null,
  }),
  step({
    id: 'wax',
    materials: ['wax'],
    track: 'finish',
    order: 560,
    after: [...ready, ...settledCabin],
    crewMax: 2,
    source: sourceOf('wax'),
    cautions: () => ['product-label'],
    need: (r) => (protection(r) === 'wax' ? need('wax', 1, 'car', sizeFactor(r)) : null),
  }),
  step({
    id: 'matte-protection',
    materials: ['matte-protection'],
    track: 'finish',
    order: 562,
    after: [...ready, ...settledCabin],
    pausable: false,
    source: sourceOf('matte-protection'),
    cautions: () => ['no-abrasive', 'coating-label'],
    need: (r) =>
      protection(r) === 'matte' ? need('matte-protection', 1, 'car', sizeFactor(r)) : null,
  }),
  step({
    id: 'coating',
    materials: ['coating'],
    track: 'finish',
    order: 564,
    after: [...ready, ...settledCabin],
    pausable: false,
    source: sourceOf('coating'),
    cautions: () => ['coating-label', 'oily-rags'],
    lag: (r) =>
      protection(r) === 'coating'
        ? { minutes: 60, kind: 'elapsed', blocks: 'bay', why: 'cure' }
        : null,
    need: (r) => (protection(r) === 'coating' ? need('coating', 1, 'car', sizeFactor(r)) : null),
  }),
  step({
    id: 'high-spot-check',
    track: 'finish',
    order: 568,
    after: ['coating'],
    source: sourceOf('high-spot-check'),
    // First set: no water and no dust; the day it needs to dry counts from the check.
    lag: (r) =>
      protection(r) === 'coating'
        ? { minutes: 720, kind: 'elapsed', blocks: 'bay', why: 'cure' }
        : null,
    need: (r) => (protection(r) === 'coating' ? need('high-spot-check', 1, 'car') : null),
  }),
  step({
    id: 'next-day-check',
    track: 'finish',
    order: 572,
    after: ['high-spot-check'],
    source: sourceOf('next-day-check'),
    lag: (r) =>
      protection(r) === 'coating'
        ? { minutes: 660, kind: 'elapsed', blocks: 'car', why: 'cure' }
        : null,
    need: (r) => (protection(r) === 'coating' ? need('next-day-check', 1, 'visit') : null),
  }),
]
