import { engineSection } from '../bench/engine'
import { rulesSection } from '../bench/rules'
import { scriptSection } from '../bench/script'
import type { Found } from './proof'

/** The comparisons of `npm run bench` that say how many times as fast; absolute times are no proof. */
export const proveComparisons = async (): Promise<Found> => {
  const found = []
  for (const section of [engineSection, rulesSection, scriptSection]) {
    const { targets } = await section.run()
    found.push(...targets.filter((t) => t.wanted.endsWith('×')))
  }
  return {
    holds: found.every((t) => t.met),
    figures: found.map((t) => [`${t.what}, wanted ${t.wanted}`, t.found]),
  }
}
