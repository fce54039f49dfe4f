import type { Catalogue } from '../render'

/** What may turn up on the bench and would add time. */
export const eventWords: Catalogue = {
  'event.film-lifts-paint': 'Paint comes away with the film',
  'event.adhesive-fights': 'The adhesive will not let go',
  'event.repair-under-decal': 'An old repair shows under film or a decal',
  'event.extra-pass': 'Deeper marks ask for another pass on some panels',
  'event.marks-return': 'Filled marks come back after the wipe',
  'event.test-spot-again': 'The first test spot does not decide it',
  'event.overspray-found': 'Overspray found on the paint',
  'event.badge-pin': 'A badge pin breaks',
  'event.high-spots': 'High spots in the coating have to be laid again',
  'event.hidden-mould': 'Mould found under the carpet',
  'event.foam-replaced': 'Soaked foam or underlay has to be replaced',
  'event.wet-electrics': 'Wet plugs or control units found',
  'event.hidden-damp': 'Damp found where nobody expected it',
  'event.broken-clip': 'A brittle clip or trim piece breaks',
  'event.leather-colour': 'Leather colour moves in the hidden test',
  'event.smell-returns': 'The smell comes back and is worked on again',
  'event.chewed-wiring': 'Chewed wiring found',
  'event.seized-fastener': 'A fastener is seized',
  'event.locking-key-missing': 'The locking-nut key is missing or does not fit',
  'event.rusty-jacking-point': 'A jacking point is too rusty to lift on',
  'event.flat-battery': 'The battery runs flat',
}
