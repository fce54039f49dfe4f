import { scenarioCars } from '../../src/quote/steps/scenario-cars'
import { answersOf } from '../../src/quote/steps/step-bench'

const names: Readonly<Record<string, string>> = {
  S1: 'red-coupe-old-film',
  S2: 'black-hatchback-new',
  S3: 'seven-seater-soaked',
  S4: 'resprayed-saloon',
  S5: 'matte-sports-car',
  S6: 'freshly-sprayed-bonnet',
  S7: 'convertible-damp',
  S8: 'crossover-film-begun',
  S9: 'estate-smoke-and-hair',
  S10: 'lacquer-saloon-nest',
}

/** Cars whose whole estimate is kept as text for a detailer to read. */
export const goldenCars = scenarioCars.flatMap((s) => {
  const file = names[s.id]
  return file === undefined ? [] : [{ file, title: s.name, answers: answersOf(s.car, s.unsure) }]
})
