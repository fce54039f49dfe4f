import type { Catalogue } from '../render'

export const estimateWords: Catalogue = {
  'level.none': 'no polishing',
  'level.hand': 'by hand, without a machine',
  'level.finishing': 'a finishing polish only',
  'level.light': 'one light set, then stop',
  'level.two-step': 'a cut and a finishing set, where the readings allow it',

  'expect.none': 'We do not polish, so marks in the paint stay as they are.',
  'expect.look':
    'We look, work a small test area and show it to you. What can be reached, in how many hours, is agreed after that.',
  'expect.cabin':
    'The inside gets clean and dry. Old stains and smells get weaker; we do not promise that they go. The paint is not polished.',
  'expect.matte':
    'The surface gets clean and protected. Marks in matte paint stay: polishing would leave shiny patches for good.',
  'expect.share':
    'About {low:percent} to {high:percent} of the marks you can see go. We measure first, and stop where the paint is too thin.',
  'expect.share-deep':
    'About {low:percent} to {high:percent} of the fine marks you can see go. Scratches that catch a nail and stone chips stay, a little softer to the eye.',

  'expect.share.up-to':
    'At best about {high:percent} of the marks you can see go, and on some panels hardly any. We measure first, and stop where the paint is too thin.',
  'expect.share-deep.up-to':
    'At best about {high:percent} of the fine marks you can see go, and on some panels hardly any. Scratches that catch a nail and stone chips stay, a little softer to the eye.',

  'verdict.another-set': 'another set is possible',
  'verdict.not-measured': 'not measured yet: one light set at most',
  'verdict.finishing-only': 'finishing only',
  'verdict.by-decision': 'only by a written decision',
  'verdict.stop': 'stop',
  'verdict.cannot-be-read': 'cannot be read',
  'verdict.topcoat-unknown-test-spot': 'topcoat unknown, test spot first',

  'sequence.hand-glaze': 'glaze by hand',
  'sequence.hand-finish': 'finishing by hand',
  'sequence.finish': 'finishing set',
  'sequence.gentle': 'gentle set',
  'sequence.light': 'light set',
  'sequence.light-finish': 'light set, then finishing',
  'sequence.mild-cut': 'mild cut, then finishing',
  'sequence.two-step': 'cut, then finishing',
  'sequence.heavy-cut': 'heavy cut, then finishing',
  'sequence.sand': 'sanding, compound, finishing',

  'step.surcharge': 'surcharge',
  'step.travel': 'way to the car and back',
  'step.bay-days': 'days in the bay',
  'step.minimum-charge': 'up to the smallest charge',

  'paint.why.not-measured': 'Not measured yet: this comes from what such paint usually has.',
  'paint.why.no-reference': 'No never-polished place was read, so no cutting.',
  'paint.why.reference-not-comparable':
    'The reference is on another metal or was read another way.',
  'paint.why.few-readings': 'Only {n} readings: take at least three.',
  'paint.why.discordant': 'Readings at one place differ too much: lift the probe and read again.',
  'paint.why.unreadable-substrate': 'The gauge reads metal only, and this panel is not metal.',
  'paint.why.wrong-probe': 'This probe cannot read this metal.',
  'paint.why.mixed-probes': 'Readings of two kinds of probe are never put together.',
  'paint.why.over-film': 'Read over film: the film counts as paint.',
  'paint.why.under-film': 'There is film on this panel: read it when the film is off.',
  'paint.why.zinc-counted': 'The zinc under the paint is part of the reading.',
  'paint.why.bad-value': 'A reading here cannot be right.',
  'paint.why.contradicts-prior': 'The readings do not fit factory paint.',
  'paint.why.reference-contradicts': 'The reference does not fit the panel.',
  'paint.why.thick': 'Thick paint is repainted paint; how much clear is on it is unknown.',
  'paint.why.filler-likely': 'Filler is likely under here.',
  'paint.why.filler-sure': 'There is filler under here.',
  'paint.why.outlier': 'This panel is unlike the rest of the car.',
  'paint.why.resprayed': 'Repainted: its topcoat is unknown.',
  'paint.why.fresh-respray': 'Painted too recently to polish without the painter’s yes.',
  'paint.why.refinished-system': 'Repainted car: its topcoat is unknown.',
  'paint.why.thin-total-stop': 'Too thin for anything abrasive.',
  'paint.why.thin-total-hand': 'So thin that only finishing by hand is left.',
  'paint.why.thin-total-light': 'Thin: one light set at most.',
  'paint.why.small-difference': 'Little more paint here than in the jamb: one light set at most.',
  'paint.why.cleared-jamb-cap':
    'The jamb carries full clear, so the difference says little; a cap holds.',
  'paint.why.jamb-painted-question': 'No more paint here than in the jamb: was the jamb painted?',
  'paint.why.edges-through': 'Edges are through already: tape them, no machine there.',
  'paint.why.edge-zone': 'Too near an edge or line: taped, nothing comes off.',
  'paint.why.blend-edge': 'Near the edge of an old repair: no machine within 15 cm.',
  'paint.why.peel': 'The clear is peeling: only painting helps.',
  'paint.why.haze': 'White haze in the clear: it is failing.',
  'paint.why.checking': 'The paint is checked; the cracks stay.',
  'paint.why.single-stage-thin': 'Single-stage paint this thin stays off the machine.',
  'paint.why.single-stage-metallic': 'Metallic without clear: no abrasive.',
  'paint.why.lacquer': 'Lacquer: by hand, cool, no strong solvent.',
  'paint.why.matte': 'Matte: no abrasive and no wax.',
  'paint.why.uneven': 'Uneven: the thinnest spot counts, {thinnest:um}, not the mean of {mean:um}.',
  'paint.why.allowance-used': 'What could come off has come off: {um:um} counted.',
  'paint.why.below-floor':
    'Careful estimate of the topcoat {quantile:um}: {under:um} below what must stay.',
  'paint.why.lifetime-used':
    'With {removed:um} gone before, the limit of {cap:um} for a car’s life is used up.',
  'paint.why.decision-possible': 'By a written decision, up to {um:um} more.',
  'paint.why.gauge-out-of-band': 'The gauge missed its shims: check it before trusting it.',
  'paint.why.fits': 'Fits: {light:um} by light work, {strong:um} by stronger work.',

  'aftercare.keep-dry': 'Keep it dry: no rain, dew or washing until then.',
  'aftercare.wheel-nuts':
    'Have the wheel nuts checked again after about 50 km, or as the maker says.',
  'aftercare.first-look': 'Look at the car in the sun and tell us what you see.',
  'aftercare.first-wash': 'From this day it may be washed: two buckets, soft mitt, no brushes.',
  'aftercare.second-look': 'A second look: tell us if anything has come back or changed.',

  'check.torque': 'Wheel nuts tightened to the maker’s figure',
  'check.recheck-distance': 'Owner told to have the nuts checked again after about 50 km',
  'check.brakes': 'Brakes tried before the car leaves',
  'check.belts': 'Seat belts pull out, lock and run back',
  'check.battery': 'Battery connected, warning lights looked at',
  'check.leak': 'Leak proven stopped by a water test',
  'check.dry': 'Dry against a dry place of the same car, twice, 12 h apart',
  'check.clips': 'Every clip and trim piece back in its place',
}
