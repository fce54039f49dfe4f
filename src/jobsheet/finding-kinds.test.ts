import { expect, it } from 'vitest'
import { steps as catalogue } from '../quote/steps'
import { english } from '../words/en'
import { eventWords } from '../words/en/events'
import { FINDING_KINDS, suggestionFor } from './finding-kinds'

it('takes the minutes the estimate reckoned with, else those of the table', () => {
  expect(suggestionFor('broken-clip', [])).toMatchObject({ minutes: 20, known: false })
  expect(suggestionFor('broken-clip', [{ id: 'broken-clip', minutes: 33.6 }])).toMatchObject({
    minutes: 34,
    known: true,
  })
  expect(suggestionFor(undefined, [])).toBe(null)
  expect(suggestionFor('a-thing-nobody-knows', [])).toBe(null)
})

it('leads to steps that exist and has a name and a thing to do for each kind', () => {
  const known = new Set(catalogue.map((s) => s.id))
  for (const k of FINDING_KINDS) {
    for (const step of k.steps) expect([step, known.has(step)]).toEqual([step, true])
    expect({ ...english, ...eventWords }).toHaveProperty([`finding.${k.id}`])
    expect(english).toHaveProperty([`finding.${k.id}.do`])
  }
})

it('asks for no work of its own where it is a mechanic’s', () => {
  for (const k of FINDING_KINDS.filter((each) => each.mechanic)) {
    expect(k.minutes).toBe(0)
    expect(english[`finding.${k.id}.do`]).toMatch(/mechanic/)
  }
})
