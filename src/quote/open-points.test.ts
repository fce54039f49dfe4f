import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { openPoints, openPointsOf } from './open-points'
import { car, context, UNSURE } from './risks/plain-answers'

const ids = (changed: Readonly<Record<string, unknown>>) =>
  openPointsOf(car(changed), context()).map((p) => p.id)
const wet = { dangers: ['wet'], services: ['cabin'] }
const mould = { dangers: ['growth'], services: ['cabin'], growth: ['mould-hard'] }
const old = { year: 1990 }
const past = { 'paint-history': 'part' }

describe('open points', () => {
  it('checks only the paint of a kept car that is polished, and nothing where none is', () => {
    expect(ids({})).toEqual(['film-build'])
    expect(ids({ services: ['cabin'] })).toEqual([])
  })

  it('does not ask to read paint that was read', () => {
    const c = { ...context(), measured: { panels: [] } }
    expect(openPointsOf(car(), c)).toEqual([])
  })

  it.each([
    ['dangers', { dangers: UNSURE }],
    ['year', { year: UNSURE }],
    ['size', { size: UNSURE }],
    ['paint-history', { 'paint-history': UNSURE }],
    ['paint-history', { ...past, 'respray-panels': UNSURE }],
    ['fresh-paint-age', { dangers: ['fresh-paint'], 'fresh-paint-weeks': UNSURE }],
    ['paint-system', { year: 1990, 'cloth-test': UNSURE }],
    ['paint-defects', { defects: UNSURE }],
    ['paint-past', { ...past, 'polished-before': UNSURE }],
    ['panel-material', { ...past, 'panel-material': UNSURE }],
    ['peel-places', { dangers: ['peeling'], 'peel-where': UNSURE }],
    ['film', { dangers: ['film'], 'film-age': UNSURE }],
    ['film-over', { dangers: ['film'], 'film-over': UNSURE }],
    ['wet-extent', { ...wet, 'wet-depth': UNSURE }],
    ['wet-electrics', { ...wet, 'wet-electrics': UNSURE }],
    ['growth', { dangers: ['growth'], growth: UNSURE }],
    [
      'sensitive-people',
      { dangers: ['growth'], growth: ['mould-hard'], 'sensitive-people': UNSURE },
    ],
    ['cabin', { services: ['cabin'], 'cabin-state': UNSURE }],
    ['leather', { services: ['cabin'], 'cabin-state': 'family', leather: UNSURE }],
    ['headliner', { services: ['cabin'], year: 1990, headliner: UNSURE }],
    ['old-trim', { services: ['cabin'], year: 1990, trim: UNSURE }],
    ['roof', { body: 'convertible', 'roof-kind': UNSURE }],
    ['drives', { dangers: ['not-driving'], 'drive-state': UNSURE }],
    ['warning-lights', { ...wet, 'warning-lights': UNSURE }],
    ['high-voltage', { services: ['engine-bay'], 'engine-kind': UNSURE }],
    ['jacking-points', { services: ['underside'], year: 1990, jacking: UNSURE }],
    ['wheel-finish', { services: ['wheels-off'], year: 1990, wheels: UNSURE }],
    ['wheel-fit', { services: ['wheels-off'], year: 1990, spacers: UNSURE }],
    ['glass', { services: ['glass'], tint: UNSURE }],
    ['leak-place', { ...wet, 'wet-source': 'unknown' }],
    ['leak-place', { ...wet, 'wet-source': UNSURE }],
    ['leak-shut', { ...wet, 'wet-source': 'repaired' }],
    ['painter-sheet', { dangers: ['fresh-paint'], 'fresh-paint-weeks': 4 }],
    ['locking-key', { services: ['wheels-off'], 'locking-key': 'missing' }],
    ['locking-key', { services: ['wheels-off'], 'locking-key': UNSURE }],
    ['consent', { ...past, authority: 'lease-finance' }],
    ['who-pays', { ...wet, payer: 'insurer' }],
    ['film-older-than-car', { dangers: ['film'], 'film-age': 34, year: 2015 }],
    ['colour-on-modern-metallic', { ...past, year: 2010, 'cloth-test': 'colour' }],
    [
      'said-original',
      { dangers: ['fresh-paint'], 'paint-history': 'original', 'paint-check': 'never-painted' },
    ],
    ['said-original', { dangers: ['film'], 'film-over': 'repaint', 'paint-check': UNSURE }],
    ['repair-held', { ...wet, 'wet-source': 'repaired', 'wet-depth': 'soaked' }],
    ['leak-place', { ...wet, 'wet-source': 'repaired', 'wet-depth': 'soaked', 'dry-check': false }],
    ['damp-hidden', { ...mould, 'damp-check': 'never-damp' }],
    ['damp-hidden', { ...mould, 'damp-check': UNSURE }],
    ['damp-place', { ...mould, 'damp-check': 'damp-now' }],
    ['damp-below', { ...mould, 'damp-check': 'was-damp' }],
    ['roof-under', { dangers: ['soft-roof'], 'roof-kind': 'hard', 'roof-check': 'under-hard' }],
    ['transport', { dangers: ['not-driving'], 'bring-how': 'need-transport' }],
    ['battery', { ...past, keys: UNSURE }],
    ['battery-code', { ...past, keys: ['code-needed'] }],
    ['one-key', { ...past, keys: ['one-key'] }],
    ['added-parts', { ...past, changes: UNSURE }],
    ['air-ride', { ...past, changes: ['air-ride'] }],
    ['added-wiring', { ...past, changes: ['added-wiring'] }],
    ['body-kit', { ...past, changes: ['body-kit'] }],
    ['wheel-marks', { ...old, services: ['wheels-off'], 'wheel-marks': UNSURE }],
    ['kerbed', { ...old, services: ['wheels-off'], 'wheel-marks': ['kerbed'] }],
    ['caliper-letters', { ...old, services: ['wheels-off'], 'wheel-marks': ['caliper-letters'] }],
    ['old-layer', { ...past, 'earlier-protection': ['coating'], 'protection-when': UNSURE }],
    ['repaint-first', { ...past, 'other-work': ['repaint'] }],
    ['dents-first', { ...past, 'other-work': ['dents'] }],
    ['glass-first', { ...past, 'other-work': ['glass'] }],
    ['upholsterer', { ...past, 'other-work': ['upholstery'] }],
    ['workshop-first', { ...past, 'other-work': ['workshop'] }],
    ['terms', { ...past, authority: 'lease-finance', terms: UNSURE }],
    ['return-terms', { ...past, authority: 'lease-finance', terms: ['return-terms'] }],
    ['paint-warranty', { ...past, authority: 'lease-finance', terms: ['paint-warranty'] }],
    ['consent-paper', { ...past, authority: 'lease-finance', 'owner-consent': true }],
    ['insured', { ...past, 'where-car': 'collect', 'drive-consent': true, insured: UNSURE }],
    ['year', { dangers: ['film'], 'film-age': 34, year: 2015, 'year-check': 'car-year-wrong' }],
    ['year', { year: 2000, 'owner-since': 1998, 'owner-check': 'car-year-wrong' }],
    ['owned-before-built', { year: 2000, 'owner-since': 1998 }],
    ['first-owner-later', { year: 2000, 'owner-since': 2003 }],
    [
      'never-polished-but-filled',
      { ...past, 'polished-before': 'never', 'earlier-protection': ['scratch-remover'] },
    ],
    ['no-such-part', { body: 'motorcycle', services: ['cabin'], 'part-check': 'both-right' }],
  ])('checks %s', (id, changed) => {
    expect(ids(changed)).toContain(id)
  })

  it.each([
    ['owned-before-built', { year: 2000, 'owner-since': 1999 }],
    ['first-owner-later', { year: 2000, 'owner-since': 2002 }],
    ['film-older-than-car', { dangers: ['film'], 'film-age': 5, year: 2015 }],
    ['painter-sheet', { dangers: ['fresh-paint'], 'fresh-paint-weeks': 13 }],
    ['wheel-fit', { services: ['underside'] }],
    ['no-such-part', { body: 'motorcycle', services: ['cabin'], 'part-check': 'service-wrong' }],
    [
      'said-original',
      { dangers: ['fresh-paint'], 'paint-history': 'original', 'paint-check': 'painted-again' },
    ],
    ['leak-shut', { ...wet, 'wet-source': 'repaired', 'wet-depth': 'soaked', 'dry-check': false }],
    ['first-owner-later', { year: 2000, 'owner-since': 2003, 'owner-check': 'more-owners' }],
    ['consent', { ...past, authority: 'lease-finance', 'owner-consent': true }],
  ])('does not check %s on the near side of its limit', (id, changed) => {
    expect(ids(changed)).not.toContain(id)
  })

  it('counts a question that was asked and not answered yet as open', () => {
    expect(ids({ defects: undefined })).toContain('paint-defects')
  })

  it('tells which answers made it check', () => {
    const [point] = openPointsOf(car({ services: ['cabin'], 'cabin-state': UNSURE }), context())
    expect(point).toMatchObject({ id: 'cabin', because: ['cabin-state', 'services'] })
  })

  it('has no check that no car in the corpus needs', { timeout: 240_000 }, () => {
    const seen = new Set(
      answerSets().flatMap((answers) => openPointsOf(answers, context()).map((p) => p.id)),
    )
    expect(openPoints.map((p) => p.id).filter((id) => !seen.has(id))).toEqual([])
  })
})
