import { describe, expect, it } from 'vitest'
import { rule } from './step-bench'

/** Hard order of the work; common practice, no source. Each row: nothing on the right before the left. */
const before: readonly (readonly [first: string, then: readonly string[]])[] = [
  ['check-in', ['wheels-arches', 'rinse', 'wash', 'engine-bay', 'water-test', 'hand-over']],
  ['film-evidence', ['rinse', 'wash', 'film-top']],
  ['wheels-arches', ['rinse', 'wash']],
  ['underside', ['rinse', 'wash']],
  ['wash', ['film-top', 'lettering', 'stickers', 'clay', 'polish-light']],
  ['film-test-corner', ['film-top', 'adhesive']],
  ['film-top', ['adhesive', 'second-wash', 'readings', 'references', 'polish-light']],
  ['adhesive', ['second-wash', 'decontamination', 'clay', 'readings', 'polish-light', 'coating']],
  ['second-wash', ['decontamination', 'clay', 'dry']],
  ['decontamination', ['clay', 'dry', 'polish-light']],
  ['clay', ['dry', 'readings', 'test-spot', 'polish-cut']],
  ['dry', ['references', 'readings', 'mask-trim']],
  ['references', ['readings', 'mask-trim', 'test-spot']],
  ['readings', ['mask-trim', 'tape-edges', 'test-spot', 'polish-cut', 'polish-light']],
  ['tape-edges', ['test-spot', 'polish-cut', 'polish-light', 'polish-finishing']],
  ['test-spot', ['test-spot-yes']],
  [
    'test-spot-yes',
    ['polish-cut', 'polish-light', 'polish-finishing', 'polish-hand', 'glaze-hand'],
  ],
  ['touch-up-level', ['polish-cut', 'polish-light', 'polish-finishing']],
  ['polish-cut', ['polish-light', 'polish-finishing']],
  ['polish-light', ['gap-rinse', 'panel-wipe', 'cold-reading', 'touch-up', 'wax', 'coating']],
  ['gap-rinse', ['panel-wipe', 'wax', 'coating']],
  [
    'panel-wipe',
    ['cold-reading', 'touch-up', 'wax', 'coating', 'headlight-layer', 'glass-outside'],
  ],
  ['cold-reading', ['touch-up', 'wax', 'coating']],
  ['touch-up', ['wax', 'coating']],
  ['headlights', ['headlight-layer']],
  ['stickers', ['wax', 'coating', 'wheels-coating']],
  ['coating', ['high-spot-check', 'next-day-check']],
  ['high-spot-check', ['next-day-check']],
  ['leak-proof', ['lift-carpet', 'drying-start', 'cabin-vacuum', 'carpet-extraction', 'ozone']],
  ['dry-reading', ['mould-hepa', 'cabin-vacuum', 'plastics', 'carpet-extraction', 'odour-source']],
  ['mould-hepa', ['mould-wipe']],
  ['mould-wipe', ['mould-disinfect']],
  ['mould-disinfect', ['mould-dry', 'mould-again']],
  ['mould-dry', ['mould-again']],
  ['mould-again', ['cabin-vacuum', 'carpet-refit', 'odour-source', 'coating']],
  ['rodent-air', ['rodent-soak']],
  ['rodent-soak', ['rodent-wipe']],
  ['rodent-wipe', ['wiring-look', 'cabin-empty', 'cabin-vacuum', 'engine-bay']],
  ['cabin-air', ['cabin-vacuum', 'coating']],
  ['cabin-vacuum', ['plastics', 'glass-inside', 'odour-source', 'coating']],
  ['carpet-extraction', ['odour-source', 'ozone', 'coating', 'wax']],
  ['seats-textile', ['odour-source', 'ozone', 'coating']],
  ['odour-source', ['ozone', 'odour-recheck']],
  ['ozone', ['odour-recheck']],
  ['cabin-wipe', ['glass-inside']],
  ['roof-clean', ['roof-proof', 'roof-window']],
  ['water-test', ['roof-clean', 'leak-cover', 'leak-proof']],
  ['wheels-off', ['wheels-clean', 'calipers', 'wheels-coating', 'wheels-on']],
  ['wheels-coating', ['wheels-on']],
  ['clean-down', ['refit-checks', 'hand-over']],
  ['refit-checks', ['hand-over']],
]

describe('hard order of the work (common practice, no source)', () => {
  it.each(before)('%s comes first', (first, then) => {
    for (const later of then) expect(rule(later).after, later).toContain(first)
  })

  it('hands over after everything else', () => {
    expect(rule('hand-over').after.length).toBeGreaterThan(90)
  })

  it('holds for a yes, a proof or a dry reading', () => {
    expect(rule('film-test-corner').hold).toBe('yes')
    expect(rule('test-spot-yes').hold).toBe('yes')
    expect(rule('leak-proof').hold).toBe('leak')
    expect(rule('dry-reading').hold).toBe('dry')
  })

  it.each(['coating', 'adhesive', 'wheels-coating', 'headlight-layer', 'matte-protection'])(
    '%s is finished once it is started',
    (id) => expect(rule(id).pausable).toBe(false),
  )

  it.each(['wheels-off', 'wheels-on'])('%s owes torque and a re-check', (id) =>
    expect(rule(id).duties).toEqual(['torque', 'recheck-distance']),
  )
})
