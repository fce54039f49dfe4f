import type { Catalogue } from '../render'

/** What can hurt someone or ruin a part at a step; each defers to who has the last word. */
export const stepCautionWords: Catalogue = {
  'caution.solvent':
    'Solvent vapour: open doors, gloves, no flame. The label and local rules come first.',
  'caution.film-stop':
    'Paint that starts to lift does not stop by itself. Stop at the first lift and ask; leaving the rest on must stay possible. Repair is work for a licensed paint shop.',
  'caution.film-consent':
    'No pull on a bumper or a repaint without the owner’s signed yes: leaving the film on is a real choice. Repair is work for a licensed paint shop.',
  'caution.heat-limit':
    'Keep the surface cool enough to touch, never above 60 °C, less where the maker of paint or part says so.',
  'caution.scald':
    'Steam and hot water scald. Gloves, nozzle away from hands, follow the maker of the machine.',
  'caution.edges':
    'Paint is thinnest on edges and ridges and burns through in seconds. Stay on the flat, off the tape. Burnt through is work for a licensed paint shop.',
  'caution.lacquer':
    'Old lacquer: by hand only. No solvent, alcohol, steam or eraser wheel, and no heat. Checking is permanent. Old primer may hold lead: follow local rules.',
  'caution.no-abrasive':
    'No abrasive touches this paint: it cannot be undone. Use only what the maker of paint or product allows.',
  'caution.vibration':
    'Change hands, take breaks, count machine time against the maker’s vibration figure and local limits.',
  'caution.oily-rags':
    'Oily and solvent rags can catch fire by themselves. Flat to dry or closed metal bin, as the label and local fire code say.',
  'caution.paint-vapour':
    'Paint and hardener vapours harm lungs. Touch-up by brush only, fresh air, by the label; spraying belongs to a licensed paint shop.',
  'caution.coating-label':
    'Coatings hold strong solvents: gloves, fresh air, mask as the label says. Flash and cure times are those of the label.',
  'caution.product-label':
    'Gloves, fresh air, no mixing. The label decides about surface, time and rinse.',
  'caution.acid-and-metal':
    'No acid and no fallout remover on bare, polished, anodised or hot metal. The label lists what it may touch.',
  'caution.wheel-cleaner':
    'Wheel cleaner: cold wheel, gloves, eye protection. Not on bare or polished metal unless the label allows it.',
  'caution.brake-surfaces':
    'Nothing on discs, pads and hub faces. Brake dust is not blown out. Doubt about brakes goes to a licensed workshop.',
  'caution.battery':
    'Follow the vehicle maker for connecting and support. A swollen or leaking battery goes to a licensed workshop.',
  'caution.no-jet-near-lifting-paint':
    'No jet, clay, tape or machine near lifting paint: it tears further. A licensed paint shop repairs it.',
  'caution.no-dressing':
    'No shine on pedals, steering wheel, tyre tread or brakes. The vehicle maker’s handbook decides about surfaces.',
  'caution.roof':
    'No jet, no folding while wet or cold, no product the roof maker does not allow. Old seams may split.',
  'caution.roof-window':
    'Old plastic windows crack when cold or bent. Warm, flat, by hand; follow the maker of the roof.',
  'caution.compressed-air':
    'Eye, ear and breathing protection, pressure as local work-safety rules allow. Never with mould, animals, glass, body fluids or brake dust.',
  'caution.headliner':
    'A headliner that hangs or is glued comes down when wet. Curtain airbags lie behind it: leave panels in place, as the maker says.',
  'caution.leather-test':
    'Colour may move on dry, cracked, suede or dyed leather. Hidden test first; the leather maker’s label decides. Recolouring is outside work.',
  'caution.electricity-near-water':
    'Mains tools near water only through a residual-current device, cables off the floor, as the local electrical code says.',
  'caution.dirty-water':
    'Flood water may carry sewage, fuel and germs. Gloves, mask, closed bags; past light soiling it is work for a licensed specialist.',
  'caution.licensed-trade':
    'Leaks, wiring, brakes and belts are found and repaired by a licensed trade. We record, cover and refer.',
  'caution.disinfectant':
    'Use disinfectants only as the label says, kept wet for its time. Never mix products. No label time, no timer.',
  'caution.waste':
    'Bag and drop waste, sludge and wash water as the label and local rules say. Nothing into the drain that does not belong there.',
  'caution.heated-glass':
    'Heater and aerial lines tear off with a blade or a hard rub. Follow the glass or film maker; repair is outside work.',
}
