const CABIN_WORK = [
  'neglected-cabin',
  'fade-only',
  'pet-hair',
  'salt',
  'leather',
  'headliner',
  'child-seats',
] as const

const MACHINE_WORK = [
  'single-stage',
  'mixed-paint',
  'show-limits',
  'residue',
  'deeper-appear',
  'black-shows',
  'soft-paint',
  'hard-paint',
  'thin',
  'polished-often',
  'filler',
  'old-coating',
] as const

/**
 * A raised note on the left takes those on the right off the list: they would contradict it (a
 * promise about work it stops) or say less of the same. Own estimate.
 */
export const COVERS: Readonly<Record<string, readonly string[]>> = {
  sewage: [
    ...CABIN_WORK,
    'flood',
    'soaked',
    'leak-repaired',
    'leak-unproven',
    'body-fluids',
    'mould-decide',
    'mould-small',
  ],
  'mould-specialist': [...CABIN_WORK, 'mould-decide', 'mould-small'],
  'mould-decide': ['mould-small'],
  'leak-unproven': ['leak-repaired'],
  flood: ['leak-repaired', 'warning-lights'],
  'wet-electrics': ['warning-lights'],
  rodents: ['pet-hair', 'neglected-cabin', 'stored'],
  'body-fluids': ['fade-only'],
  matte: [...MACHINE_WORK, 'lacquer', 'coating-rest', 'sun-worn'],
  lacquer: [...MACHINE_WORK, 'coating-rest', 'sun-worn'],
  'fresh-paint': ['coating-rest'],
  peel: ['sun-worn'],
  'no-lifting': ['wheels-off'],
  'by-the-hour': [
    'clean-shows-marks',
    'budget',
    'soft-paint',
    'hard-paint',
    'thin',
    'polished-often',
    'marks-return',
    'residue',
    'hearsay',
  ],
  gelcoat: ['coating-rest', 'unreadable'],
  'deep-marks': ['deeper-appear'],
  'edges-through': ['damage-first'],
  'film-started': ['damage-first'],
  'polished-often': ['thin'],
  'single-stage': ['mixed-paint'],
  'roof-window': ['soft-roof'],
  'deadline-drying': ['deadline'],
  'outside-trade': ['deadline'],
  'soft-paint': ['hard-paint'],
}
