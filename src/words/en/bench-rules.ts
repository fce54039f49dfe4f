import type { Catalogue } from '../render'

/** Why one thing comes before another, and what to do with what is found. */
export const benchRules: Catalogue = {
  'order.check-in':
    'Photos and check-in come before any water: afterwards nobody can tell what was there.',
  'order.film-before-clay':
    'Film and its glue come off before the second wash and clay: clay drags the glue over the paint.',
  'order.dry-before-reading': 'Read only a dry, cool panel: water and warmth change the figure.',
  'order.read-before-machine':
    'Read a reference and the panel before a machine touches it: afterwards the start is gone.',
  'order.mask-before-machine':
    'Mask and tape first: paint is thinnest on edges and ridges and burns through in seconds.',
  'order.yes-before-machine':
    'The test spot and the yes to it come before machine work: what is off does not come back.',
  'order.level-before-finish':
    'Level the touch-up before the last polish, once it has cured: levelling leaves marks.',
  'order.wipe-before-judging':
    'Rinse the gaps and wipe the panel first: oil and filler hide marks and lift off later.',
  'order.cure-before-protection':
    'Touch-up paint has to cure before it is covered: solvent under a coating stays soft.',
  'order.stickers-before-coating':
    'Stickers and film come off before coating: under a coating they stay for good.',
  'order.leak-first':
    'First the leak is found and proven shut, then it is dried, then cleaned: the next rain undoes the rest.',
  'order.dry-before-clean':
    'Dry it before closing or cleaning it: what is closed in wet goes mouldy.',
  'order.odour-last': 'Odour comes last: what is still dirty or damp smells again.',
  'order.fresh-coating':
    'No wet cabin and no dusty work beside a fresh coating: dust and vapour settle in it.',
  'order.air-only-dry':
    'No compressed air in a cabin with damp, mould or rodents: it spreads what nobody should breathe.',
  'order.soak-rodents':
    'Air the car out and soak first, no sweeping or vacuuming before: dry dust of droppings can make people ill.',
  'order.layer-after-polish':
    'The protective layer goes on polished lenses: polishing takes it off.',
  'order.roof-dry':
    'Clean the roof and let it dry at least a day before proofing; never fold it wet.',
  'order.dust-before-glass': 'Polish dust settles on the glass: clean it after the machine work.',
  'order.wipe-down-last': 'The last wipe inside comes after the wet and dusty work there.',

  'finding.repair-under-decal': 'An old repair under film or a decal',
  'finding.repair-under-decal.do':
    'Read round it, mark the edge, keep the machine 15 cm off it, and tell the owner.',
  'finding.overspray-found': 'Overspray on the paint',
  'finding.overspray-found.do': 'Try clay on a small spot first. Ask before doing the whole panel.',
  'finding.extra-pass': 'Marks deeper than thought',
  'finding.extra-pass.do': 'Look at the allowance first. A deep mark is no reason to go further.',
  'finding.film-lifts-paint': 'Paint comes away with the film',
  'finding.film-lifts-paint.do':
    'Stop here. Photograph it, leave the rest on, and ask. Repair is for a paint shop.',
  'finding.adhesive-fights': 'The glue will not let go',
  'finding.adhesive-fights.do': 'Longer by the label, not harder. Ask when the time runs out.',
  'finding.foam-replaced': 'Soaked foam or underlay',
  'finding.foam-replaced.do':
    'Lift it, dry it out of the car or replace it; do not close it in wet.',
  'finding.hidden-damp': 'Damp where nobody expected it',
  'finding.hidden-damp.do': 'Find the source before cleaning. Compare with a dry spot of the car.',
  'finding.hidden-mould': 'Mould under carpet or trim',
  'finding.hidden-mould.do':
    'No air, no brushing. Measure the patch and follow the mould limits; a large one is for a specialist.',
  'finding.wet-electrics': 'Wet plugs or control units',
  'finding.wet-electrics.do':
    'Do not switch it on. Have a mechanic look; airbag and belt plugs are for qualified people.',
  'finding.chewed-wiring': 'Chewed wiring',
  'finding.chewed-wiring.do': 'Do not start it. Have a mechanic look.',
  'finding.seized-fastener': 'A fastener is seized',
  'finding.seized-fastener.do': 'Stop before it breaks. Ask before drilling or cutting.',
  'finding.broken-clip': 'A clip or trim piece broke',
  'finding.broken-clip.do': 'Keep the pieces, note the part, order it, and tell the owner.',
  'finding.badge-pin': 'A badge pin broke',
  'finding.badge-pin.do': 'Keep the badge, note which pin, and tell the owner.',
  'finding.locking-key-missing': 'The locking-nut key is missing or does not fit',
  'finding.locking-key-missing.do': 'The wheels stay on until it is found. Ask the owner.',
  'finding.rusty-jacking-point': 'A jacking point is rusty',
  'finding.rusty-jacking-point.do':
    'Do not lift there. Have a mechanic look before anybody drives far.',
  'finding.leather-colour': 'Leather colour moves',
  'finding.leather-colour.do':
    'Stop, let it dry, and ask. Recolouring is for somebody who does that.',
  'finding.torn-seam': 'A torn seam',
  'finding.torn-seam.do':
    'No brush, no suction on it. A sewing shop mends it; ask whether it stays.',
  'finding.mechanical': 'Something mechanical',
  'finding.mechanical.do': 'Not our trade: have a mechanic look, and write that to the owner.',
}
