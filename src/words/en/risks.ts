import type { Catalogue } from '../render'

/** Risk notes: what each one says, means for the result, asks of the bench and of the owner. */
export const riskWords: Catalogue = {
  'risk.matte': 'Matte paint is never polished.',
  'risk.matte.means':
    'Rubbing makes shiny patches on matte paint, and they do not come out. Only repainting would cure them. You get a careful wash, chemical cleaning and a protection made for matte.',
  'risk.matte.bench':
    'Use no abrasive, no clay with pressure, no wax and no brush. Follow the paint maker on every product.',

  'risk.fresh-paint': 'Fresh paint may not be sealed yet.',
  'risk.fresh-paint.means':
    'Solvent is still leaving fresh paint. A wax, coating or film can trap it, leave it soft and shift its shade. Until its painter agrees in writing, these panels are only washed, and a coating date that falls before then cannot be kept.',
  'risk.fresh-paint.bench':
    "Keep wax, coating and film off the fresh panels. File the painter's data sheet and written yes before anything touches them.",

  'risk.peel': 'Where clear coat peels, only repainting helps.',
  'risk.peel.means':
    'Peeling or milky clear coat cannot be polished back, and it grows, even under careful washing. We leave those places alone and work around them. A painter can tell you what repainting costs.',
  'risk.peel.bench':
    'Keep clay, jet, tape and machine a hand away from every lifting edge. Photograph each edge with a scale before water.',

  'risk.lacquer': 'Old lacquer is worked by hand only, if at all.',
  'risk.lacquer.means':
    'Lacquer of this age is thin and may be full of fine cracks (checking), which are permanent. Solvents can dissolve it. You can get depth and a kinder shine, but not a mirror.',
  'risk.lacquer.bench':
    'Use no machine, no solvent, no clay and no sanding; keep off edges. Hand glaze a hidden test spot first and stop if colour or cracks move.',

  'risk.edges-through': 'Paint that is already rubbed through cannot come back.',
  'risk.edges-through.means':
    'Where an edge or a line shows primer or metal, nothing is left to polish. Those places stay visible; a touch of colour can hide a little, repainting is the cure.',
  'risk.edges-through.bench':
    'Photograph each place with a scale before washing. Tape it and keep every machine off it.',
  'risk.edges-through.decision':
    'Accept that these places stay as they are, or ask a painter first.',

  'risk.single-stage': 'Your colour will come off on the pads, and that is normal.',
  'risk.single-stage.means':
    'There is no clear layer over this colour: what is polished is the colour itself. It can gain much shine, but each polish takes colour away and it fades again without wax.',
  'risk.single-stage.bench':
    'Rub a cloth first to confirm it and make a test spot. Plan many pads, low heat and little pressure, keep off the edges, finish with wax.',

  'risk.mixed-paint': 'Two kinds of paint seem to be on this car.',
  'risk.mixed-paint.means':
    'Some panels give off colour and some do not, so they behave differently under the same polish. The shine may differ from panel to panel in the end.',
  'risk.mixed-paint.bench':
    'Do the cloth test on every panel and write the result down. Choose pad and polish per panel after a test spot on each kind.',

  'risk.old-pigment': 'Paint of this age may hold lead or chromate.',
  'risk.old-pigment.means':
    'Old paint, old filler and old primer, reds and yellows above all, may contain lead or chromate. That does not hurt you as long as no dust is made, so we polish wet and never sand dry. It adds a little time.',
  'risk.old-pigment.bench':
    'Make no dry dust. Wipe up residue wet, bag the cloths and pads, wash before eating.',

  'risk.repainted': 'Repainted panels behave in their own way.',
  'risk.repainted.means':
    'Nobody knows how thick the top layer of a repaint is: thick paint often means filler, not more paint to polish. The shade may differ and an old blend edge can show. We polish less there, not more.',
  'risk.repainted.bench':
    'Read more spots on these panels, find filler and blend edges, stay off the edges, make a test spot. Never count extra thickness as allowance.',

  'risk.thin': 'The paint may be too thin for more than a light polish.',
  'risk.thin.means':
    'Thin paint can look better, not perfect: scratches that go deeper than a light polish stay. Edges are thinnest and wear through first. What may come off is decided by the readings, and it may be less than hoped.',
  'risk.thin.bench':
    'Read a never-polished place first, then every panel. No sanding, tape the edges. Do one set, read again cold, stop at the allowance.',

  'risk.unreadable': 'Our gauge cannot read every panel of this car.',
  'risk.unreadable.means':
    'A paint gauge reads through paint to metal, and each kind only to its own metals. Composite and plastic give no reading at all. Where we cannot measure, we only polish lightly.',
  'risk.unreadable.bench':
    'Mark which panels give no valid reading and look there by eye and test spot. Enter no figure for them and use the finest polish only.',

  'risk.black-shows': 'Dark paint shows in the sun what a lamp hides.',
  'risk.black-shows.means':
    'On black and dark colours even a very fine haze is seen in full sun. A finishing step is what makes the difference, and it takes time of its own.',
  'risk.black-shows.bench':
    'Finish with the softest pad, wipe with panel cleaner, look under two lights and outdoors before sealing.',

  'risk.show-limits': 'A show finish has its limits, and we stop at them.',
  'risk.show-limits.means':
    'We take off no more paint than is safe to lose. Deep marks become softer and stay, and the fine waviness of the paint (orange peel) stays too: we do not sand a whole body flat.',
  'risk.show-limits.bench':
    'Agree the level on a test panel under a named lamp before the rest. Stay off edges and ridges. Stop at the allowance, not at the last mark.',
  'risk.show-limits.decision':
    'Say yes to the level of the test panel: that is the finish you are buying.',

  'risk.deep-marks': 'The deepest marks stay.',
  'risk.deep-marks.means':
    'A scratch that catches a fingernail is deeper than what may be polished away; it becomes softer and stays. How deep bird mess or water has eaten in can only be seen on the car. A paint shop is the next step for those.',
  'risk.deep-marks.bench':
    'Photograph each deep mark. Round its edges at most; do not chase it and do not sand it out.',

  'risk.deeper-appear': 'Deeper marks come forward when the haze is gone.',
  'risk.deeper-appear.means':
    'Fine swirls hide deeper scratches. After the first step you may notice marks you never saw before; they were there, and some of them stay.',
  'risk.deeper-appear.bench':
    'Show the owner the test spot after the first step, in the same light, before doing the whole car.',

  'risk.contamination': 'What has settled on the paint is extra work.',
  'risk.contamination.means':
    'Overspray and metal dust must come off chemically before anything is polished. How long it takes is known only after the first wash, so it is counted as time.',
  'risk.contamination.bench':
    'Try one panel first and note the minutes. Keep fallout remover off bare, polished, anodised and hot metal.',

  'risk.touch-up': 'Touched-up chips stay visible from close by.',
  'risk.touch-up.means':
    'A dab of colour stops rust and hides a chip from a few steps away; from close by you will see it. It has to dry for at least a day before it is sealed.',
  'risk.touch-up.bench':
    'Clean to bare, sound edges, dab thin, let it dry for 24 hours at least and by the label. Seal last.',

  'risk.sun-worn': 'Years of sun have changed the colour itself.',
  'risk.sun-worn.means':
    'Shine comes back, but paint bleached by sun may stay lighter on the upper panels and on plastic parts, and it fades again without care.',
  'risk.sun-worn.bench':
    'Compare roof and bonnet with a shaded place and photograph both. Keep heat low on plastic.',

  'risk.rust': 'Rust under the paint is not ours to stop.',
  'risk.rust.means':
    'Blisters and brown edges go deeper than they look. Polishing over them opens them. A body shop must treat them first, or we leave them alone.',
  'risk.rust.bench': 'Photograph and mark each place. No jet, no machine and no tape on it.',
  'risk.rust.decision': 'Decide: a body shop first, or we work around the rust and leave it.',

  'risk.polished-often': 'Each earlier polish has used up part of the paint.',
  'risk.polished-often.means':
    'A car that was polished several times may have too little left for another full correction, even for ordinary swirls. One light step or less may be the right answer.',
  'risk.polished-often.bench':
    'Compare each panel with a place no machine has reached. Stay at the finest step that helps.',

  'risk.dealer-marks': 'Marks from delivery or machine work are on this paint.',
  'risk.dealer-marks.means':
    'Rotating marks from quick machine work (holograms) and wash marks are usual on cars made ready in a hurry. Most fade with a careful polish; where too much was taken off, the rest stays.',
  'risk.dealer-marks.bench':
    'Find them in sun or with one bare lamp and photograph them before work, so that nobody doubts who made them.',

  'risk.filler': 'Marks may be filled, not gone.',
  'risk.filler.means':
    'Scratch removers, silicone and unknown bottles fill marks for a while. When we clean them off, the marks you had come back before they are polished.',
  'risk.filler.bench':
    'Wipe with panel cleaner before judging anything, and again after each step.',

  'risk.old-coating': 'Polishing takes the old coating off.',
  'risk.old-coating.means':
    'A coating is thinner than what one polish takes. Where we polish it is gone, and with it what was paid for it; a coating never stopped scratches, holograms or careless washing.',
  'risk.old-coating.bench':
    'Ask for its name and date. Photograph the paint under the lamp before the first wipe, so that nobody doubts who made which mark.',

  'risk.new-car': 'New does not mean perfect.',
  'risk.new-car.means':
    'New cars arrive with wash marks, metal dust from transport and at times a repair made before delivery. The paint is not thicker because it is new: it is polished as little as possible.',
  'risk.new-car.bench':
    'Look for earlier repairs and read all panels before polishing. Tell the owner before anything is done about them.',

  'risk.soft-paint': 'Soft paint marks as easily as it polishes.',
  'risk.soft-paint.means':
    'Soft paint shines fast, but each wipe can leave a new mark, and edges wear quickly. Expect marks again unless it is washed and dried very gently.',
  'risk.soft-paint.bench':
    'Use soft pads, a fresh cloth for each panel and little heat. Check edges after every set.',

  'risk.hard-paint': 'Hard paint needs more time for the same result.',
  'risk.hard-paint.means':
    'Very hard paint gives marks back slowly. It takes more sets and stronger pads, and some scratches stay because we do not trade safety for them.',
  'risk.hard-paint.bench':
    'Make a test spot with two combinations before choosing. Watch the heat.',

  'risk.residue': 'Polish creeps into old seals and gaps.',
  'risk.residue.means':
    'Dried polish in gaps, rubber and cloth seals looks like white lines days later. Covering them takes time, cleaning them takes more.',
  'risk.residue.bench':
    'Mask rubber, cloth seals and gaps before the machine. Rinse and blow the gaps when paint work ends, then look again.',

  'risk.marks-return': 'Swirls come back with brush washes.',
  'risk.marks-return.means':
    'A car that goes through brushes gets the same swirls again within months, coated or not. One light step is often the better buy than two.',
  'risk.marks-return.bench':
    'Offer the milder step first and explain washing by hand at hand-over.',

  'risk.coating-rest': 'A fresh coating needs rest.',
  'risk.coating-rest.means':
    'It has to stay dry for about a day and unwashed for about a week. It makes washing easier; it does not stop scratches or stone chips, and a careless wash can still mark it.',
  'risk.coating-rest.bench':
    'Check for high spots after an hour and the next day. Note the batch number and the maker’s drying time.',

  'risk.clean-shows-marks': 'A clean car shows its scratches.',
  'risk.clean-shows-marks.means':
    'Dirt hides marks. Once the car is washed you may see scratches that were there all along; washing takes none of them away.',
  'risk.clean-shows-marks.bench':
    'Photograph the sides in raking light after the first rinse, before a cloth touches them.',

  'risk.weather': 'Outdoors the weather has a say.',
  'risk.weather.means':
    'At your place sun, dust, cold or rain can stop polishing and sealing. The day may move, and some work may have to wait for a roof.',
  'risk.weather.bench':
    'No polishing on hot panels, no coating below the temperature on its label or with rain due. Agree the second date in advance.',

  'risk.film-old': 'Old film may take paint with it.',
  'risk.film-old.means':
    'Film that is about seven years old or more, brittle, begun by someone or of unknown age comes off in small pieces, and paint can come with it. It is charged by time up to an agreed cap, not as a fixed price.',
  'risk.film-old.bench':
    'Photograph every edge. Open one test corner, keep heat mild, stop at the first lifted paint and ask.',
  'risk.film-old.decision':
    'Agree the cap in hours, and choose what happens at the first lifted paint: stop, or go on at your risk.',

  'risk.film-over-repaint': 'Film on a repaint or bumper is likely to lift paint.',
  'risk.film-over-repaint.means':
    'Paint that did not come from the factory holds less well, and where film covers it nobody can see what was repaired. When the film goes, paint may go. Leaving it on is a real choice.',
  'risk.film-over-repaint.bench':
    'Do the bumper and repaired panels last. Pull nothing there without a signed yes.',
  'risk.film-over-repaint.decision':
    'Choose: leave the film on there, or sign that you accept lifted paint.',

  'risk.film-edge': 'The outline may stay when film or stickers are gone.',
  'risk.film-edge.means':
    'Paint under a film or sticker has aged differently, and an installer’s knife may have left a line. The outline can become fainter, and it may stay visible.',
  'risk.film-edge.bench':
    'Show the outline to the owner before polishing. Use a plastic blade and mild warmth; test adhesive remover on a hidden spot.',

  'risk.film-started': 'Damage from the first attempt is already there.',
  'risk.film-started.means':
    'Where someone has begun pulling the film, paint may be lifted, cut by a blade or marked by heat or solvent. We cannot undo it, and what is under the rest is not known.',
  'risk.film-started.bench':
    'Take close-ups of the place with a scale before water. Look for blade cuts under a lamp and start elsewhere.',
  'risk.film-started.decision':
    'Look at the photos with us and confirm what was there before we began.',

  'risk.glass-lines': 'Film on glass can take the heating lines with it.',
  'risk.glass-lines.means':
    'Thin lines of a heated window or aerial can come off with old film, and they rarely can be repaired well. Slow work lowers the risk, it does not end it.',
  'risk.glass-lines.bench':
    'Test the heated window before and after. Use steam and plastic only, along the lines, never a metal blade.',

  'risk.leak-unproven': 'We do not clean a wet cabin before the leak is found and proven shut.',
  'risk.leak-unproven.means':
    'As long as water comes in, cleaning is wasted and mould follows. First the place is found (it is often not where you think) and shown to be dry in a water test. Until then we only look, cover and dry.',
  'risk.leak-unproven.bench':
    'Hold all wet cabin steps. Map the moisture, photograph it, refer the leak, and note the water test before going on.',

  'risk.leak-repaired': 'A repaired leak still has to prove itself.',
  'risk.leak-repaired.means':
    'Until a water test, a repair is something you were told. If water still comes in, drying starts again and costs again.',
  'risk.leak-repaired.bench':
    'Do a water test and read the carpet the next day before any cleaning.',

  'risk.soaked': 'Soaked padding is lifted, dried or replaced.',
  'risk.soaked.means':
    'Foam under the carpet holds water for days. It must come up to dry, which takes two to four days with the car here, and soaked foam that smells is replaced, not cleaned. Guidance for buildings says to dry within 24–48 hours; after that, growth is likely.',
  'risk.soaked.bench':
    'Lift, dry and compare with a dry spot of the same car twice, 12 hours apart. Close nothing that still reads damp.',
  'risk.soaked.decision':
    'Agree that carpet and padding may come out, and who pays for new padding.',

  'risk.wet-electrics': 'Water may have reached electrics.',
  'risk.wet-electrics.means':
    'Control units, seat motors and airbag plugs often sit low, and trouble can appear weeks later. Drying the car does not tell whether they survived.',
  'risk.wet-electrics.bench':
    'Do not switch on or unplug anything that got wet. Note all warning lights first and leave airbag plugs to qualified people.',

  'risk.flood': 'A flooded car may be more than cleaning can save.',
  'risk.flood.means':
    'Flood water leaves dirt in places nobody can reach, and electrics may fail later. We may decline after looking, and what we clean may still smell.',
  'risk.flood.bench':
    'Look, photograph and stop. No power on, nothing unplugged, no work on belts or airbag parts.',
  'risk.flood.decision': 'Ask your insurer first and agree to a paid look before any price.',

  'risk.sewage': 'Sewage in a car is work for a specialist.',
  'risk.sewage.means':
    'It carries germs we are not equipped to remove. Textiles and foam it has touched are normally thrown away. A specialist cleaning firm can tell you what can be saved.',
  'risk.sewage.bench': 'Do not open, air or vacuum the cabin. Refer the car as it stands.',

  'risk.mould-specialist': 'This mould is beyond what we clean in a car.',
  'risk.mould-specialist.means':
    'Large or hidden mould, or mould where someone in your home is sensitive, means taking the cabin apart or a specialist. Let no child or ill person ride in it. Our limit is our own estimate: the known guideline is written for buildings and too large for a cabin.',
  'risk.mould-specialist.bench':
    'Keep the cabin closed. Wear an N-95 mask or equivalent, gloves and eye protection even to look. No air, no vacuum.',

  'risk.mould-decide': 'This much mould is for you to decide about.',
  'risk.mould-decide.means':
    'Between a hand and a tray of mould can be cleaned, but it may return and stains may stay. Those limits are our own estimate: the known guideline is written for buildings. Dead mould still has to be removed.',
  'risk.mould-decide.bench':
    'Leak, dry, HEPA vacuum, damp wipe, disinfect by label, dry, HEPA. Wear an N-95 mask or equivalent, gloves and eye protection.',
  'risk.mould-decide.decision': 'Choose: we clean it knowing it may return, or a specialist does.',

  'risk.mould-small': 'A little mould can be cleaned, and it can return.',
  'risk.mould-small.means':
    'A spot up to the size of a hand can usually be taken off hard surfaces; on cloth a shadow may stay. It returns if the car stays damp. The limit is our own estimate: the known guideline is written for buildings.',
  'risk.mould-small.bench':
    'Seal the cabin, no compressed air. Wear an N-95 mask or equivalent, gloves and eye protection; disinfect hard surfaces by label.',

  'risk.rodents': 'Animals have lived in the car.',
  'risk.rodents.means':
    'Nests and droppings can carry illness, and wiring may be chewed where nobody sees it. Clearing it safely comes first and takes time of its own; the smell may have a source we cannot reach.',
  'risk.rodents.bench':
    'Air the car out, soak everything with disinfectant, wait, wipe up. No sweeping, air or vacuum before that; look at the wiring before starting.',
  'risk.rodents.decision':
    'Agree to the clearing first, and to a look at the wiring by a workshop.',

  'risk.fade-only': 'Smells and stains fade; they may not vanish.',
  'risk.fade-only.means':
    'Smoke, milk and old stains sit in foam and vents. They become weaker, and some of it may stay or come back on a warm day. The source is not always what was spilled.',
  'risk.fade-only.bench':
    'Find the source first, clean, change the cabin filter, smell again the next day with the windows shut.',

  'risk.body-fluids': 'Body fluids are cleaned with protection, and some padding may have to go.',
  'risk.body-fluids.means':
    'Urine and vomit sink into foam. What is on the surface comes out; what is below may keep smelling until the padding is replaced.',
  'risk.body-fluids.bench':
    'Wear gloves, mask and eye protection. Use an enzyme product or disinfectant by its label; no compressed air, no steam before it.',

  'risk.gentle-air': 'Someone sensitive rides in it, so we go without scent and ozone.',
  'risk.gentle-air.means':
    'Ozone and strong perfumes can trouble asthma and small lungs, so the smell is fought at its source only. More of it may stay.',
  'risk.gentle-air.bench':
    'No ozone, no scent, no fogging. Mild cleaners by their label, doors open until it is dry, smell it again next day.',

  'risk.pet-hair': 'Pet hair comes out to about nine tenths.',
  'risk.pet-hair.means':
    'Short hair woven into tight carpet is the slowest work in a cabin. The last tenth can take longer than all the rest, so we stop at about 90 % unless you ask for more.',
  'risk.pet-hair.bench':
    'Brush and rubber first, then vacuum. Note the minutes; ask before the last tenth.',

  'risk.salt': 'Salt rings can come back while the carpet dries.',
  'risk.salt.means':
    'Road salt sits deep in the pile and wanders up again with the water. Pouring hot water on it makes the ring grow. It may need two rounds with drying between.',
  'risk.salt.bench':
    'Work with little water, extract, dry, look again the next day, repeat where it shows.',

  'risk.neglected-cabin': 'A neglected cabin is days, not an hour.',
  'risk.neglected-cabin.means':
    'This is a restoring job, and what lies under the dirt is not known: worn places, dyes that run, broken clips. It will be clean; it will not be new.',
  'risk.neglected-cabin.bench':
    'Clean one seat as a sample, show it and note the minutes before going on.',
  'risk.neglected-cabin.decision':
    'Choose: the full work, or a fixed number of hours on what matters most to you.',

  'risk.leather': 'Cracked, suede or dyed leather may lose colour.',
  'risk.leather.means':
    'Cleaning shows cracks more clearly and can move colour. Cracks stay: recolouring is done by a leather specialist, not by us.',
  'risk.leather.bench':
    'Test a hidden place first. No steam, no stiff brush, no product on suede unless its label names it.',

  'risk.headliner': 'A loose headliner can come down when it is cleaned.',
  'risk.headliner.means':
    'The foam behind the cloth has turned to dust. Moisture or pressure can loosen more of it, and only new cloth fixes it.',
  'risk.headliner.bench': 'No moisture and no suction on it. Photograph it and work around it.',
  'risk.headliner.decision': 'Choose: leave it alone, or have a trimmer renew it first.',

  'risk.child-seats': 'Child seats stay in your hands.',
  'risk.child-seats.means':
    'We do not take out, clean or refit child seats, and we put nothing on belts. What is under a seat that stays in is not cleaned.',
  'risk.child-seats.bench':
    'Ask the owner to take child seats out before and refit them after. If one is still in, work around it.',

  'risk.no-lifting': 'We do not lift a car on rusty points.',
  'risk.no-lifting.means':
    'If sills or lifting points are rotten, the car can fall or be crushed. Wheels stay on and the underside is left until a workshop has looked.',
  'risk.no-lifting.bench': 'No jack, no lift, nobody below. Photograph the points and refer.',

  'risk.wheels-off': 'Wheels that were off need a second check.',
  'risk.wheels-off.means':
    'After about 50 km (30 miles), or the maker’s figure, the nuts must be checked again. Keep the key for locking nuts with the car; without it the wheels stay on. Seized nuts and stuck wheels can turn up.',
  'risk.wheels-off.bench':
    'Map position, spacers and washers, check the lifting points, use stands. Torque to the maker’s figure and tell the owner about the re-check; no compressed air on brakes.',

  'risk.bare-wheels': 'Bare metal and chrome wheels are cleaned gently.',
  'risk.bare-wheels.means':
    'Acid and fallout remover stain polished metal and chrome for good. We use mild products, so baked brake dust may not come off completely.',
  'risk.bare-wheels.bench': 'Use neutral cleaner only, on cold wheels. Test a hidden spot.',

  'risk.cracked-wheel': 'A cracked wheel is not worked on.',
  'risk.cracked-wheel.means':
    'A crack can let go at speed. Cleaning or coating would only hide it. A wheel or tyre workshop must look before the car drives on.',
  'risk.cracked-wheel.bench':
    'Photograph the crack, tell the owner at once, leave the wheel as it is.',

  'risk.soft-roof': 'A soft roof needs a dry day of its own.',
  'risk.soft-roof.means':
    'Cleaning wets the cloth through, and it has to dry for at least a day before it is made to repel water. Until then it is not folded.',
  'risk.soft-roof.bench':
    'Clear the drains, use a soft brush and no jet. Never fold it wet or cold.',

  'risk.roof-window': 'Old seams and plastic windows may split.',
  'risk.roof-window.means':
    'Clouded plastic is brittle and old thread is weak; both can give way even with care, and water folded in leaves stains. Cleaning makes it look better, not sound.',
  'risk.roof-window.bench':
    'No jet, no folding, no pressure on the window. Photograph seams and window first.',
  'risk.roof-window.decision':
    'Accept that a seam or window may split, or have a trimmer look first.',

  'risk.high-voltage': 'Some places of a high-voltage car are not washed.',
  'risk.high-voltage.means':
    'The charge port, orange cables and the places below them stay dry and are cleaned by hand or not at all. The ordinary 12 V battery can also run flat while doors stand open.',
  'risk.high-voltage.bench':
    'No jet at ports, vents or orange cables. Follow the maker; keep people with a pacemaker away as the handbook says.',

  'risk.engine-wash': 'A wet engine bay can cause trouble.',
  'risk.engine-wash.means':
    'Water in a plug or sensor can light a warning lamp or stop the engine, most of all if it was washed with a jet before. We clean it damp, by hand, and some dirt stays.',
  'risk.engine-wash.bench':
    'Cold engine, plugs and intake covered, no jet. Note warning lights before and after, let it dry before starting.',

  'risk.warning-lights': 'Warning lights are noted before we touch anything.',
  'risk.warning-lights.means':
    'A light that is on may mean a fault that cleaning can make show, and we cannot repair it. With an airbag or belt light we keep off seats, plugs and belts.',
  'risk.warning-lights.bench':
    'Photograph the dash with the ignition on, on arrival. Unplug nothing; a workshop comes first for brakes, belts and airbags.',

  'risk.not-driving': 'A car that does not drive has to be moved safely.',
  'risk.not-driving.means':
    'It needs transport both ways, and moving it about costs time. We do not start, tow or drive it to see what happens.',
  'risk.not-driving.bench':
    'Wheels chocked, nobody alone with a car without brakes. Battery support only by the handbook.',
  'risk.not-driving.decision':
    'Agree who brings and fetches it and what happens if it cannot roll.',

  'risk.deadline-drying': 'Drying and curing cannot be hurried.',
  'risk.deadline-drying.means':
    'Your date includes work that has to dry or cure. More hands do not shorten that. Either the date moves or part of the work waits.',
  'risk.deadline-drying.bench':
    'Plan backwards from the date with all drying. Cut in the agreed order; no coating in rain or damp.',
  'risk.deadline-drying.decision': 'Say what may be left out first if the date comes too close.',

  'risk.deadline': 'A fixed date leaves no room for what turns up.',
  'risk.deadline.means':
    'If something unknown comes to light, the date holds only if part of the work is left out.',
  'risk.deadline.bench':
    'Do the one thing that matters most first. Ask early, not on the last day.',

  'risk.budget': 'The budget may decide before the car does.',
  'risk.budget.means':
    'What you wish for can cost more than the sum you named. We can do the most useful hours of it; that is a different, honest job.',
  'risk.budget.bench':
    'Offer a fixed number of hours with an order of work. Start nothing that cannot be finished.',
  'risk.budget.decision': 'Choose: the wish with its price, or the hours your budget buys.',

  'risk.by-the-hour': 'This one is priced by the hour after a look.',
  'risk.by-the-hour.means':
    'Boats, motorhomes and motorcycles differ too much for a price from a distance. We look first and then agree hours with a cap.',
  'risk.by-the-hour.bench': 'Do a test area, note the minutes, then propose hours and a cap.',
  'risk.by-the-hour.decision': 'Agree to a paid look and to an hourly rate with a cap.',

  'risk.gelcoat': 'Gelcoat is not car paint.',
  'risk.gelcoat.means':
    'Chalky gelcoat hides how deep the wear goes: polish may do little, and it may need sanding we decide on only after a test strip. Worn-through gelcoat needs a boat or body builder.',
  'risk.gelcoat.bench':
    'Make a test strip before any estimate. No gauge reading counts here; look for cracks and old repairs.',

  'risk.size-days': 'Work on something this large takes several days.',
  'risk.size-days.means':
    'More surface means more days, and tired hands make mistakes, so the work is spread over days instead of one long one.',
  'risk.size-days.bench': 'Plan by panel groups, limit machine hours per person and day.',

  'risk.outside-trade': 'Another trade comes first, and your date depends on it.',
  'risk.outside-trade.means':
    'Part of this belongs to a body shop, leak finder, leather or wheel workshop. It has its own waiting time and price, and we can only follow after it.',
  'risk.outside-trade.bench':
    'Book the outside trade before any bay day. Check its work when the car comes back.',
  'risk.outside-trade.decision':
    'Choose: move the date, or leave out what another trade has to do first.',

  'risk.hearsay': 'What earlier owners did is hearsay.',
  'risk.hearsay.means':
    'You told us what you know, but with earlier owners a repaint or polish may be unknown to you. The gauge may tell another story, and the price can change then.',
  'risk.hearsay.bench':
    'Treat the history as unproven. Read all panels before agreeing to more than a light step.',

  'risk.fragile-parts': 'Old parts may break when they are touched.',
  'risk.fragile-parts.means':
    'Badge pins, clips, sticky coatings, wood and brittle plastic can break or wear off however careful we are. New parts are at your cost and can take weeks.',
  'risk.fragile-parts.bench':
    'Mask instead of removing wherever you can. Order the part first; take nothing off without the owner’s yes.',
  'risk.fragile-parts.decision':
    'Agree what may be taken off, and that broken old parts are at your cost.',

  'risk.keep': 'What is original cannot be put back once it is polished away.',
  'risk.keep.means':
    'Original paint, marks of use, signatures and even a smell can be worth more than shine. We take off as little as we can, and nothing you want to keep.',
  'risk.keep.bench':
    'List and photograph what must stay. Choose the mildest step; test on a hidden place.',
  'risk.keep.decision': 'Tell us what must stay exactly as it is.',

  'risk.stored': 'After long storage more turns up than can be seen.',
  'risk.stored.means':
    'Standing dries seals, flattens batteries and hides damp, rust and animals. The car may be in another state than you remember.',
  'risk.stored.bench':
    'Look for damp, nests and seized parts before water. Do not start the engine unasked.',

  'risk.damage-first': 'Damage is written down before we begin.',
  'risk.damage-first.means':
    'There is much on this car already, or a claim is open. We photograph and list it with you on arrival, so that nobody argues later about what was there.',
  'risk.damage-first.bench':
    'Walk round with the owner, photograph each place with a scale, have the list signed before washing.',

  'risk.whose-car': 'Someone else has a say about this car.',
  'risk.whose-car.means':
    'A leased, financed or borrowed car may only be polished, coated or taken apart if its owner agrees. Warranty or return terms may forbid it.',
  'risk.whose-car.bench':
    'Start nothing that cannot be undone without written consent from the owner.',
  'risk.whose-car.decision':
    'Get the owner’s consent in writing, and say who decides about extras.',

  'risk.other-work': 'Another trade has to do its part before or after us.',
  'risk.other-work.means':
    'Painting, dents, glass and repairs come before polishing and protection, or our work is done twice. Their dates move ours.',
  'risk.other-work.bench':
    'Ask what is done and by whom. Touch no panel, glass or seat another trade still has to work on.',
  'risk.other-work.decision': 'Choose whether they come first, or what we leave out until then.',

  'risk.no-road': 'The car does not drive on the road while it is with us.',
  'risk.no-road.means':
    'Without your yes, cover for our drivers, or sound brakes, it comes and goes on a trailer. We cannot try the wheels on the road.',
  'risk.no-road.bench':
    'Move it in the yard only. Tell the owner to have the wheel nuts checked after the first miles, as the maker says.',
}

/** What can hurt someone; every one defers to who has the last word. */
export const cautionWords: Catalogue = {
  'caution.old-lacquer':
    'Old lacquer and the primer under it may hold lead: make no dust, and follow local rules for old paint.',
  'caution.old-paint-dust':
    'Dust of old paint may hold lead, chromate or cadmium. Make none; local work-safety rules decide about masks, wipes and waste.',
  'caution.fallout-remover':
    'Fallout remover and tar solvent: gloves, eye protection, fresh air. The label decides about time, surfaces and mixing.',
  'caution.film-heat':
    'Steam and hot water scald, heat can spoil paint and harm high-voltage parts: stay below 60 °C on the surface and follow the vehicle maker.',
  'caution.adhesive-solvent':
    'Adhesive remover is flammable and its vapour harmful: gloves, fresh air, no sparks. The label decides.',
  'caution.wet-electrics':
    'Wet electrics, high-voltage parts and airbags: power nothing up and unplug nothing. This is work for a qualified person following the vehicle maker.',
  'caution.sewage':
    'Sewage carries disease. Leave it to a qualified cleaning firm and follow local health rules.',
  'caution.mould':
    'Mould: N-95 mask or equivalent, gloves and eye protection (EPA 402-K-01-001, written for buildings). Disinfect only as the label says, never mix products; local rules and a qualified specialist have the last word.',
  'caution.rodents':
    'Droppings and nests can carry serious illness: air out, gloves, mask, soak by the label of the disinfectant, no dry sweeping. Follow local health rules.',
  'caution.ozone':
    'Ozone harms lungs and rubber: empty, closed car only, aired before anyone gets in. Follow the label of the device and local rules.',
  'caution.body-fluids':
    'Body fluids: gloves, mask, eye protection, closed bags. Disinfect by the label and follow local health rules.',
  'caution.restraints':
    'Belts, airbags and child seats save lives: no chemicals, no unplugging, no refitting by us. The maker’s handbook and a qualified workshop decide.',
  'caution.lifting':
    'A car on a jack alone kills. Lifting points, stands and lifts only as the maker of car and lift says; a rotten sill goes to a qualified workshop.',
  'caution.wheel-nuts':
    'Wheel nuts: calibrated wrench, the vehicle maker’s figure, re-check after the distance the maker gives. Brakes stay free of product; doubt goes to a qualified workshop.',
  'caution.cracked-wheel':
    'A cracked wheel can fail at speed. It is judged by a qualified wheel or tyre workshop before the car drives.',
  'caution.high-voltage':
    'High voltage can kill, also when the car is off. Washing only as the vehicle maker allows; everything behind orange cables is for qualified people.',
  'caution.engine-wash':
    'Hot parts burn and fans can start by themselves: cold engine, key away. Follow the vehicle maker and the label.',
  'caution.moving':
    'A car without brakes or steering can crush. Move it with chocks and two people, or leave it to a licensed transporter; follow the maker for batteries.',
}
