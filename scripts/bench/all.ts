import { engineSection } from './engine'
import { firstPageSection } from './first-page'
import { edgeSection, nodeSection } from './http'
import { j30Section } from './j30'
import { latencySection } from './latency'
import { rulesSection } from './rules'
import { scriptSection } from './script'
import type { BenchSection } from './section'

/** Every part of `npm run bench`, in the order it runs. */
export const sections: readonly BenchSection[] = [
  engineSection,
  rulesSection,
  scriptSection,
  j30Section,
  nodeSection,
  edgeSection,
  latencySection,
  firstPageSection,
]
