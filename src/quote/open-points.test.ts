import { describe, expect, it } from 'vitest'
import { answerSets } from '../../tests/corpus/answer-sets'
import { openPoints, openPointsOf } from './open-points'
import { car, context, UNSURE } from './risks/plain-answers'

const ids = (changed: Readonly<Record<string, unknown>>) =>
  openPointsOf(car(changed), context()).map((p) => p.id)
const wet = { dangers: ['wet'], services: ['cabin'] }
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
    ['fresh-but-original', { dangers: ['fresh-paint'], 'paint-history': 'original' }],
    ['owned-before-built', { year: 2000, 'owner-since': 1998 }],
    ['first-owner-later', { year: 2000, 'owner-since': 2003 }],
    [
      'never-polished-but-filled',
      { ...past, 'polished-before': 'never', 'earlier-protection': ['scratch-remover'] },
    ],
    ['no-such-part', { body: 'motorcycle', services: ['cabin'] }],
  ])('checks %s', (id, changed) => {
    expect(ids(changed)).toContain(id)
  })

  it.each([
    ['owned-before-built', { year: 2000, 'owner-since': 1999 }],
    ['first-owner-later', { year: 2000, 'owner-since': 2002 }],
    ['film-older-than-car', { dangers: ['film'], 'film-age': 5, year: 2015 }],
    ['painter-sheet', { dangers: ['fresh-paint'], 'fresh-paint-weeks': 13 }],
    ['wheel-fit', { services: ['underside'] }],
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
