import { describe, expect, it } from 'vitest'
import type { Answers } from '../../src/intake/answers'
import { estimate } from '../../src/quote/estimate'
import { steps as catalogue } from '../../src/quote/steps'
import { customerEstimate, type Shows } from '../../src/routes/acts/customer-estimate'
import { estimateView } from '../../src/routes/acts/views'
import { answerSets } from '../corpus/answer-sets'
import { english, settings, TODAY } from './studio'

/** Every how manieth set is tried. */
const EVERY = 120
const sets = answerSets().filter((_, i) => i % EVERY === 0)

type Studio = typeof settings
const viewOf = (answers: Answers, at: Studio, shows: Shows) =>
  customerEstimate(
    estimateView(
      estimate({ answers, settings: at, today: TODAY, readings: [], adjustments: [] }),
      english,
      null,
    ),
    shows,
  )

type Leaf = { readonly path: string; readonly value: unknown }
/** Every value of the answer with the way to it; places in lists are left out of the way. */
const leaves = (of: unknown, path = ''): readonly Leaf[] =>
  of !== null && typeof of === 'object'
    ? Object.entries(of).flatMap(([k, v]) => leaves(v, Array.isArray(of) ? path : `${path}/${k}`))
    : [{ path, value: of }]

/** Where a number may stand before the studio has looked: sizes, chances and micrometres. */
const NUMBERS = [
  /^\/steps\/quantity\/amount$/,
  /^\/couldAdd\/probability$/,
  /^\/riskNotes\/reasons\/row\/(chance|least)$/,
  /^\/expectation\/(removedShare\/(low|high)|params\/(low|high))$/,
  /^\/paint\/panels\/(topcoat\/(mean|sd)|total|light|strong)$/,
  /^\/paint\/panels\/why\/params\/\w+$/,
  /^\/paint\/panels\/reasons\/row\/value$/,
  /^\/basis\/settingsRev$/,
]
const TELLS =
  /price|money|amount|minut|hour|pace|rate|offer|budget|deposit|total|lag|plan|pessimistic|optimistic/i
const AMOUNT = /[€$£]|\bEUR\b/

const faultsOf = (json: unknown): readonly string[] =>
  leaves(json).flatMap(({ path, value }) => {
    const faults: string[] = []
    const known = NUMBERS.some((may) => may.test(path))
    if (typeof value === 'number' && !known) faults.push(`${path} is ${value}`)
    if (TELLS.test(path) && !known && value !== null) faults.push(`${path} stands there`)
    if (typeof value === 'string' && path !== '/currency' && AMOUNT.test(value))
      faults.push(`${path} says ${value}`)
    if (path.endsWith('/rule') && !['note', 'limit', 'prior'].includes(String(value)))
      faults.push(`${path} is ${value}`)
    return faults
  })

const all = (check: (answers: Answers) => readonly string[]): readonly string[] => [
  ...new Set(sets.flatMap(check)),
]

/** The same studio at twice the rate, and at half its speed in all it does. */
const dearer: Studio = {
  ...settings,
  ratePerHour: settings.ratePerHour * 2,
  minimumCharge: settings.minimumCharge + 12_300,
  materialsPerHour: settings.materialsPerHour + 700,
}
const slower: Studio = {
  ...settings,
  steps: Object.fromEntries(catalogue.map(({ id }) => [id, { pace: 2 }])),
}

/** Lists by name: which of two lines comes first may hang on how long they take. */
const unordered = (of: unknown): unknown =>
  Array.isArray(of)
    ? of.map((each) => JSON.stringify(unordered(each))).sort()
    : of !== null && typeof of === 'object'
      ? Object.fromEntries(Object.entries(of).map(([k, v]) => [k, unordered(v)]))
      : of

describe('what is sent before the studio has looked', () => {
  it('holds no price, time or rule that tells one, anywhere in it', () => {
    expect(sets.length).toBeGreaterThan(15)
    expect(all((a) => faultsOf(viewOf(a, settings, 'after-review')))).toEqual([])
  })

  it('would be found to hold them if it did', () => {
    const found = all((a) => faultsOf(viewOf(a, settings, 'range'))).join('\n')
    for (const path of [
      '/price/low',
      '/steps/minutes/mode',
      '/couldAdd/price',
      '/steps/lagMinutes',
    ])
      expect(found).toContain(path)
    expect(found).toMatch(/reasons\/rule is (minutes|event)/)
  })

  it.each([
    ['takes twice as much', dearer],
    ['works half as fast', slower],
  ])('is the same from a studio that %s', (_, other) => {
    for (const told of sets.slice(0, 8)) {
      // A limit the customer named is compared with the price, and what narrows most hangs on time:
      // a note and an order of questions, no figure.
      const { budget: _, ...answers } = told
      const [here, there] = [settings, other].map((at) => {
        const { narrowing: _n, ...view } = viewOf(answers, at, 'after-review')
        return unordered(view)
      })
      expect(there).toEqual(here)
      expect(viewOf(answers, other, 'range')).not.toEqual(viewOf(answers, settings, 'range'))
    }
  })

  it('tells of one figure no other that would give the hours', () => {
    for (const answers of sets) {
      const {
        offer,
        couldAdd: _c,
        plan: _p,
        deadline: _d,
        ...rest
      } = viewOf(answers, settings, 'from') as ReturnType<typeof viewOf> & Record<string, unknown>
      expect(Object.keys(offer as object)).toEqual(['low'])
      expect(faultsOf({ ...rest })).toEqual([])
    }
  })
})
