import { describe, expect, it } from 'vitest'
import type { Answers } from './answers'
import { photoGuide } from './photo-guide'
import { reader } from './reader'

const of = (answers: Answers): string =>
  photoGuide(reader({ body: { value: 'saloon' }, ...answers })).join(' ')
const SIDES = 'front rear left right'

// What a picture is asked for: own estimate of what each one shows.
describe('photoGuide', () => {
  it.each<[string, Answers, string]>([
    ['nothing told', {}, `${SIDES} other`],
    [
      'paint alone',
      { services: { value: ['paint'] }, dangers: { value: [] } },
      `${SIDES} sun-flank sun-bonnet jamb other`,
    ],
    [
      'a dry cabin',
      { services: { value: ['cabin'] }, dangers: { value: [] } },
      `${SIDES} seats carpet other`,
    ],
    [
      'film to come off',
      { services: { value: ['stickers'] }, dangers: { value: ['film'] } },
      `${SIDES} film-edge other`,
    ],
    [
      'damp with growth',
      { services: { value: ['cabin'] }, dangers: { value: ['wet', 'growth'] } },
      `${SIDES} seats carpet boot-well damp-coin other`,
    ],
    [
      'a motorcycle',
      {
        body: { value: 'motorcycle' },
        services: { value: ['paint', 'cabin'] },
        dangers: { value: [] },
      },
      `${SIDES} sun-flank other`,
    ],
  ])('%s', (_, answers, expected) => {
    expect(of(answers)).toBe(expected)
  })
})
