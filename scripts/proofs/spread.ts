import { spread } from '../../src/quote/spread'
import { plainMonteCarlo, sampleQuantile } from '../../tests/montecarlo/plain-monte-carlo'
import { randomDocket } from '../../tests/montecarlo/random-docket'
import { gaps, range } from './figures'
import type { Found } from './proof'

/** How far the closed spread lies from a plain Monte Carlo of the same car. */
export const proveSpread = (cars: number, draws: number): Found => {
  const labour: number[] = []
  const price: number[] = []
  const mean: number[] = []
  for (const seed of range(cars)) {
    const docket = randomDocket(seed)
    const drawn = plainMonteCarlo(docket, draws, 1000 + seed)
    const got = spread(docket)
    for (const p of [0.1, 0.5, 0.9]) {
      labour.push(Math.abs(got.labourQuantile(p) / sampleQuantile(drawn.labour, p) - 1))
      price.push(Math.abs(got.priceQuantile(p) / sampleQuantile(drawn.price, p) - 1))
    }
    const total = drawn.price.reduce((a, b) => a + b, 0) / draws
    mean.push(Math.abs(got.price.mean / total - 1))
  }
  return {
    holds: Math.max(...labour, ...price) < 0.01 && Math.max(...mean) < 0.005,
    figures: [
      ['cars × draws', `${cars} × ${draws}`],
      gaps('labour at 10, 50, 90 %', labour),
      gaps('price at 10, 50, 90 %', price),
      gaps('mean price', mean),
    ],
  }
}
