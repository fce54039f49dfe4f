/** A condition as the rules engine takes it: a fact, an operator and a value, or several of them. */
export type Condition =
  | { readonly fact: string; readonly operator: string; readonly value: unknown }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }

const has = (fact: string, ...wanted: readonly string[]): Condition => ({
  any: wanted.map((value) => ({ fact, operator: 'contains', value })),
})
const is = (fact: string, ...value: readonly string[]): Condition => ({
  fact,
  operator: 'in',
  value,
})
const all = (...each: readonly Condition[]): Condition => ({ all: each })
const not = (each: Condition): Condition => ({ not: each })

const polishing = all(
  has('services', 'paint'),
  is('wish', 'improve', 'show'),
  not(has('dangers', 'matte')),
)

/**
 * The notes whose condition can be said in the vocabulary of a general rules engine, written a second
 * time for it. That both raise the same notes is checked before anything is measured.
 */
export const CONDITIONS: Readonly<Record<string, Condition>> = {
  stored: is('use', 'stored'),
  'whose-car': is('authority', 'lease-finance', 'not-mine'),
  'fade-only': has('cabin-marks', 'smoke', 'milk', 'stains'),
  'body-fluids': has('cabin-marks', 'urine', 'vomit'),
  'pet-hair': has('cabin-marks', 'pet-hair'),
  salt: has('cabin-marks', 'salt'),
  'neglected-cabin': all(is('cabin-state', 'neglected'), not(has('dangers', 'wet', 'growth'))),
  leather: has('leather', 'suede', 'cracked', 'dyed'),
  headliner: is('headliner', 'loose'),
  'child-seats': has('belongings', 'child-seats'),
  'engine-wash': has('services', 'engine-bay'),
  'film-over-repaint': {
    any: [is('film-over', 'repaint', 'bumper'), has('film-where', 'whole-car')],
  },
  'film-started': has('film-state', 'started'),
  matte: has('dangers', 'matte'),
  'edges-through': has('defects', 'burn-through'),
  'mixed-paint': is('cloth-test', 'part'),
  'black-shows': all(is('colour', 'black', 'dark'), polishing),
  'deep-marks': has('defects', 'nail-scratch', 'etching'),
  'deeper-appear': all(has('defects', 'haze', 'wash-marks', 'scratches'), polishing),
  contamination: has('defects', 'overspray', 'fallout'),
  'touch-up': has('defects', 'chips'),
  rust: has('defects', 'rust'),
  'polished-often': all(is('polished-before', 'several', 'often-or-dealer'), polishing),
  'soft-paint': all(is('hard-soft', 'marks-easily'), polishing),
  'hard-paint': all(is('hard-soft', 'very-hard'), polishing),
  'marks-return': all(is('kept-washed', 'brush'), has('services', 'paint', 'protect')),
  weather: all(is('where-car', 'at-home'), has('services', 'paint', 'protect', 'roof')),
  'roof-window': has('roof-state', 'seams', 'plastic-cloudy', 'folded-wet'),
  'leak-repaired': is('wet-source', 'repaired'),
  soaked: all(is('wet-depth', 'soaked', 'standing'), not(is('wet-source', 'sewage'))),
  flood: is('wet-source', 'flood'),
  sewage: is('wet-source', 'sewage'),
  'no-lifting': is('jacking', 'rusty'),
  'wheels-off': all(has('services', 'wheels-off'), not(is('jacking', 'rusty'))),
  'bare-wheels': is('wheels', 'polished-bare', 'chrome'),
  'cracked-wheel': is('wheels', 'cracked'),
}
