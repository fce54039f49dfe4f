import { engineSection } from './engine'
import type { BenchSection } from './section'

/** Every part of `npm run bench`, in the order it runs. */
export const sections: readonly BenchSection[] = [engineSection]
