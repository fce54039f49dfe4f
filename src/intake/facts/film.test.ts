import { describe, expect, it } from 'vitest'
import { filmClassOf } from './film'

/** Classes of film; common practice, no source: about thirty years is the worst class in any state. */
describe('the class of film', () => {
  it.each([
    [0, ['pliable'], 'young'],
    [4, ['pliable'], 'young'],
    [5, ['pliable'], 'ageing'],
    [9, [], 'ageing'],
    [10, ['pliable'], 'brittle'],
    [30, [], 'brittle'],
    [2, ['cracked'], 'brittle'],
    [2, ['dull'], 'ageing'],
    [2, ['started'], 'young'],
    [undefined, ['pliable'], 'young'],
    [undefined, [], 'ageing'],
    [undefined, ['cracked'], 'brittle'],
  ] as const)('%s years, %j: %s', (years, state, expected) => {
    expect(filmClassOf(years, state)).toBe(expected)
  })
})
