import { describe, expect, it } from 'vitest'
import { type Estimated, type EstimateInput, estimate } from '../../src/quote/estimate'
import { scenarioCars } from '../../src/quote/steps/scenario-cars'
import { answersOf } from '../../src/quote/steps/step-bench'
import { english, settings, TODAY } from './studio'

type More = {
  readonly told?: Readonly<Record<string, unknown>>
  readonly readings?: EstimateInput['readings']
  readonly people?: number
}

const of = (id: string, { told = {}, readings = [], people = 1 }: More = {}): Estimated => {
  const s = scenarioCars.find((each) => each.id === id)
  if (s === undefined) throw new Error(id)
  const unsure = (s.unsure ?? []).filter((q) => !(q in told))
  return estimate({
    answers: answersOf({ ...s.car, ...told }, unsure),
    settings: { ...settings, people },
    today: TODAY,
    readings,
    adjustments: [],
  })
}

const said = (key: string): string => (english.has(key) ? english.say(key) : '')

/** Everything the owner is told: notes, refusals, what could add, what is checked, what to expect. */
const words = (e: Estimated): string =>
  [
    ...e.riskNotes.flatMap(({ id }) =>
      ['', '.means', '.bench', '.decision'].map((k) => said(`risk.${id}${k}`)),
    ),
    ...e.scope.turnedDown.flatMap(({ id }) => [said(`refuse.${id}`), said(`refuse.${id}.turn`)]),
    ...e.couldAdd.map((c) => said(`${c.kind}.${c.id}`)),
    ...e.openPoints.map((o) => said(`open.${o.id}`)),
    english.say(e.expectation.phrase),
  ].join('\n')

const read = (values: Readonly<Record<string, readonly number[]>>, jamb?: readonly number[]) => [
  ...Object.entries(values).map(
    ([panel, each]) => ({ panel, kind: 'panel', values: each, probe: 'dual' }) as const,
  ),
  ...(jamb ? [{ panel: 'jamb', kind: 'reference', values: jamb, probe: 'dual' } as const] : []),
]
const step = (e: Estimated, id: string) => e.steps.find((s) => s.id === id)
const ids = (e: Estimated): readonly string[] => e.steps.map((s) => s.id)

/** What a careful detailer would have said of each car, through the whole estimate (own estimate). */
const MUST: readonly (readonly [string, More, readonly RegExp[]])[] = [
  [
    'S1',
    { readings: read({ bonnet: [88, 92, 90], roof: [94, 96, 95] }, [70, 70, 71]) },
    [
      /better, not perfect/,
      /paint can come with it/,
      /outline may stay/i,
      /found and proven/,
      /badge pin/i,
      /torque|second check/i,
    ],
  ],
  [
    'S2',
    {},
    [/fine haze is seen in full sun/, /some of them stay/, /dry for about a day/, /about a week/],
  ],
  [
    'S3',
    {},
    [
      /no child or ill person ride/,
      /foam that smells is replaced/,
      /airbag plugs/,
      /electrics/,
      /specialist/,
    ],
  ],
  ['S4', {}, [/filler/, /how thick the top layer/, /blend edge/, /it grows/, /Ask a painter/]],
  ['S5', {}, [/shiny patches/, /Only repainting/, /protection made for matte/]],
  [
    'S6',
    { told: { deadline: '2026-06-06' } },
    [/trap it/, /shift its shade/, /cannot be kept/, /data sheet and a written yes/],
  ],
  [
    'S7',
    {},
    [
      /seams and plastic windows may split/,
      /no folding/i,
      /cracks stay/i,
      /found and proven/,
      /leather.*outside|recolour/i,
    ],
  ],
  [
    'S8',
    { told: { 'film-started-with': ['blade'], 'engine-kind': 'electric' } },
    [/blade cuts/, /bumper is likely to lift paint/, /signed yes/, /charge port/, /12 V/],
  ],
  [
    'S9',
    { told: { use: 'daily-outdoors', deadline: '2026-06-02' } },
    [
      /may not vanish/,
      /drying and curing cannot be hurried/i,
      /scratches that were there all along/,
    ],
  ],
  [
    'S10',
    { told: { 'drive-state': ['no-start', 'weak-brakes'], deadline: '2026-06-09' } },
    [
      /\(checking\), which are permanent/,
      /may contain lead|hold lead/,
      /no solvent/,
      /wiring may be chewed/,
      /brakes/,
      /transport both ways/,
      /not a mirror/,
    ],
  ],
]

describe('what the owner of each car is told', () => {
  it.each(MUST)('%s', (id, more, must) => {
    const all = words(of(id, more))
    for (const m of must) expect(all).toMatch(m)
  })
})

describe('the scope a careful detailer would write (own estimate)', () => {
  it('S1: film by the hour with a cap, one light set, wax, cabin after the leak', () => {
    const e = of('S1')
    for (const film of ['film-top', 'film-bumper', 'adhesive'])
      expect(step(e, film)?.byTime?.capMinutes).toBeGreaterThan(0)
    expect(e.scope.level).toBe('light')
    expect(ids(e)).toContain('wax')
    expect(ids(e).indexOf('leak-proof')).toBeLessThan(ids(e).indexOf('cabin-vacuum'))
  })

  it('S2: a milder two-step stays open, and a jamb with full clear does not forbid it', () => {
    const e = of('S2b', {
      readings: read({ bonnet: [118, 120, 119], roof: [117, 118, 120] }, [110, 109, 111]),
    })
    const bonnet = e.paint.panels.find((p) => p.panel === 'bonnet')
    expect(bonnet?.light).toBeGreaterThan(0)
    expect(bonnet?.strong).toBeLessThanOrEqual(4)
    expect(bonnet?.verdict).not.toBe('stop')
  })

  it('S3: no cleaning is promised; once the leak is proven and nobody is weak, it is offered', () => {
    const first = of('S3')
    expect(first.labourMinutes.high).toBeLessThan(4 * 60)
    const after = of('S3', {
      told: { 'wet-source': 'repaired', 'mould-area': 'tray', 'sensitive-people': false },
    })
    expect(ids(after)).toContain('carpet-extraction')
    // Its second stage: 18 to 34 hours over 4 to 8 days.
    const [low, high] = [after.labourMinutes.low / 60, after.labourMinutes.high / 60]
    const shared = Math.min(high, 34) - Math.max(low, 18)
    expect(shared / Math.min(high - low, 16)).toBeGreaterThanOrEqual(0.6)
  })

  it('S4: the roof is left, thick is not more, filler is left alone', () => {
    const e = of('S4', {
      readings: read({ bonnet: [310, 365, 420], 'rear-left': [1300, 1290, 1310] }),
    })
    const light = step(e, 'polish-light')?.places ?? []
    expect(light).toContain('boot')
    for (const id of ['roof', 'rear-left']) expect(light, id).not.toContain(id)
    for (const id of ['bonnet', 'rear-left'])
      expect(e.paint.panels.find((p) => p.panel === id)?.strong, id).toBe(0)
  })

  it('S6: a few hours now, a few once the painter agreed', () => {
    const now = of('S6')
    const later = of('S6', {
      told: { dangers: [], services: ['protect'], 'fresh-paint-weeks': 14 },
    })
    expect(ids(now)).not.toContain('coating')
    expect(ids(later)).toContain('coating')
    expect(later.labourMinutes.likely / 60).toBeGreaterThan(3)
    expect(later.labourMinutes.likely / 60).toBeLessThan(8)
  })

  it('S7: three to seven days with its drying', () => {
    const { days } = of('S7').plan
    const span =
      (Date.parse(days.at(-1)?.date ?? '') - Date.parse(days[0]?.date ?? '')) / 86_400_000
    expect(span).toBeGreaterThanOrEqual(2)
    expect(span).toBeLessThanOrEqual(8)
  })

  it('S8: a corner first, the bumper last, by time', () => {
    const e = of('S8')
    const at = (id: string) => ids(e).indexOf(id)
    expect(at('film-test-corner')).toBeLessThan(at('film-top'))
    expect(at('film-top')).toBeLessThan(at('film-bumper'))
    expect(step(e, 'film-bumper')?.cautions).toContain('film-consent')
    expect(ids(e)).not.toContain('polish-light')
  })

  it('S9: a fixed time on one day, hair to nine tenths', () => {
    const e = of('S9')
    expect(e.plan.days).toHaveLength(1)
    expect(e.steps.every((s) => s.byTime === null)).toBe(true)
    expect(words(e)).toMatch(/nine tenths|90 %/)
  })

  it('S10: two people are ready earlier than one', () => {
    const [one, two] = [of('S10'), of('S10', { people: 2 })]
    expect(two.plan.readyCautious < one.plan.readyCautious).toBe(true)
  })
})
