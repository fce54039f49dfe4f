import { expect, it } from 'vitest'
import { FILM_LIFTS, filmWord } from './film-stop'

const lift = (at: number) => ({ suggests: FILM_LIFTS, at })
const said = (go: 'leave' | 'go-on', at: number) => ({ go, at })
const word = (findings: ReturnType<typeof lift>[], answers: ReturnType<typeof said>[] = []) =>
  filmWord({ findings: [{ at: 0 }, ...findings], filmAnswers: answers })

it('stops at the first lifted spot and asks', () => {
  expect(word([])).toEqual({ lifts: 0, state: null })
  expect(word([lift(1)])).toEqual({ lifts: 1, state: 'ask' })
})

it('goes on by the owner’s word until the next lift, and leaves the rest when it is said so', () => {
  expect(word([lift(1)], [said('go-on', 2)]).state).toBe('go-on')
  expect(word([lift(1), lift(3)], [said('go-on', 2)])).toEqual({ lifts: 2, state: 'ask' })
  expect(word([lift(1)], [said('leave', 2)]).state).toBe('leave')
  expect(word([lift(1), lift(3)], [said('leave', 2)]).state).toBe('leave')
})

it('may be given more spots before it asks', () => {
  const job = { findings: [lift(1), lift(2)], filmAnswers: [] }
  expect(filmWord(job, 3).state).toBe(null)
  expect(filmWord(job, 2).state).toBe('ask')
})
