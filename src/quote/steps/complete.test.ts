import { describe, expect, it } from 'vitest'
import { stepWords } from '../../words/en/steps'
import { steps } from './index'
import { rule } from './step-bench'

/**
 * The work of a careful bench, and the steps that are it with a word the bench must read there. Written
 * from what such a bench does, before looking at the catalogue (common practice, no source).
 */
const WORK: readonly (readonly [work: string, steps: readonly string[], told: RegExp])[] = [
  ['photographs and check-in before water', ['check-in'], /before any water/],
  ['setting up away from the studio', ['away-set-up'], /waste water/],
  ['look-over with the owner', ['look-over'], /write it down/i],
  ['close-ups of what was begun', ['film-evidence'], /before water/],
  ['moving what does not drive', ['move-car'], /two people/],
  ['battery support', ['battery-support'], /maker/],
  ['wash stages', ['wheels-arches', 'rinse', 'wash', 'second-wash', 'dry'], /rinse|wash|blow/i],
  ['shuts', ['shuts'], /doors/i],
  ['an old layer off before reading and polishing', ['strip-layer'], /strip what still beads/i],
  ['underside', ['underside'], /maker’s points/],
  ['engine bay', ['engine-bay'], /cold/],
  ['decontamination and clay', ['decontamination', 'clay'], /iron|slip/i],
  ['film: corner, top layer, bumper', ['film-test-corner', 'film-top', 'film-bumper'], /stop/],
  ['adhesive', ['adhesive'], /dwell/],
  ['lettering and stickers', ['lettering', 'stickers'], /plastic blade/i],
  ['film off glass', ['film-glass'], /heater/],
  ['reference, then panels', ['references', 'readings'], /readings|spots/],
  ['masking trim and gaps', ['mask-trim'], /gaps/],
  ['edge taping', ['tape-edges'], /edge, ridge and swage line/],
  ['test spot', ['test-spot'], /mildest/i],
  ['the customer’s yes', ['test-spot-yes'], /nothing more on the paint before it/i],
  [
    'polishing by level',
    ['polish-cut', 'polish-light', 'polish-hand', 'glaze-hand'],
    /stop|set|thin/,
  ],
  ['refining', ['polish-finishing'], /both lights/],
  ['pad cleaning and cooling', ['pads'], /warm means wait/],
  ['gap rinse', ['gap-rinse'], /rinse dust/i],
  ['panel wipe and two lights', ['panel-wipe'], /lamp and in daylight/],
  ['re-reading cold', ['cold-reading'], /cold, oils off/],
  ['touch-up with its cure', ['touch-up', 'touch-up-level'], /cure/],
  ['headlamps and their layer', ['headlights', 'headlight-layer'], /cool|set/],
  ['trim', ['trim'], /wipe back/],
  ['brightwork and gaps of a show car', ['show-details'], /brightwork/],
  ['sealing', ['wax', 'matte-protection', 'coating'], /thin|flash/i],
  ['coating checks at an hour and next day', ['high-spot-check', 'next-day-check'], /every panel/i],
  ['wheels off and on', ['wheels-off', 'wheels-on'], /place/],
  ['marks of each wheel’s place', ['wheels-off'], /mark each wheel/i],
  ['torque', ['wheels-on'], /torque wrench/],
  ['stickers off the rims', ['wheel-stickers'], /plastic blade/],
  ['wheels and calipers', ['wheels-clean', 'calipers'], /discs|cracks/],
  ['wheel coating off hub and nut seats', ['wheels-coating'], /hub face and nut seats/],
  ['roof clean', ['roof-clean'], /without a jet/],
  ['roof proof after a dry day', ['roof-proof'], /dry for a day/i],
  ['plastic roof window', ['roof-window'], /no pressure/],
  ['moisture map', ['moisture-map'], /dry spot/],
  ['in-house water test', ['water-test'], /bottom up/],
  ['drains', ['drains'], /every drain/],
  ['leak covered, referred, proven', ['leak-cover', 'leak-proof'], /proof|outside trade/],
  ['carpet lifted, water out', ['lift-carpet', 'water-out'], /airbag|extract/i],
  ['dehumidifier and its visits', ['drying-start', 'drying-visits'], /dehumidifier|tank/],
  ['dry proof, twice', ['dry-reading'], /twelve hours later/],
  ['carpet back', ['carpet-refit'], /dry proof/],
  ['mould in order', ['mould-hepa', 'mould-wipe', 'mould-dry', 'mould-again'], /hepa|damp|wet/i],
  ['mould: disinfecting by the label', ['mould-disinfect'], /label/],
  ['rodents in order', ['rodent-air', 'rodent-soak', 'rodent-wipe'], /stand clear|label|wet/i],
  ['wiring looked at', ['wiring-look'], /chewed/],
  ['cabin emptied', ['cabin-empty'], /list belongings/],
  ['air, then vacuum', ['cabin-air', 'cabin-vacuum'], /top to bottom/i],
  ['animal hair to the agreed time', ['pet-hair'], /agreed time/],
  ['mats, steam last', ['mats'], /steam last/],
  ['headliner', ['headliner'], /light hand/],
  ['plastics', ['plastics'], /no liquid into switches/i],
  [
    'seats of cloth, leather, suede',
    ['seats-textile', 'leather-clean', 'suede-brush'],
    /hidden spot/,
  ],
  ['leather where worn', ['leather-condition'], /two minutes/i],
  ['belts with water only', ['belts'], /water only/],
  ['carpet cleaned wet', ['carpet-extraction'], /dry strokes/],
  [
    'odour, last',
    ['odour-source', 'odour-filter', 'ozone', 'odour-recheck'],
    /smell|filter|air it out/,
  ],
  ['glass', ['glass-outside', 'glass-inside', 'cabin-wipe'], /wipe|cloth/i],
  ['clean-down with tools counted', ['clean-down'], /count tools/i],
  ['refit checks by hand', ['refit-checks'], /each one by hand/],
  ['hand-over in the same light', ['hand-over'], /same lamp/i],
  ['a look and hours for what is no car', ['test-area', 'hourly-scope'], /cap/],
]

describe('the catalogue against the work of a careful bench (common practice, no source)', () => {
  it.each(WORK)('%s', (_work, ids, told) => {
    for (const id of ids) {
      expect(rule(id).id).toBe(id)
      expect(stepWords[`step.${id}`], id).toMatch(/\S/)
    }
    expect(ids.map((id) => stepWords[`step.${id}.do`]).join('\n')).toMatch(told)
  })

  it('has no step that is none of it', () => {
    const known = new Set(WORK.flatMap(([, ids]) => ids))
    expect(steps.map((s) => s.id).filter((id) => !known.has(id))).toEqual([])
  })
})
