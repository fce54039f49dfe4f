import type { Catalogue } from '../render'

/** What is checked when the car arrives. */
export const openWords: Catalogue = {
  'open.dangers':
    'Walk round once for fresh paint, film, peeling, matte paint, water, mould and animals.',
  'open.year': 'Read the year of the car from its papers or its plate.',
  'open.size': 'See how large the car is; hours go with its surface.',
  'open.paint-history':
    'Find out which panels were painted again: read the gauge, look for edges and dust.',
  'open.fresh-paint-age': 'Ask the painter when and with what the fresh panels were painted.',
  'open.paint-system': 'Rub a cloth on a hidden place of each panel: does it take the colour?',
  'open.paint-defects':
    'Look at the paint with a lamp after the wash: haze, deep marks, chips, rubbed-through edges.',
  'open.paint-past':
    'Wipe a small place with panel cleaner and see whether marks come back; ask about earlier polishing.',
  'open.panel-material': 'Hold a wrapped magnet to each panel: steel, aluminium or plastic?',
  'open.peel-places': 'Find every place where clear coat lifts and mark how far it goes.',
  'open.film': 'Judge age and state of the film at one corner.',
  'open.film-over': 'Find out whether the paint under the film came from the factory.',
  'open.wet-extent': 'Press paper on every floor and in the boot, and read the moisture.',
  'open.wet-electrics': 'Look for electrics under wet carpet and seats before power goes on.',
  'open.growth': 'Look where and how large the growth is, with mask, gloves and eye protection.',
  'open.sensitive-people':
    'Ask whether anyone who uses the car has asthma, is an infant or in weak health.',
  'open.cabin': 'Look at seats, carpet and headliner, and lift one mat.',
  'open.leather': 'Find out what the seats are covered with and whether colour moves.',
  'open.headliner': 'Press the headliner lightly with two fingers: is it loose?',
  'open.old-trim': 'Look at clips and soft plastic before anything is taken off.',
  'open.roof': 'Look at roof cloth, seams and rear window.',
  'open.drives': 'Find out whether the car starts, brakes, steers and rolls.',
  'open.warning-lights': 'Photograph the dash with the ignition on.',
  'open.high-voltage': 'Find out whether the car is a hybrid or electric.',
  'open.jacking-points': 'Look at the lifting points before lifting anything.',
  'open.wheel-finish':
    'Look whether the wheels are painted, bare or chromed, and whether any is cracked.',
  'open.wheel-fit': 'Look for spacers and changed ride height before lifting.',
  'open.glass': 'Look for film and heating lines on the glass.',
  'open.film-build': 'Read the paint: a never-polished place first, then every panel.',
  'open.probe-kind':
    'Aluminium takes the non-ferrous probe: check it on a shim, and never mix readings of two metals.',
  'open.leak-place': 'Find where the water comes in.',
  'open.leak-shut': 'Prove with a water test that the repaired leak is shut.',
  'open.painter-sheet': "Get the painter's data sheet and written yes.",
  'open.locking-key': 'Look for the key of the locking wheel nuts.',
  'open.consent': 'See the written consent of the owner of the car.',
  'open.who-pays': 'Agree in writing who pays and who decides about extras.',
  'open.film-older-than-car': 'The film is said to be older than the car: check both years.',
  'open.colour-on-modern-metallic':
    'The cloth took colour from a metallic paint of a year that has clear coat: test again, it may be metal dust.',
  'open.said-original':
    'It is said never to have been painted again, yet something tells of new paint: read the gauge there and ask again.',
  'open.repair-held': 'The leak is said to be repaired, yet it is wet: test the repair with water.',
  'open.battery': 'Test the battery, and ask for codes and a second key.',
  'open.wheel-marks': 'Look for stickers, letters and kerb scrapes on wheels and calipers.',
  'open.added-parts': 'Look for parts, lamps and wiring added to the car, and for air suspension.',
  'open.old-layer': 'See by how water runs off whether an old layer is left.',
  'open.terms': 'Ask whether lease terms or a warranty forbid polishing or coating.',
  'open.insured':
    'Ask whether the insurance covers us driving it; until then it stays off the road.',
  'open.consent-paper': 'Take a copy of the owner’s written consent before anything is polished.',
  'open.return-terms': 'Read the return terms before anything is polished, stripped or coated.',
  'open.paint-warranty': 'Read the paint warranty: does polishing or coating end it?',
  'open.battery-code': 'Have the code for radio or alarm before the battery is disconnected.',
  'open.one-key': 'There is one key only: hang it up, never leave it in the car.',
  'open.air-ride': 'Find the lifting mode of the air suspension in the maker’s handbook.',
  'open.added-wiring': 'Find the added wiring and lamps, and try them with the owner.',
  'open.body-kit': 'Look at the edges of added parts; a gauge reads no paint on plastic.',
  'open.kerbed': 'Photograph every kerb scrape on the wheels.',
  'open.caliper-letters': 'Mask the letters on the calipers before cleaner or coating.',
  'open.repaint-first': 'Settle which panels will be painted: no coating or film on those.',
  'open.dents-first': 'See that the dents are out before the paint is polished.',
  'open.glass-first': 'See that the new glass is in before paint round it is worked on.',
  'open.upholsterer': 'Settle which covers an upholsterer takes off: those are not cleaned.',
  'open.workshop-first': 'Ask when the repairs are done, and whether oil or grease follows them.',
  'open.transport': 'Agree how the car comes: it must not be driven here.',
  'open.damp-below': 'It was damp once: compare with a dry place below carpet and padding.',
  'open.damp-place': 'It is damp somewhere: find where before the mould is touched.',
  'open.damp-hidden': 'Mould without known damp: look under carpet, lining and spare wheel.',
  'open.roof-under': 'Look at the soft roof under the hard one with the owner.',
  'open.owned-before-built':
    'The car is said to be owned from before it was built: check both years.',
  'open.first-owner-later':
    'A first owner is said to have come years after the car was built: ask again.',
  'open.never-polished-but-filled':
    'Never polished, yet a scratch remover was used: look for its traces.',
  'open.no-such-part':
    'Work was asked for on a part this vehicle does not usually have: ask what is meant.',
}

/** Work that is turned down: why, and where to turn. */
export const refuseWords: Catalogue = {
  'refuse.matte-polish':
    'We do not polish, wax or coat matte paint: shiny patches would stay for good.',
  'refuse.matte-polish.turn':
    'A careful wash and a protection made for matte are possible. For marks that must go, ask a painter.',
  'refuse.peeling-panels': 'We do not polish where clear coat peels: it would only peel further.',
  'refuse.peeling-panels.turn': 'Ask a painter about those panels; the sound ones we can work on.',
  'refuse.fresh-paint-protection': 'We put no wax or coating on fresh paint.',
  'refuse.fresh-paint-protection.turn':
    'Ask your painter for the data sheet and a written yes; then we gladly do it.',
  'refuse.wet-cabin-cleaning': 'We do not clean a cabin that water still enters.',
  'refuse.wet-cabin-cleaning.turn':
    'A workshop or leak finder shuts the leak; we look, cover and dry, and clean after a water test.',
  'refuse.mould-beyond-limits':
    'We do not clean mould of this extent, or where it can harm someone who rides along.',
  'refuse.mould-beyond-limits.turn':
    'Ask a mould specialist, or a workshop that takes the cabin apart. Until then, let nobody sensitive ride in it.',
  'refuse.sewage-cabin': 'We do not clean a cabin that sewage has been in.',
  'refuse.sewage-cabin.turn': 'Ask your insurer and a specialist cleaning firm.',
  'refuse.lacquer-machine': 'We put no machine and no clay on old lacquer.',
  'refuse.lacquer-machine.turn':
    'A glaze by hand is possible after a test spot. For more, ask a restorer who works with lacquer.',
  'refuse.fixed-price':
    'We give no price for work on a motorcycle, boat or motorhome from a distance: the figures here are for a look and a test area alone.',
  'refuse.fixed-price.turn':
    'Bring it for the look, then we agree hours with a cap. For gelcoat repairs ask a boat or body builder, for mechanical work a workshop.',
  'refuse.lifting-rusty': 'We do not lift a car whose sills or lifting points are rotten.',
  'refuse.lifting-rusty.turn':
    'A workshop can check and weld them; after that the wheels can come off.',
  'refuse.cracked-wheel': 'We do not coat a cracked wheel.',
  'refuse.cracked-wheel.turn':
    'A wheel or tyre workshop must judge it before the car is driven on.',
  'refuse.loose-headliner': 'We do not clean a headliner that is coming loose.',
  'refuse.loose-headliner.turn': 'A trimmer can put in new cloth; we can do the rest of the cabin.',
  'refuse.mould-unguarded':
    'We do not clean a cabin with mould: a part of the work that keeps people safe is not offered here.',
  'refuse.mould-unguarded.turn':
    'Ask a mould specialist, or a studio with a HEPA vacuum and a way to dry the car. Keep the cabin closed until then.',
  'refuse.rodents-unguarded':
    'We do not work in a cabin animals have lived in: airing, soaking and wiping up are not offered here.',
  'refuse.rodents-unguarded.turn':
    'Ask a cleaning firm that follows the health rules for droppings, and a workshop about the wiring.',
  'refuse.damp-unproven': 'We do not clean a wet cabin: we cannot dry it and prove that it is dry.',
  'refuse.damp-unproven.turn':
    'Ask a workshop that lifts the carpet, dries it and measures that it is dry.',
  'refuse.wheels-unchecked':
    'We take no wheels off: putting them on to the maker’s torque and checking them is not offered here.',
  'refuse.wheels-unchecked.turn':
    'A wheel or tyre workshop can take them off and on; we clean them on the car.',
  'refuse.film-untested':
    'We do not pull this film: a test corner comes first, and it is not offered here.',
  'refuse.film-untested.turn': 'Ask a studio that fits and removes film.',
  'refuse.paint-untested':
    'We do not polish: the test spot, your yes to it and taped edges come first, and they are not offered here.',
  'refuse.paint-untested.turn': 'Ask a studio that makes a test spot before the rest of the car.',
  'refuse.cut-unmeasured': 'We do not cut paint nobody has measured: one light set at most.',
  'refuse.cut-unmeasured.turn': 'For more, ask a studio that reads the paint first.',
}
