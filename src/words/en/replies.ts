import type { Catalogue } from '../render'

/** One question's replies by what was answered, as a flat catalogue `reply.<id>.<variant>`. */
const flatReplies = (all: Readonly<Record<string, Readonly<Record<string, string>>>>): Catalogue =>
  Object.fromEntries(
    Object.entries(all).flatMap(([id, variants]) =>
      Object.entries(variants).map(([variant, words]) => [`reply.${id}.${variant}`, words]),
    ),
  )

/** English replies: what each answer changes in scope, time, risk or honesty. */
export const repliesEn: Catalogue = flatReplies({
  body: {
    car: 'Good, that gives us the panels to reckon with.',
    convertible: 'Then the roof comes into it too, and where its water drains.',
    big: 'High sides and a large roof: that adds hours and a platform to stand on.',
    motorcycle: 'Small panels and much handwork, so we reckon by the piece.',
    boat: 'A hull is not car paint. We will look at it before we name a firm price.',
  },
  dangers: {
    none: 'Good. That leaves the short way: a few questions to a first range.',
    many: 'That is a lot at once. We will look it over first, before any firm price.',
    growth: 'Leave it as it is, please. Health comes before cleaning, so we ask more about it.',
    wet: 'Then drying comes first. We do not clean over a leak that is still open.',
    'fresh-paint': 'Fresh paint needs rest. We ask the painter before we touch it.',
    matte: 'Then nothing that polishes: a shine mark on matte paint stays for good.',
    film: 'Film can take paint with it. We test a corner and stop at the first lift.',
    peeling: 'Polishing cannot mend that. We stay clear of it and look after the rest.',
    'not-driving': 'Then how it gets here is part of the plan.',
    'soft-roof': 'Noted. A soft roof wants a day to dry before it may be folded.',
    unsure: 'Then we reckon with some surprises, and look for all eight when it arrives.',
  },
  size: {
    small: 'Less area, fewer hours.',
    mid: 'Then our usual hours fit.',
    large: 'More area: the paint and cabin hours go up.',
    unsure: 'We reckon from small to large, and the range stays a little wider.',
  },
  year: {
    classic: 'From {n:year}: thin old paint, so we plan gentle work and a test spot first.',
    old: 'From {n:year}: clips and trim are brittle by now. We leave on what need not come off.',
    middle:
      'From {n:year}: normally clear lacquer over the colour. Readings will tell how much is left.',
    recent: 'From {n:year}: young enough that most parts come apart without breaking.',
    unsure: 'Then we plan for old paint and old clips too. The range is wider for it.',
  },
  services: {
    paint: 'Then we measure the paint before we promise how far it can go.',
    protect: 'What goes under a protection stays under it, so the paint is cleaned first.',
    'wheels-off':
      'Then jacking points, locks and tightening to the maker’s figure belong to the job.',
    cabin: 'Then what matters is how dry it is and what went into the fabric.',
    stickers: 'What is under a sticker has not faded. Its outline may stay.',
    roof: 'Then a dry day or our bay is needed: the roof must dry before it is proofed.',
    some: 'Noted. Only that, and what it needs around it, goes on the estimate.',
    none: 'Then we reckon only a look-over, and what the dangers above ask for.',
  },
  'cabin-state': {
    tidy: 'Then one pass will do, and there is little to dry.',
    family: 'Then we add time for spots, and ask which.',
    neglected: 'Then this is two or three times the work. We give the hours, not a promise of new.',
    unsure: 'Then we reckon from tidy to neglected. One photo would narrow it a lot.',
  },
  'cabin-marks': {
    fluids: 'Then gloves, disinfecting and time to dry. Some smell may stay.',
    smoke: 'Smoke sits in every pore: we can make it less, not undo it.',
    milk: 'Milk goes deep and turns. We look for where it ran to, and check again next day.',
    'pet-hair': 'Hair is handwork. We count on about nine tenths coming out.',
    stains: 'Some stains are dye by now. We try, and say which stay.',
    dry: 'That comes out dry, before any water goes in.',
    none: 'Good: then it is a matter of dust and wiping.',
    unsure: 'We look when it arrives, and ask you before extra hours.',
  },
  wish: {
    preserve: 'Then we take off as little as we can, and leave the deep marks.',
    improve: 'Then most fine marks go. What goes deep stays, softer.',
    show: 'We go as far as the readings allow and not further. That takes the most hours.',
    unsure: 'Then we reckon the mild way and the thorough one, and you choose later.',
  },
  'paint-history': {
    original: 'We take that as hearsay until the readings agree.',
    part: 'Then those panels get a test spot of their own.',
    all: 'Then thick paint is no sign of safety: filler reads thick too. We test first.',
    unsure: 'Nobody can see it for sure. Readings will tell, and the range leaves room.',
  },
  'respray-panels': {
    some: 'Treated apart: {picked:words}. We stay off the edge where new paint meets old.',
    none: 'Then we look for the painted panels with the gauge.',
    unsure: 'The gauge will find them. Until then we plan for the panels most often hit.',
  },
  'fresh-paint-weeks': {
    soft: 'That is too fresh to polish without the painter’s yes, and far too fresh to seal.',
    fresh: 'It can be washed. Wax, coating or film wait for the painter’s data sheet.',
    aired:
      'Three months have gone by, so it can most likely be treated. We still ask how it was dried.',
    unsure: 'Then we wait for the painter’s word before anything seals it.',
  },
  colour: {
    dark: 'Dark paint shows the finest haze in the sun. We add a finishing pass and check under a lamp.',
    mid: 'A middle tone forgives a little, so the usual passes fit.',
    light: 'Light paint hides fine marks. You may need less polishing than you think.',
    'red-orange-yellow':
      'These colours fade and give off colour. Old ones we only work wet, because of what may be in them.',
  },
  'cloth-test': {
    colour:
      'Then there is likely no clear lacquer: colour on our pads is normal, and we go gently.',
    clean: 'Then the colour most likely lies under clear lacquer.',
    part: 'Then the panels differ, and some were painted again. We test each kind.',
    unsure: 'We do the test ourselves on a hidden spot, before any machine.',
  },
  'peel-where': {
    edges: 'Edges spread under a jet. We tape them and wash by hand there.',
    some: 'Left alone: {picked:words}. Only new paint helps there, and we say so on the quote.',
    none: 'We look for it with you when it arrives.',
    unsure: 'We look under two lamps on arrival, before water goes near.',
  },
  'film-kind': {
    'clear-film': 'Clear film: the glue is often more work than the film.',
    wrap: 'A wrap covers large panels, so hours grow with its age.',
    lettering: 'Lettering comes off quickly. Its ghost in the paint may stay.',
    stickers: 'Stickers come off one by one, and the paint beneath may be a shade darker.',
    none: 'Then we look what it is before we plan.',
    unsure: 'We look at the edges on arrival. Until then we reckon with several kinds.',
  },
  'film-where': {
    'whole-car': 'The whole car is days, not hours. We reckon it panel by panel.',
    'front-bumper': 'The bumper comes last and only with your yes: paint holds least on plastic.',
    glass: 'Glass allows steam and time, but the heating lines must be spared.',
    some: 'That sets the area: {picked:words}.',
    none: 'Then we measure the area on arrival.',
    unsure: 'We reckon with the usual front parts until we have seen it.',
  },
  'film-age': {
    young: '{n|# year|# years}: it should come off in large pieces.',
    old: '{n|# year|# years}: from about seven on it may take paint along. By the hour, after a test corner.',
    'very-old':
      '{n|# year|# years}: film that old comes off by the hour, with a limit we agree first.',
    unsure: 'Then we test a corner first and reckon with young and old film.',
  },
  'year-check': {
    'car-year-wrong':
      'Thank you. Change the year of the car above, so that we reckon with the right paint.',
    'film-age-wrong':
      'Thank you. Change the age of the film above. Until then we plan as if it were old.',
    'both-right': 'Then a part is older than the car. We treat that panel as not original.',
    unsure: 'Then we plan as if the film were old, and look at both when the car is here.',
  },
  'film-state': {
    started: 'Then what was done so far is photographed close up, before any water.',
    cracked: 'Cracked film comes off in crumbs: by the hour, and slow.',
    dull: 'Dull film is on its way to brittle. We allow extra time for the glue.',
    pliable: 'Good. Supple film mostly lets go in one piece.',
    none: 'Then we judge it by hand on arrival.',
    unsure: 'We try one corner on arrival, warm and slow, and stop at the first lift.',
  },
  'wet-where': {
    headliner:
      'Water in the lining points to the roof or its drains. Cleaning may loosen the lining.',
    'front-luggage': 'That points to a drain or a seal in front. Electrics often sit there too.',
    some: 'We measure there and at a dry spot of the same car: {picked:words}.',
    none: 'Then we feel for it on arrival, mat by mat.',
    unsure: 'We lift the mats on arrival and measure. Please do not pull up carpet yourself.',
  },
  'wet-source': {
    repaired: 'Good. We prove it with water before we dry and clean.',
    open: 'Then it goes to be sealed first. We dry and clean after that.',
    unknown: 'Then we find or refer the leak first. No price for cleaning until it is proven dry.',
    'left-open': 'Then it is a matter of drying, not of sealing. That saves days.',
    flood:
      'Flood water can make electrics fail months later. We may have to decline, and will say so early.',
    sewage: 'That is work for a specialist, for health’s sake. We tell you where to turn.',
    unsure: 'Then we treat the leak as open until it is proven closed.',
  },
  'wet-depth': {
    surface: 'Then about a day of drying, while nobody works on it.',
    soaked: 'Then the carpet has to come up: two to four days of drying.',
    standing:
      'Please leave the power off where you can. Drying takes days, and foam may need replacing.',
    unsure: 'We measure it on arrival, and plan for soaked until then.',
  },
  'wet-electrics': {
    yes: 'Then nothing is plugged or unplugged by us. A qualified person looks first.',
    no: 'Good. We still check what works before and after, with you.',
    unsure: 'Then we try every switch with you on arrival and write it down.',
  },
  growth: {
    rodents:
      'Please keep out of it and do not sweep. We air it, soak it and look at the wiring first.',
    'mould-headliner': 'Mould in the lining cannot be scrubbed out. It may need replacing.',
    'mould-under-carpet':
      'What shows at the edge goes on beneath. We lift the carpet before naming hours.',
    'mould-textile':
      'On fabric we can make it less, only where the label allows. Belts are left alone.',
    'mould-hard': 'Hard parts can be cleaned well, once they are dry and the damp is gone.',
    none: 'Then we look for it with lamp and nose, before any air is blown.',
    unsure: 'Then keep it closed and leave it. We look with masks on.',
  },
  'mould-area': {
    coin: 'Small enough for our own work, once the damp is found.',
    hand: 'Within what we do ourselves on hard parts, sealed off and masked.',
    tray: 'At this size we decide only after seeing it, and may send you to a specialist.',
    larger: 'That goes to a specialist, or it is stripped out. We tell you where to turn.',
    unsure: 'Then we plan for both, and no price is firm before we have seen it.',
  },
  'sensitive-people': {
    'yes-air': 'Then no scent and no ozone, and it is aired before they ride in it again.',
    'no-air': 'Then stronger means against the smell are open to us, aired out afterwards.',
    'unsure-air': 'Please ask at home. Until we know, we leave scent and ozone away.',
    yes: 'Then they should stay out of it. Mould beyond a small spot goes to a specialist.',
    no: 'Noted. We still wear masks, and say plainly that it may come back.',
    unsure: 'Then we keep to the tighter limit, to be safe.',
  },
  'roof-kind': {
    cloth: 'Cloth: soft brush, no jet, a full day to dry before proofing.',
    vinyl: 'Vinyl: no proofing for cloth. Old seams get a look first.',
    hard: 'A hard roof counts with the painted panels.',
    unsure: 'We look and feel, and reckon with cloth until then.',
  },
  'drive-state': {
    carried: 'Then it must be carried, not driven. Please do not try it on the road.',
    pushed: 'Then it needs pushing or a trailer, and a hand more in the yard.',
    battery: 'Then we work without its power, and you tell us about the alarm.',
    none: 'Then tell us on the phone what stops it, so that we plan its way here.',
    unsure: 'Then we plan for a trailer. Better that than a breakdown on the way.',
  },
  defects: {
    'burn-through': 'There the paint is gone. We photograph it, tape it, and no machine goes near.',
    rust: 'Rust is body work. We clean round it and seal nothing over it.',
    deep: 'What a finger can feel is too deep to polish out. It gets softer, not gone.',
    chips: 'Chips are filled, not polished. Touch-up has to dry for days before protection.',
    bonded: 'That comes off with clay or a fallout remover, before any polishing.',
    etching: 'Light spots polish out. Deep ones have eaten into the paint and stay.',
    dull: 'Dull paint may come back, or it is worn through. A test spot will show.',
    haze: 'A fine veil goes with a finishing pass. That takes next to nothing off.',
    marks: 'These are what polishing is for. Most go in one or two passes.',
    none: 'Then little polishing is needed, and little is taken off.',
    unsure: 'We look under two lamps after the wash, and show you.',
  },
  use: {
    'daily-outdoors': 'Then expect tar, fallout and hard water. Protection pays here.',
    kept: 'Kept well: less to clean off before we can polish.',
    stored: 'Standing long means flat spots, stuck brakes, perhaps mice. We look first.',
    show: 'Then it has been polished often. Little may be left, whatever it looks like.',
    track: 'Then rubber, chips and brake dust are added to the wash.',
    work: 'Then we plan time to clear out, and for ground-in dirt.',
    unsure: 'Then we plan for a car kept outside.',
  },
  deadline: {
    given: 'By {day:date}. If it gets tight, we tell you what has to go, before we start.',
    cure: 'By {day:date}. A coating must dry and cure before rain, so the day may decide what we put on.',
    wet: 'By {day:date}. Drying will not be hurried, so that day may not hold.',
    none: 'Good. Drying and curing get the time they need.',
  },
  finish: {
    solid: 'Plain colour may be a single coat with no lacquer. We check with a cloth.',
    metallic: 'Flakes must never be polished bare. If there is no lacquer, we stay off.',
    unsure: 'We look at it in the light. The range covers both.',
  },
  'system-check': {
    'sure-colour':
      'Then it was most likely painted again without lacquer. No polishing before a test spot.',
    'maybe-metal-dust': 'Then we test again ourselves, and treat it with care until then.',
  },
  authority: {
    mine: 'Good, then your yes is enough.',
    'lease-finance': 'Then we need their written consent for what cannot be undone.',
    'family-or-company': 'Then the owner should see the quote before work starts.',
    'not-mine': 'Then the owner has to agree. We send the quote so that you can pass it on.',
  },
  'film-started-with': {
    blade: 'Blade cuts stay visible in the paint. We photograph them before we begin.',
    solvent: 'Solvent may have softened the paint. It rests before we go on.',
    heat: 'Too much heat bakes the glue. We allow more time for it.',
    hand: 'Pulled cold, the glue mostly stays behind. That is more hours for glue.',
    none: 'Then we read it from the edges that are left.',
    unsure: 'We look for cuts and lifted paint first, and show you.',
  },
  'film-over': {
    factory: 'Factory paint holds best. The test corner decides.',
    repaint: 'Film over a repaint likely takes some along. It stays on without your signed yes.',
    bumper: 'Paint holds least on a bumper. It comes last, and only with your yes.',
    unsure: 'The gauge tells on metal. Until then we plan to stop early.',
  },
  'warning-lights': {
    restraints: 'Then we leave seats and plugs alone. Airbag parts are for qualified people.',
    brakes: 'Then it should not be driven here. Let a workshop look first.',
    other: 'Noted, so that it is not laid at the door of the cleaning.',
    none: 'Good. We note that none was on when it came.',
    unsure: 'We photograph the dash when it arrives.',
  },
  'engine-kind': {
    combustion: 'Then it is cleaned cold, with the openings covered.',
    'high-voltage': 'Then no jet near ports or orange cables, and some areas stay dry.',
    unsure: 'We look before any water, and treat it as high voltage until then.',
  },
  'polished-before': {
    never: 'Then there is most likely enough left. Readings will say.',
    once: 'Then a little is gone already. We count it in.',
    several: 'Then we plan mild passes only, until the gauge says more.',
    'often-or-dealer':
      'Such polishes often fill marks. They come back after the wipe, and we show you first.',
    unsure: 'Then we count on some having been taken off.',
  },
  'locking-key': {
    have: 'Good. Please leave it on the seat with the keys.',
    'none-needed': 'One worry less: the wheels come off without it.',
    missing: 'Then a new key has to be had first, or the locks are broken off at cost.',
    unsure: 'Please look before the day. Without it the wheels stay on.',
  },
  wheels: {
    painted: 'Then the usual cleaners fit.',
    'polished-bare': 'No acid and no fallout remover there. Handwork, and more of it.',
    powder: 'Tough, but strong cleaners dull it. We take a mild one.',
    chrome: 'Chrome pits under acid. Mild cleaner, by hand.',
    cracked: 'Where the lacquer flakes, cleaning makes it show. Only refinishing helps.',
    unsure: 'Then we start with the mildest cleaner.',
  },
  jacking: {
    sound: 'We still look again before it is lifted.',
    rusty: 'A rotten sill is not lifted on. Then the wheels may have to stay on.',
    unsure: 'We look before anything is lifted, and stop if it is rotten.',
  },
  'earlier-protection': {
    'scratch-remover':
      'Such products fill more than they remove. Marks may come back when it is cleaned.',
    silicone: 'Silicone must be off before paint or touch-up. That is one more step.',
    coating: 'A coating has to be polished off, or it stays. That changes the hours.',
    'unknown-bottle': 'Then we strip a small spot first and see what is under it.',
    wax: 'Wax washes off before we measure and polish.',
    none: 'Then what you see is bare paint. That makes judging easier.',
    unsure: 'We wipe a spot clean first and judge there.',
  },
  'panel-material': {
    steel: 'Then any paint gauge can read it.',
    aluminium: 'Then we need the gauge for that metal, or go by look alone.',
    'plastic-composite':
      'No gauge of ours reads it there. A light pass at most, and only with your yes.',
    unsure: 'The gauge will show it. What it cannot read gets a light pass at most.',
  },
  'hard-soft': {
    'marks-easily': 'Soft paint: gentler passes, and one more to finish.',
    normal: 'Then the usual pads and times fit.',
    'very-hard': 'Hard paint: each pass takes longer.',
    unsure: 'The test spot will tell.',
  },
  leather: {
    suede: 'Suede takes no water. It is brushed and vacuumed only.',
    cracked: 'Colour may come off there. We try a hidden spot, and recolouring is outside work.',
    perforated: 'Then little liquid, so that nothing runs through the holes.',
    smooth: 'Leather is cleaned and then rests for an hour or two.',
    'cloth-only': 'Cloth can be washed, but needs hours to dry.',
    none: 'Then we ask again when we see it.',
    unsure: 'We look and try a hidden spot first.',
  },
  'roof-state': {
    'folded-wet': 'Then leave it up, please. Folding it wet breeds mould and marks.',
    'plastic-cloudy':
      'Cloudy plastic clears a little at best, and splits when cold. We do not fold it.',
    seams: 'Open seams are for an upholsterer. We clean around them.',
    'dirty-green': 'That takes two washes and a full dry day before proofing.',
    stiff: 'Then it stays as it is. Old folds can crack when they move.',
    none: 'Then one wash, a day to dry, and proofing.',
    unsure: 'We look along the seams before any brush.',
  },
  'readings-before': {
    yes: 'Good. Old readings may lower what we take off. They never raise it.',
    no: 'Then our first readings decide, after the wash.',
  },
  'readings-text': {
    given: 'Thank you. We compare them with ours, panel by panel.',
    none: 'No matter. We measure anyway.',
  },
  headliner: {
    firm: 'Then it can be wiped, barely damp.',
    loose: 'Then we leave it alone. Water brings it down.',
    unsure: 'We look first, and wipe only what holds.',
  },
  trim: {
    sticky: 'Sticky plastic cannot be cleaned back for good. We say what it may look like.',
    wood: 'Wood gets its own mild cleaner, never steam.',
    'brittle-clips': 'Then we take off as little as we can. What breaks is at cost.',
    none: 'Good: no trim that needs special care.',
    unsure: 'We touch it with care, and ask before anything comes off.',
  },
  spilled: {
    given: 'Thank you. That picks the cleaner, and saves a failed try.',
    none: 'Then we start with the mildest cleaner and work up.',
  },
  belongings: {
    'child-seats': 'Please take the child seats out yourself, and fit them again yourself.',
    'alarm-trouble': 'Then tell us how to quiet it, or we work with the battery off.',
    'added-wiring': 'Then we keep water and pulling away from it.',
    none: 'Good, then nothing is in the way. Please empty the pockets too.',
  },
  tint: {
    'film-on-screen': 'Film on the windscreen takes no blade and no strong cleaner.',
    'film-on-glass': 'Then mild cleaner and soft cloths, and no steam at the edges.',
    'heated-glass': 'Then we wipe along the lines and never scrape across them.',
    none: 'Then the glass takes a thorough clean, blade and all.',
    unsure: 'Then we treat it as if there were film.',
  },
  spacers: {
    yes: 'Then each is marked and goes back to its place, with its own bolts.',
    no: 'Good. We still mark which wheel sat where.',
    unsure: 'We look when the first wheel is off.',
  },
  ride: {
    normal: 'Then the usual lift will do.',
    lowered: 'Then it goes over boards and needs a low jack.',
    raised: 'Then higher stands and a step at the roof, and some more time.',
    unsure: 'We look before it rolls onto the lift.',
  },
  'best-thing': {
    given: 'That comes first, and it is what we look at together at the end.',
    none: 'Then we weigh the work evenly.',
  },
  photos: {
    given: 'Thank you: {n|# photo|# photos}. What we can see, we need not guess.',
    none: 'Then we look on arrival, and the range stays as wide as it is.',
  },
  budget: {
    given: 'Then we say what fits into it, in which order, and what has to wait.',
    none: 'Then we show the range, and you choose how far to go.',
  },
  'owner-since': {
    given: 'Since {n:year}. What came before that, we take as hearsay.',
    unsure: 'Then we take all of its past as hearsay.',
  },
  'one-owner': {
    one: 'One hand: its story is easier to trust.',
    few: 'Then somebody may have polished it without your knowing.',
    many: 'Then we count on several polishes, and plan mild passes.',
    unsure: 'Then we count on more polishing than was told.',
  },
  patina: {
    signatures: 'They are taped off before any water, and written on the sheet.',
    smell: 'Then nothing scented, no ozone, and only mild cleaners inside.',
    patina: 'Then we clean and stop there. No polishing to even it out.',
    marks: 'Then they are masked and named on the sheet.',
    none: 'Good, then nothing holds us back but the paint itself.',
  },
  keep: {
    given: 'It goes on the sheet, and the one at the bench sees it first.',
    none: 'Then please show us when you bring it.',
  },
  'kept-washed': {
    hand: 'Good. Then the work lasts.',
    brush: 'Then fine marks will be back within months. Lighter polishing may be the better buy.',
    jet: 'Then wash marks stay away, and some grime stays on.',
    rarely: 'Then a protection that sheds dirt is worth more than gloss.',
    unsure: 'We put both ways on the care sheet.',
  },
  mileage: {
    low: 'Few for its use: the front should have few chips.',
    high: 'Then we expect chips in front and worn seats.',
    unsure: 'We read it off when it comes.',
  },
  payer: {
    me: 'Then the quote comes to you alone.',
    insurer: 'Then they should agree in writing before we start.',
    other: 'Then that person should see the price first.',
  },
  claim: {
    yes: 'Then we photograph everything and clean nothing away without their yes.',
    no: 'Good. We still photograph it on arrival.',
  },
  'where-car': {
    bring: 'Good. We walk round it together on arrival.',
    collect: 'Then the drive is added, and we take photos before we set off.',
    'at-home': 'Polishing, coating and drying need our bay. We say what can be done at yours.',
  },
  'drive-consent': {
    yes: 'Thank you. Only what is needed, and the mileage is written down.',
    no: 'Then it moves only in our yard, and you check the wheel nuts after the first miles.',
  },
  'free-dates': {
    given: 'Thank you. We look for a slot that holds the drying days as well.',
    none: 'Then we propose days with the quote.',
  },
  'paint-code': {
    given: 'Then touch-up paint is ordered before the day. Shades still differ with age.',
    none: 'We look it up on the car. Touch-up may then come later.',
  },
  vin: {
    given: 'Thank you. That checks the year and the parts we order.',
    none: 'We read it off the car when it comes.',
  },
  'part-check': {
    'service-wrong': 'Then we leave it out. Change what you would like done above, to be exact.',
    'body-wrong': 'Please change the kind of vehicle above, so that we count the right panels.',
    'both-right': 'Then we look at it together before that part gets a price.',
  },
  'roof-check': {
    'under-hard': 'Then we lift nothing ourselves, and look under it with you.',
    'no-soft': 'Then the roof counts as paint, and no proofing is reckoned.',
  },
  'dry-check': {
    yes: 'Then the carpet is dried first, after a water test of the repair.',
    no: 'Then the repair did not hold, and we treat the leak as open.',
    unsure: 'Then we test it with water before we name a price for cleaning.',
  },
  'damp-check': {
    'damp-now':
      'Please tick damp in the first question too, so that we ask where. It comes before the mould.',
    'was-damp': 'Then we measure whether it is dry below as well, and clean after that.',
    'never-damp': 'Then we look for hidden damp under carpet and lining before we clean.',
    unsure: 'Then we measure for damp on arrival. The mould waits for the result.',
  },
  'owner-consent': {
    yes: 'Good. Please bring that paper, and we keep a copy with the docket.',
    no: 'Then polishing and coating wait for it. Washing and looking may begin.',
  },
  'paint-check': {
    'painted-again': 'Then we look for those panels with the gauge, and test them apart.',
    'never-painted': 'Then the gauge decides. If it reads thick, we stop and show you.',
    unsure: 'Then we take it as painted again until the gauge says otherwise.',
  },
  keys: {
    'weak-battery': 'Then we keep it on a battery support, by the maker’s rules.',
    'code-needed': 'Please bring the code. Until we have it, the battery stays connected.',
    'one-key': 'Then it hangs in one place with your name, and nobody locks it in.',
    none: 'Good: nothing to plan for there.',
    unsure: 'Then we test the battery on arrival, before doors stand open for hours.',
  },
  'wheel-marks': {
    stickers: 'We warm and lift them, wheel by wheel. What is under them has kept its shade.',
    kerbed: 'Scrapes stay: filling and painting them is a wheel shop’s work.',
    'caliper-letters': 'We mask the letters, and keep cleaner and coating off them.',
    none: 'Then the rims can be cleaned and coated as they are.',
    unsure: 'We look when the wheels are off, before any cleaner.',
  },
  'protection-when': {
    'this-year': 'A young layer must come off by polishing, and that takes longest.',
    'some-years': 'Then patches of it are left. We find them by how water runs off.',
    'long-ago': 'Then most of it has worn away, and a wash takes the rest.',
    unsure: 'The first wash shows by how water runs off.',
  },
  changes: {
    'air-ride': 'Then it is lifted only in the mode its maker names. Please show us how.',
    'added-wiring': 'Then no jet goes near it, and we try its lamps with you before and after.',
    'body-kit': 'Stuck-on edges can lift. We wash them by hand and read no paint there.',
    none: 'Then it is lifted and washed as it left the factory.',
    unsure: 'We walk round it for added parts before water and lift.',
  },
  'other-work': {
    repaint: 'Paint first, then months of rest, then wax or coating. We plan around it.',
    dents: 'Dents come out before we polish, so that it is polished once.',
    glass: 'Glass first: its primer and cutting wire mark fresh paint work.',
    upholstery: 'Then we clean what stays, and not what is being replaced.',
    workshop: 'Repairs first. Oily hands on a fresh coating cost you the shine.',
    none: 'Then nothing has to wait for another trade.',
  },
  'owner-check': {
    'since-wrong': 'Please change that year above. Until then we trust none of its past.',
    'car-year-wrong': 'Please change the year of the car above: the paint hangs on it.',
    'more-owners': 'Then what came before you is hearsay, and readings decide.',
    unsure: 'Then we trust none of its past, and readings decide.',
  },
  terms: {
    'return-terms': 'Then we ask for those terms before we polish, coat or strip anything.',
    'paint-warranty': 'Then ask whether polishing or coating ends it. We wait for the answer.',
    none: 'Then only the paint itself sets the limits.',
    unsure: 'Please look before the day. We do nothing that cannot be undone until then.',
  },
  'bring-how': {
    trailer: 'Good. We need to know its length, and push it the last yards together.',
    'need-transport': 'Then ask for a transporter early. It may decide the day.',
    'drive-it': 'Please do not, until a workshop has looked at it. A trailer is safer.',
  },
  'place-has': {
    all: 'Then washing and light work can be done there. Coating still depends on dust and cold.',
    open: 'Without a roof we neither polish nor coat there. We wash and clean, if it is dry.',
    lacks: 'We would have to bring what is missing: {lacks:words}. That adds time.',
  },
  insured: {
    yes: 'Thank you. We note who drove and how far.',
    no: 'Then it stays off the road, and a transporter or you move it.',
    unsure: 'Please ask your insurer. Until then it stays off the road.',
  },
  contact: {
    email: 'Thank you. The quote comes by mail, with every reason beside its line.',
    phone: 'Thank you. We ring you if something must be decided.',
  },
})
