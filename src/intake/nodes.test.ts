import { describe, expect, it } from 'vitest'
import type { Answers } from './answers'
import { reader } from './reader'
import { script } from './script'

const from = (values: Readonly<Record<string, unknown>>): Answers =>
  Object.fromEntries(
    Object.entries(values).map(([id, value]) => [
      id,
      value === 'unsure' ? { unsure: true as const } : { value },
    ]),
  )
const asked = (values: Readonly<Record<string, unknown>>): readonly string[] => {
  const r = reader(from(values))
  return script.questions.filter((q) => r.asks(q)).map((q) => q.id)
}

const plain = {
  body: 'coupe',
  dangers: [],
  year: 2012,
  services: ['paint'],
  wish: 'improve',
  'paint-history': 'original',
  colour: 'mid',
  defects: ['wash-marks'],
}

describe('what an answer leads to', () => {
  it.each<[Readonly<Record<string, unknown>>, readonly string[]]>([
    [{ body: 'suv' }, ['size']],
    [{ services: ['cabin'] }, ['cabin-state']],
    [{ services: ['wheels-off'] }, ['locking-key', 'wheels']],
    [{ services: ['glass'] }, ['tint']],
    [{ services: ['engine-bay'] }, ['engine-kind']],
    [{ services: ['stickers'] }, ['film-where', 'film-age']],
    [{ services: ['roof'] }, ['roof-kind']],
    [{ body: 'convertible' }, ['roof-kind']],
    [{ dangers: ['fresh-paint'] }, ['respray-panels', 'fresh-paint-weeks']],
    [{ dangers: ['film'] }, ['film-kind', 'film-where', 'film-age', 'film-state', 'film-over']],
    [{ dangers: ['peeling'] }, ['peel-where']],
    [
      { dangers: ['wet'] },
      ['wet-where', 'wet-source', 'wet-depth', 'wet-electrics', 'warning-lights', 'payer'],
    ],
    [{ dangers: ['growth'] }, ['growth']],
    [{ dangers: ['growth'], growth: ['mould-hard'] }, ['mould-area', 'sensitive-people']],
    [{ dangers: ['growth'], growth: ['nest'] }, ['warning-lights']],
    [{ dangers: ['soft-roof'] }, ['roof-kind']],
    [{ dangers: ['not-driving'] }, ['drive-state', 'warning-lights']],
    [{ 'paint-history': 'part' }, ['respray-panels', 'cloth-test', 'polished-before']],
    [{ 'paint-history': 'unsure' }, ['polished-before', 'owner-since', 'photos']],
    [{ services: ['cabin'], 'cabin-state': 'neglected' }, ['cabin-marks', 'leather', 'belongings']],
    [{ services: ['cabin'], 'cabin-state': 'family', 'cabin-marks': ['milk'] }, ['spilled']],
    [{ dangers: ['film'], 'film-state': ['started'] }, ['film-started-with']],
    [{ dangers: ['film'], 'film-where': ['glass'] }, ['tint']],
    [{ year: 1990 }, ['cloth-test', 'finish', 'patina', 'owner-since', 'one-owner', 'photos']],
    [{ year: 1990, patina: ['marks'] }, ['keep']],
    [{ year: 1990, 'readings-before': true }, ['readings-text']],
    [{ year: 1990, authority: 'lease-finance' }, ['payer']],
    [{ year: 1990, authority: 'not-mine', payer: 'insurer' }, ['claim']],
    [{ year: 1990, 'where-car': 'collect' }, ['drive-consent']],
    [{ year: 1990, defects: ['chips'] }, ['paint-code']],
    [{ year: 'unsure' }, ['cloth-test', 'finish', 'vin']],
    [{ year: 1990 }, ['keys', 'changes', 'other-work', 'where-car']],
    [{ year: 1990, authority: 'lease-finance' }, ['owner-consent', 'terms']],
    [{ year: 1990, authority: 'family-or-company' }, ['owner-consent']],
    [{ 'paint-history': 'part', year: 2018 }, ['terms', 'keys']],
    [{ year: 1990, 'where-car': 'at-home' }, ['place-has']],
    [{ year: 1990, 'where-car': 'collect', 'drive-consent': true }, ['insured']],
    [{ year: 1990, services: ['wheels-off'] }, ['wheel-marks', 'changes']],
    [{ year: 1990, 'earlier-protection': ['coating'] }, ['protection-when']],
    [
      { services: ['cabin'], 'cabin-state': 'family', 'cabin-marks': ['smoke'] },
      ['sensitive-people', 'headliner'],
    ],
    [{ services: ['cabin'], year: 1990 }, ['patina', 'trim', 'belongings']],
  ])('%j is asked %j', (change, ids) => {
    const before = asked({ ...plain, services: change.services ? [] : plain.services })
    const after = asked({ ...plain, ...change })
    expect(after).toEqual(expect.arrayContaining([...ids]))
    // Each of them is the doing of the change (save where only the value was open before).
    for (const id of ids) expect(before).not.toContain(id)
  })

  it.each<[Readonly<Record<string, unknown>>, readonly string[]]>([
    [{ dangers: ['matte'] }, ['cloth-test', 'defects', 'finish', 'polished-before']],
    [{ services: ['cabin'] }, ['wish', 'paint-history', 'colour', 'defects']],
    [{ year: 1990, dangers: ['not-driving'] }, ['use', 'drive-consent']],
    [{ dangers: ['growth'], growth: ['nest'] }, ['mould-area', 'sensitive-people']],
    [{ dangers: 'unsure' }, ['film-kind', 'wet-where', 'growth', 'drive-state']],
    [{ dangers: ['fresh-paint'], 'paint-history': 'all' }, ['respray-panels']],
    [{ services: ['engine-bay'], year: 1999 }, ['engine-kind']],
    [{ services: ['cabin'], 'cabin-state': 'tidy' }, ['cabin-marks', 'leather']],
    [{ year: 1990, 'earlier-protection': ['wax'] }, ['protection-when']],
    [{ year: 1990, 'where-car': 'collect', 'drive-consent': false }, ['insured', 'place-has']],
    [{ year: 1990, authority: 'mine' }, ['owner-consent']],
    [{ dangers: ['wet'], year: 2015, 'paint-history': 'part' }, ['terms']],
    [{}, ['keys', 'changes', 'other-work', 'wheel-marks', 'terms']],
  ])('%j is not asked %j', (change, ids) => {
    const after = asked({ ...plain, ...change })
    for (const id of ids) expect(after).not.toContain(id)
  })

  it.each<[string, number, string, boolean]>([
    ['year', 1999, 'cloth-test', true],
    ['year', 2000, 'cloth-test', false],
    ['year', 2004, 'finish', true],
    ['year', 2005, 'finish', false],
    ['year', 1994, 'patina', true],
    ['year', 1995, 'patina', false],
    ['year', 2004, 'photos', true],
    ['year', 2005, 'photos', false],
  ])('with %s %i, %s: %s', (id, value, other, expected) => {
    expect(asked({ ...plain, [id]: value }).includes(other)).toBe(expected)
  })
})

describe('contradictions', () => {
  it.each<[number, number, number | undefined, boolean]>([
    [2015, 12, 2026, false],
    [2015, 13, 2026, true],
    [2015, 13, 2027, false],
    [2015, 34, undefined, true],
    [1990, 25, undefined, false],
  ])('a car of %i with film of %i years, begun in %s: asked %s', (year, age, begun, expected) => {
    const ids = asked({
      ...plain,
      dangers: ['film'],
      year,
      'film-age': age,
      ...(begun !== undefined && { 'begun-year': begun }),
    })
    expect(ids.includes('year-check')).toBe(expected)
  })

  it.each<[string, Readonly<Record<string, unknown>>, Readonly<Record<string, unknown>>]>([
    // Said to be as it left the factory, and sprayed lately, or of two paints, or film on a repaint.
    ['paint-check', { dangers: ['fresh-paint'] }, { dangers: ['peeling'] }],
    [
      'paint-check',
      { year: 1990, 'cloth-test': 'part' },
      { year: 1990, 'cloth-test': 'part', 'paint-history': 'part' },
    ],
    [
      'paint-check',
      { dangers: ['film'], 'film-over': 'repaint' },
      { dangers: ['film'], 'film-over': 'bumper' },
    ],
    // Owned before it was built, or by its first owner years later.
    ['owner-check', { year: 1990, 'owner-since': 1988 }, { year: 1990, 'owner-since': 1989 }],
    [
      'owner-check',
      { year: 1990, 'owner-since': 1993, 'one-owner': 'one' },
      { year: 1990, 'owner-since': 1992, 'one-owner': 'one' },
    ],
    [
      'owner-check',
      { year: 1990, 'owner-since': 1993, 'one-owner': 'one' },
      { year: 1990, 'owner-since': 1993, 'one-owner': 'few' },
    ],
    // A repaired leak, and yet the carpet is wet.
    [
      'dry-check',
      { dangers: ['wet'], 'wet-source': 'repaired', 'wet-depth': 'soaked' },
      { dangers: ['wet'], 'wet-source': 'repaired', 'wet-depth': 'surface' },
    ],
    [
      'dry-check',
      { dangers: ['wet'], 'wet-source': 'repaired', 'wet-depth': 'standing' },
      { dangers: ['wet'], 'wet-source': 'open', 'wet-depth': 'standing' },
    ],
    // Mould without damp.
    [
      'damp-check',
      { dangers: ['growth'], growth: ['mould-hard'] },
      { dangers: ['growth', 'wet'], growth: ['mould-hard'] },
    ],
    [
      'damp-check',
      { dangers: ['growth'], growth: ['mould-hard'] },
      { dangers: ['growth'], growth: ['nest'] },
    ],
    // A soft roof that is hard.
    [
      'roof-check',
      { dangers: ['soft-roof'], 'roof-kind': 'hard' },
      { dangers: ['soft-roof'], 'roof-kind': 'cloth' },
    ],
    [
      'roof-check',
      { services: ['roof'], 'roof-kind': 'hard' },
      { body: 'convertible', 'roof-kind': 'hard' },
    ],
    // Work on what the vehicle has not.
    [
      'part-check',
      { body: 'motorcycle', services: ['cabin'] },
      { body: 'motorcycle', services: ['paint'] },
    ],
    [
      'part-check',
      { body: 'boat', services: ['wheels-off'] },
      { body: 'boat', services: ['cabin'] },
    ],
    // A car that does not drive, brought by its owner.
    [
      'bring-how',
      { dangers: ['not-driving'], 'where-car': 'bring' },
      { dangers: ['not-driving'], 'where-car': 'collect' },
    ],
    ['bring-how', { dangers: ['not-driving'], 'where-car': 'bring' }, { 'where-car': 'bring' }],
  ])('%s is asked with %j and not with %j', (id, odd, fine) => {
    expect(asked({ ...plain, ...odd })).toContain(id)
    expect(asked({ ...plain, ...fine })).not.toContain(id)
  })

  it.each<[number, string, string, boolean]>([
    [2001, 'metallic', 'colour', true],
    [2000, 'metallic', 'colour', false],
    [2001, 'solid', 'colour', false],
    [2001, 'metallic', 'clean', false],
    [2012, 'metallic', 'colour', true],
  ])('paint of %i, %s, cloth %s: asked %s', (year, finish, cloth, expected) => {
    const ids = asked({ ...plain, year, 'paint-history': 'part', finish, 'cloth-test': cloth })
    expect(ids.includes('system-check')).toBe(expected)
  })
})
