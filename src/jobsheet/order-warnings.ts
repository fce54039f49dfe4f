/** One rule of the working order: before these steps those others (or something else) must be so. */
type Rule = {
  readonly id: string
  /** Hard: breaking it does harm. Soft: it costs work. */
  readonly hard: boolean
  readonly steps: readonly string[]
  /** Steps that should be done first, where they are on the sheet. */
  readonly first?: readonly string[]
  readonly when?: (job: OrderJob) => boolean
}

export type OrderJob = {
  readonly steps: readonly { readonly id: string; readonly state: string }[]
  readonly checkedIn: boolean
}

export type OrderWarning = {
  readonly id: string
  readonly hard: boolean
  readonly first: readonly string[]
}

const WATER = ['wash', 'wheels-arches', 'second-wash', 'rinse', 'underside', 'engine-bay', 'shuts']
const MACHINE = ['polish-cut', 'polish-light', 'polish-finishing']
const FILM = ['film-top', 'film-glass', 'lettering', 'adhesive', 'stickers']
const COATINGS = ['coating', 'matte-protection', 'wax']
const WET_OR_DUSTY = [
  'carpet-extraction',
  'seats-textile',
  'cabin-air',
  'cabin-vacuum',
  'pet-hair',
  'wash',
  'wheels-arches',
]
const CABIN_CLEANING = [
  'cabin-vacuum',
  'cabin-wipe',
  'carpet-extraction',
  'seats-textile',
  'headliner',
  'leather-clean',
  'mould-hepa',
  'mould-wipe',
  'mould-disinfect',
]

/** The order of a careful bench (common practice, no source; air and mould: public health guidance). */
export const ORDER_RULES: readonly Rule[] = [
  { id: 'check-in', hard: true, steps: WATER, when: (job) => !job.checkedIn },
  {
    id: 'film-before-clay',
    hard: true,
    steps: ['decontamination', 'clay', 'second-wash'],
    first: FILM,
  },
  { id: 'dry-before-reading', hard: true, steps: ['references', 'readings'], first: ['dry'] },
  {
    id: 'read-before-machine',
    hard: true,
    steps: ['test-spot', ...MACHINE],
    first: ['references', 'readings'],
  },
  {
    id: 'mask-before-machine',
    hard: true,
    steps: MACHINE,
    first: ['mask-trim', 'tape-edges'],
  },
  {
    id: 'yes-before-machine',
    hard: true,
    steps: MACHINE,
    first: ['test-spot', 'test-spot-yes'],
  },
  { id: 'level-before-finish', hard: true, steps: ['polish-finishing'], first: ['touch-up-level'] },
  {
    id: 'wipe-before-judging',
    hard: true,
    steps: ['cold-reading', ...COATINGS],
    first: ['panel-wipe', 'gap-rinse'],
  },
  {
    id: 'cure-before-protection',
    hard: true,
    steps: COATINGS,
    first: ['touch-up', 'touch-up-level'],
  },
  {
    id: 'stickers-before-coating',
    hard: true,
    steps: ['coating', 'wheels-coating'],
    first: ['stickers', 'lettering', 'film-top', 'adhesive'],
  },
  {
    id: 'leak-first',
    hard: true,
    steps: ['drying-start', ...CABIN_CLEANING],
    first: ['leak-proof'],
  },
  {
    id: 'dry-before-clean',
    hard: true,
    steps: ['carpet-refit', 'cabin-wipe', 'carpet-extraction', 'seats-textile'],
    first: ['dry-reading', 'mould-dry'],
  },
  {
    id: 'odour-last',
    hard: true,
    steps: ['odour-filter', 'ozone', 'odour-recheck'],
    first: CABIN_CLEANING,
  },
  {
    id: 'fresh-coating',
    hard: true,
    steps: WET_OR_DUSTY,
    when: (job) => job.steps.some((s) => s.id === 'coating' && s.state === 'done'),
  },
  {
    id: 'air-only-dry',
    hard: true,
    steps: ['cabin-air'],
    when: (job) =>
      job.steps.some((s) =>
        ['mould-hepa', 'mould-wipe', 'rodent-soak', 'rodent-wipe', 'drying-start'].includes(s.id),
      ),
  },
  {
    id: 'soak-rodents',
    hard: true,
    steps: ['rodent-wipe', 'cabin-vacuum', 'cabin-empty'],
    first: ['rodent-air', 'rodent-soak'],
  },
  { id: 'layer-after-polish', hard: true, steps: ['headlight-layer'], first: ['headlights'] },
  { id: 'roof-dry', hard: true, steps: ['roof-proof'], first: ['roof-clean'] },
  { id: 'dust-before-glass', hard: false, steps: ['glass-outside'], first: MACHINE },
  {
    id: 'wipe-down-last',
    hard: false,
    steps: ['cabin-wipe', 'glass-inside'],
    first: ['carpet-extraction', 'seats-textile', 'cabin-vacuum'],
  },
]

/** What speaks against doing a step now, hard ones first; each names the steps that are still open. */
export const orderWarnings = (step: string, job: OrderJob): readonly OrderWarning[] => {
  const open = new Set(job.steps.filter((s) => s.state !== 'done').map((s) => s.id))
  const found = ORDER_RULES.flatMap((rule): readonly OrderWarning[] => {
    if (!rule.steps.includes(step)) return []
    const first = (rule.first ?? []).filter((id) => id !== step && open.has(id))
    const broken = rule.when ? rule.when(job) : first.length > 0
    return broken ? [{ id: rule.id, hard: rule.hard, first }] : []
  })
  return [...found.filter((w) => w.hard), ...found.filter((w) => !w.hard)]
}
