import { finishSystem } from '../../intake/facts/finish-system'
import { hardnessFactor, oneSetFactor } from '../../intake/facts/hardness-factor'
import { has } from '../../intake/facts/has'
import type { PolishWish } from '../../intake/facts/polish-wish'
import { showsHaze } from '../../intake/facts/shows-haze'
import { sizeFactor } from '../../intake/facts/size-factor'
import { defects } from '../../intake/questions/defects'
import { hardSoft } from '../../intake/questions/hard-soft'
import { year } from '../../intake/questions/year'
import type { Reader } from '../../intake/reader'
import type { Context } from '../context'
import type { Need, StepRule } from '../rules'
import type { MinutesKey } from './minutes'
import { need, sourceOf } from './need'
import { mayPolish, type PolishPlan, polishes, polishPlan } from './polish-scope'
import { step } from './step'

const prepared: readonly string[] = [
  'clay',
  'dry',
  'film-top',
  'film-bumper',
  'adhesive',
  'lettering',
  'stickers',
  'references',
  'readings',
  'mask-trim',
  'tape-edges',
]
const agreed: readonly string[] = [...prepared, 'test-spot', 'test-spot-yes', 'touch-up-level']

/** Old paint may hold lead or chromate: its dust is kept wet or caught. */
const dusty = (r: Reader): readonly string[] =>
  r.as(year, (built) => built < 1990) ? ['old-paint-dust', 'vibration'] : ['vibration']

const byArea = (
  key: MinutesKey,
  wishes: readonly PolishWish[],
  panels: (plan: PolishPlan) => readonly string[],
  factor: (r: Reader) => number = () => 1,
  chance: (plan: PolishPlan) => number = () => 1,
): StepRule['need'] => {
  return (r: Reader, c: Context): Need | null => {
    const plan = mayPolish(r, c, wishes) ? polishPlan(r, c) : null
    const places = plan ? panels(plan) : []
    if (!plan || places.length === 0) return null
    const likely = chance(plan)
    return need(key, plan.area(places), 'm2', factor(r), {
      places,
      ...(likely < 1 ? { chance: likely } : {}),
    })
  }
}

export const polishing: readonly StepRule[] = [
  step({
    id: 'test-spot',
    track: 'paint',
    order: 440,
    after: prepared,
    machine: true,
    kit: [],
    source: sourceOf('test-spot'),
    cautions: (r) => (finishSystem(r) === 'lacquer' ? ['lacquer'] : ['heat-limit']),
    // Hard paint shows only after several tries which pad and polish move it.
    need: (r, c) =>
      polishes(r, c)
        ? need('test-spot', 1, 'piece', r.as(hardSoft, (h) => h === 'very-hard') ? 1.75 : 1)
        : null,
  }),
  step({
    id: 'test-spot-yes',
    track: 'paint',
    order: 444,
    after: ['test-spot'],
    hold: 'yes',
    source: sourceOf('test-spot-yes'),
    lag: (r, c) =>
      polishes(r, c) ? { minutes: 30, kind: 'working', blocks: 'bay', why: 'answer' } : null,
    need: (r, c) => (polishes(r, c) ? need('test-spot-yes', 1, 'piece') : null),
  }),
  step({
    id: 'polish-cut',
    materials: ['cutting-pads'],
    track: 'paint',
    order: 460,
    after: agreed,
    crewMax: 2,
    machine: true,
    kit: ['machine-polisher'],
    source: sourceOf('polish-cut'),
    cautions: (r) => ['edges', 'heat-limit', ...dusty(r)],
    need: byArea(
      'polish-cut',
      ['two-step'],
      (p) => p.cut,
      hardnessFactor,
      (p) => p.cutChance,
    ),
  }),
  step({
    id: 'polish-light',
    materials: ['polishing-pads'],
    track: 'paint',
    order: 464,
    after: [...agreed, 'polish-cut'],
    crewMax: 2,
    machine: true,
    kit: ['machine-polisher'],
    source: sourceOf('polish-light'),
    cautions: (r) => ['edges', 'heat-limit', ...dusty(r)],
    need: byArea('polish-light', ['light', 'two-step'], (p) => p.light, oneSetFactor),
  }),
  step({
    id: 'polish-finishing',
    track: 'paint',
    order: 468,
    after: [...agreed, 'polish-cut', 'polish-light'],
    crewMax: 2,
    machine: true,
    kit: ['machine-polisher'],
    source: sourceOf('polish-finishing'),
    cautions: (r) => ['edges', ...dusty(r)],
    need: (r, c) => {
      // Where edges are through already one set is all there is; nothing is refined on top of it.
      const refined =
        mayPolish(r, c, ['light', 'two-step']) && showsHaze(r) && !has(r, defects, 'burn-through')
      const wishes = ['finishing', ...(refined ? (['light', 'two-step'] as const) : [])] as const
      return byArea('polish-finishing', wishes, (p) => [
        ...p.finishing,
        ...(refined ? p.light : []),
      ])(r, c)
    },
  }),
  step({
    id: 'polish-hand',
    track: 'paint',
    order: 472,
    after: agreed,
    crewMax: 2,
    source: sourceOf('polish-hand'),
    cautions: () => ['edges'],
    need: byArea('polish-hand', [], (p) => p.hand),
  }),
  step({
    id: 'glaze-hand',
    track: 'paint',
    order: 474,
    after: agreed,
    crewMax: 2,
    source: sourceOf('glaze-hand'),
    cautions: (r) =>
      finishSystem(r) === 'lacquer' ? ['lacquer', 'oily-rags'] : ['no-abrasive', 'oily-rags'],
    need: byArea('glaze-hand', ['glaze'], (p) => p.glaze),
  }),
  step({
    id: 'pads',
    track: 'paint',
    order: 478,
    after: ['polish-cut', 'polish-light', 'polish-finishing'],
    bay: false,
    source: sourceOf('pads'),
    need: (r, c) => {
      const system = finishSystem(r)
      if (!polishes(r, c) || system === 'lacquer' || system === 'single-stage-metallic') return null
      // Single-stage paint loads pads with colour: many more of them.
      return need('pads', 1, 'car', system === 'single-stage-solid' ? 2 : 1)
    },
  }),
  step({
    id: 'gap-rinse',
    track: 'paint',
    order: 484,
    after: ['polish-cut', 'polish-light', 'polish-finishing', 'polish-hand', 'glaze-hand', 'pads'],
    source: sourceOf('gap-rinse'),
    need: (r, c) => (polishes(r, c) ? need('gap-rinse', 1, 'car') : null),
  }),
  step({
    id: 'panel-wipe',
    track: 'paint',
    order: 490,
    after: ['gap-rinse', 'headlights'],
    source: sourceOf('panel-wipe'),
    cautions: () => ['solvent'],
    need: (r, c) => (polishes(r, c) ? need('panel-wipe', 1, 'car', sizeFactor(r)) : null),
  }),
]
