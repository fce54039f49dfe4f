import { describe, expect, it } from 'vitest'
import { sampleWords } from '../samples'
import { chanceWords } from './chance'
import { Hatching, hatchLines } from './hatching'
import { fromMinor } from './money-text'
import { spanPlaces } from './span-bar'

describe('a span', () => {
  it('stands low at the left, high at the right, likely where it belongs', () => {
    expect(spanPlaces({ low: 0, likely: 25, high: 100 })).toEqual({
      low: '4.00%',
      likely: '27.00%',
      high: '96.00%',
      tick: null,
    })
  })
  it('keeps the range above its figures when a limit lies outside it', () => {
    const range = { low: 100, likely: 150, high: 200 }
    const x = spanPlaces({ ...range, tick: 300 })
    expect([x.low, x.high, x.tick]).toEqual(['4.00%', '96.00%', '98.00%'])
    expect(spanPlaces({ ...range, tick: 20 }).tick).toBe('2.00%')
    expect(spanPlaces({ ...range, tick: 125 }).tick).toBe('27.00%')
  })
  it('does not divide by nothing', () => {
    expect(spanPlaces({ low: 5, likely: 5, high: 5 }).likely).toBe('50.00%')
  })
})

describe('hatching', () => {
  it.each([
    [0, 0],
    [0.49, 0],
    [0.5, 1],
    [1.6, 3],
    [5, 9],
    [-1, 0],
  ])('%d µm are %d lines', (um, lines) => expect(hatchLines(um)).toBe(lines))
  it('is dotted where nothing can be read and plain where nothing is left', () => {
    expect(String(<Hatching allowance={null} />)).toContain('stroke-dasharray')
    const none = String(<Hatching allowance={0} />)
    expect(none).not.toContain('stroke-dasharray')
    expect(none).not.toContain('<path')
  })
})

describe('a chance in words', () => {
  it.each([
    [0.049, 'hardly ever'],
    [0.05, 'in about 1 of 10 cases'],
    [0.72, 'in about 7 of 10 cases'],
    [0.95, 'in about 9 of 10 cases'],
    [0.951, 'nearly always'],
  ])('%d is %s', (p, text) => expect(chanceWords(sampleWords, p)).toBe(text))
})

describe('money as typed', () => {
  // Minor units by ISO 4217: yen none, euro two, dinar three.
  it.each([
    [1234, 0, '1234'],
    [1234, 2, '12.34'],
    [5, 2, '0.05'],
    [1234, 3, '1.234'],
  ])('%d with %d places is %s', (minor, places, text) =>
    expect(fromMinor(minor, places)).toBe(text),
  )
})
