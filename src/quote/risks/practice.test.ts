import { describe, expect, it } from 'vitest'
import { riskWords } from '../../words/en/risks'
import { risks } from './index'
import { raisedNotes } from './pick-notes'
import { car, context } from './plain-answers'

const improve = { wish: 'improve' }
const cabin = { services: ['cabin'], 'cabin-state': 'family' }
const film = { dangers: ['film'] }
const wet = { dangers: ['wet'], services: ['cabin'] }
const measured = (thin: boolean) => ({
  panels: [{ panel: 'bonnet', allows: 'light' as const, thin }],
})

type Row = readonly [
  when: string,
  answers: Record<string, unknown>,
  note: string,
  say: RegExp,
  does: RegExp,
  more?: Partial<ReturnType<typeof context>>,
]

/**
 * What a careful bench warns of: when, what it says, what it does (common practice, no source). The
 * words must be in the note that fires, not only its name.
 */
const TABLE: readonly Row[] = [
  [
    'thin paint, measured',
    improve,
    'thin',
    /better, not perfect.*stay/s,
    /one set, read again/,
    { measured: measured(true) },
  ],
  [
    'edges through',
    { defects: ['burn-through'] },
    'edges-through',
    /cannot come back/,
    /Photograph.*Tape/s,
  ],
  [
    'film of seven years',
    { ...film, 'film-age': 7 },
    'film-old',
    /paint can come with it.*cap/s,
    /test corner.*stop at the first/s,
  ],
  [
    'film over a bumper',
    { ...film, 'film-over': 'bumper' },
    'film-over-repaint',
    /likely to lift/,
    /signed yes/,
  ],
  [
    'film ghost, knife lines',
    { ...film, 'film-age': 5 },
    'film-edge',
    /stay visible/,
    /before polishing/,
  ],
  [
    'film begun by the owner',
    { ...film, 'film-state': ['started'] },
    'film-started',
    /already there/,
    /close-ups.*before water/s,
  ],
  [
    'peel or haze',
    { dangers: ['peeling'] },
    'peel',
    /only repainting helps/,
    /clay, jet, tape and machine/,
  ],
  [
    'checking lacquer',
    { year: 1955, 'cloth-test': 'colour' },
    'lacquer',
    /permanent/,
    /no solvent/,
  ],
  [
    'single stage',
    { year: 1990, 'cloth-test': 'colour' },
    'single-stage',
    /normal/,
    /cloth.*many pads.*wax/s,
  ],
  [
    'repaint of unknown date',
    { 'paint-history': 'part' },
    'repainted',
    /shade may differ/,
    /blend edges.*test spot/s,
  ],
  [
    'paint under ninety days',
    { dangers: ['fresh-paint'], 'fresh-paint-weeks': 6, services: ['protect'] },
    'fresh-paint',
    /painter agrees in writing/,
    /Keep wax, coating and film off/,
  ],
  ['matte', { dangers: ['matte'] }, 'matte', /shiny patches/, /no abrasive.*no wax/s],
  [
    'black paint',
    { ...improve, colour: 'black' },
    'black-shows',
    /sun.*finishing step/s,
    /two lights/,
  ],
  [
    'earlier filler polish',
    { ...improve, 'paint-history': 'part', 'earlier-protection': ['scratch-remover'] },
    'filler',
    /come back/,
    /before judging/,
  ],
  [
    'wet, source unknown',
    { ...wet, 'wet-source': 'unknown' },
    'leak-unproven',
    /found and proven/,
    /Hold/,
  ],
  [
    'mould, coin',
    { ...cabin, dangers: ['growth'], growth: ['mould-hard'], 'mould-area': 'coin' },
    'mould-small',
    /can return|returns/,
    /N-95.*gloves.*eye protection/s,
  ],
  [
    'mould, tray',
    { ...cabin, dangers: ['growth'], growth: ['mould-hard'], 'mould-area': 'tray' },
    'mould-decide',
    /may return/,
    /HEPA/,
  ],
  [
    'mould under the carpet',
    { ...cabin, dangers: ['growth'], growth: ['mould-under-carpet'] },
    'mould-specialist',
    /specialist.*no child/s,
    /No air/,
  ],
  [
    'flood',
    { ...wet, 'wet-source': 'flood' },
    'flood',
    /electrics may fail later.*decline/s,
    /airbag parts|belts/,
  ],
  ['sewage', { ...wet, 'wet-source': 'sewage' }, 'sewage', /specialist/, /Refer/],
  [
    'rodents',
    { ...cabin, dangers: ['growth'], growth: ['droppings'] },
    'rodents',
    /wiring may be chewed/,
    /soak/i,
  ],
  ['smoke', { ...cabin, 'cabin-marks': ['smoke'] }, 'fade-only', /fade/, /ozone|filter|next day/i],
  ['urine', { ...cabin, 'cabin-marks': ['urine'] }, 'body-fluids', /keep smelling/, /gloves/i],
  [
    'aged clips and pins',
    { year: 1990 },
    'fragile-parts',
    /at your cost/,
    /Mask instead.*Order the part/s,
  ],
  ['wheels off', { services: ['wheels-off'] }, 'wheels-off', /check/i, /torque|wrench/i],
  [
    'rotten sill',
    { year: 1990, services: ['underside'], jacking: 'rusty' },
    'no-lifting',
    /can fall or be crushed/,
    /No jack, no lift/,
  ],
  [
    'high-voltage car',
    { services: ['engine-bay'], 'engine-kind': 'electric' },
    'high-voltage',
    /charge port, orange cables/,
    /No jet/,
  ],
  [
    'wet seat electrics',
    { ...wet, 'wet-where': ['seats'] },
    'wet-electrics',
    /airbag plugs/,
    /qualified/,
  ],
  [
    'convertible, old seams',
    { dangers: ['soft-roof'], body: 'convertible', 'roof-kind': 'cloth', 'roof-state': ['seams'] },
    'roof-window',
    /split|give way/,
    /No jet/,
  ],
  [
    'soft roof',
    { body: 'convertible', 'roof-kind': 'cloth' },
    'soft-roof',
    /dry/,
    /drains.*soft brush.*no jet/s,
  ],
  ['cracked leather', { ...cabin, leather: ['smooth', 'cracked'] }, 'leather', /colour/, /hidden/],
  [
    'a date before drying and cure',
    { services: ['protect'], deadline: '2026-06-12' },
    'deadline-drying',
    /date moves or part of the work waits/,
    /agreed order; no coating in rain/,
  ],
]

describe('risk notes against a careful bench (common practice, no source)', () => {
  it.each(TABLE.map((row) => [row[0], row] as const))('%s', (_when, row) => {
    const [, answers, note, say, does, more] = row
    const raised = raisedNotes(risks, car(answers), { ...context(), ...more })
    expect(raised.map((n) => n.id)).toContain(note)
    const owner = ['', '.means', '.decision'].map((k) => riskWords[`risk.${note}${k}`] ?? '')
    expect(owner.join('\n')).toMatch(say)
    expect(riskWords[`risk.${note}.bench`]).toMatch(does)
  })

  it('says nothing of thin paint where every panel was measured and is not', () => {
    const raised = raisedNotes(risks, car(improve), { ...context(), measured: measured(false) })
    expect(raised.map((n) => n.id)).not.toContain('thin')
  })
})
