import { describe, expect, it } from 'vitest'
import { filmClassOf } from './film'

/** Classes of film; common practice, no source: about thirty years is the worst class in any state. */
describe('the class of film', () => {
  it.each([
    [0, 'pliable', 'young'],
    [4, 'pliable', 'young'],
    [5, 'pliable', 'ageing'],
    [9, 'other', 'ageing'],
    [10, 'pliable', 'brittle'],
    [30, 'other', 'brittle'],
    [2, 'cracked', 'brittle'],
    [2, 'dull', 'ageing'],
    [2, 'other', 'young'],
    [undefined, 'pliable', 'young'],
    [undefined, 'other', 'ageing'],
    [undefined, 'cracked', 'brittle'],
  ] as const)('%s years, %s: %s', (years, state, expected) => {
    expect(filmClassOf(years, state)).toBe(expected)
  })
})
