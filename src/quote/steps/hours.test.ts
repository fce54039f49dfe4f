import { describe, expect, it } from 'vitest'
import { answersOf, minutesOf, needOf, plainCar } from './step-bench'

/**
 * Our own bench hours, one person: "own estimate", never an outside check. They hold the minutes of
 * the table together, so that a change of one row that moves a whole job is seen.
 */
const hours = (values: Readonly<Record<string, unknown>>, ids?: readonly string[]): number =>
  minutesOf(answersOf(values), ids) / 60

const machine = ['polish-cut', 'polish-light']
const small = { ...plainCar, body: 'city-car' }
const large = { ...plainCar, body: 'suv', size: 'large' }
const show = (car: typeof plainCar | typeof small | typeof large) => ({ ...car, wish: 'show' })

describe('hours of common jobs (own estimate)', () => {
  it.each([
    ['small', small, 3],
    ['mid', plainCar, 4.5],
    ['large', large, 6.5],
  ])('one-step machine time, %s car', (_name, car, expected) => {
    const h = hours(car, machine)
    expect(h).toBeGreaterThan(expected * 0.8)
    expect(h).toBeLessThan(expected * 1.2)
  })

  it.each([
    ['small', small, 7],
    ['mid', plainCar, 10],
    ['large', large, 14],
  ])('two-step machine time once measuring allowed it, %s car', (_name, car, expected) => {
    const one = hours(car, ['polish-light'])
    const two = hours(show(car), ['polish-light', 'polish-cut'])
    // Not measured yet, the cut stands with its chance; taken whole it is what a two-step costs.
    const chance = needOf('polish-cut', answersOf(show(car)))?.chance ?? 0
    const cut = (two - one) / chance
    expect(one + cut).toBeGreaterThan(expected * 0.8)
    expect(one + cut).toBeLessThan(expected * 1.2)
  })

  it('check-in with a map takes 0.75 to 1.25 hours', () => {
    const h = hours(plainCar, ['check-in', 'references', 'readings'])
    expect(h).toBeGreaterThanOrEqual(0.7)
    expect(h).toBeLessThanOrEqual(1.25)
  })

  it('look-over with readings and test spot takes 0.5 to 1 hour', () => {
    const h = hours(plainCar, ['look-over', 'references', 'readings', 'test-spot', 'test-spot-yes'])
    expect(h).toBeGreaterThanOrEqual(0.5)
    expect(h).toBeLessThanOrEqual(1.05)
  })

  it('a mid car with one-step and coating is 10 to 13 hours in all, an hour of set-up with it', () => {
    const h = hours(plainCar) + 1
    expect(h).toBeGreaterThan(10)
    expect(h).toBeLessThan(13)
  })

  it.each([
    ['ageing', 7, [], 0.5, 1],
    ['brittle', 20, ['cracked'], 1, 2],
  ])('adhesive under %s film, per panel', (_name, years, state, low, high) => {
    const film = {
      ...plainCar,
      dangers: ['film'],
      'film-kind': ['clear-film'],
      'film-where': ['bonnet', 'front-bumper'],
      'film-age': years,
      'film-state': state,
    }
    const perPanel = hours(film, ['adhesive']) / 2
    expect(perPanel).toBeGreaterThanOrEqual(low)
    expect(perPanel).toBeLessThanOrEqual(high)
  })

  it('wheels off, cleaned and on again take 3 to 4.5 hours', () => {
    const h = hours({ ...plainCar, services: ['wheels-off'] }, [
      'wheels-off',
      'wheels-clean',
      'wheels-on',
    ])
    expect(h).toBeGreaterThan(3)
    expect(h).toBeLessThan(4.5)
  })

  it.each([
    ['tidy', 'city-car', 1.5, 2.7],
    ['tidy', 'mpv', 2, 3.6],
    ['family', 'saloon', 4, 7],
    ['neglected', 'saloon', 7, 11],
    ['neglected', 'mpv', 9, 15],
  ])('a %s cabin of a %s', (state, body, low, high) => {
    const h = hours({
      body,
      size: 'mid',
      year: 2018,
      dangers: [],
      services: ['cabin'],
      'cabin-state': state,
      'cabin-marks': ['stains'],
      leather: ['cloth-only'],
    })
    expect(h).toBeGreaterThan(low)
    expect(h).toBeLessThan(high)
  })
})
