import { probeMode } from './gauge'
import { type Read, readSets } from './readings'
import {
  type Gauge,
  type PaintSet,
  type PanelFacts,
  type PanelSubstrate,
  type Why,
  why,
} from './types'

const substrateOf = (panel: string, panels: readonly PanelFacts[]): PanelSubstrate =>
  panels.find((p) => p.panel === panel)?.substrate ?? 'unknown'

/** An unknown metal is compared with any metal read by the same kind of probe, never across magnetic and eddy. */
const comparable = (a: string, b: string): boolean => {
  if (a === b) return true
  const [probeA, metalA] = a.split('/')
  const [probeB, metalB] = b.split('/')
  if (metalA !== undefined && metalB !== undefined) return false
  return (
    probeA === probeB ||
    (probeA === 'dual' && metalB !== undefined) ||
    (probeB === 'dual' && metalA !== undefined)
  )
}

/**
 * The reference for a panel read in `mode`: its own when it has a usable one, else every comparable one of the
 * car together. Probe modes and metals are never mixed.
 */
export const referenceFor = (
  panel: string,
  mode: string,
  references: readonly PaintSet[],
  panels: readonly PanelFacts[],
  gauge: Gauge,
): { readonly read: Read | null; readonly whys: readonly Why[] } => {
  const same = references.filter((set) =>
    comparable(probeMode(set, substrateOf(set.panel, panels)), mode),
  )
  const whys: Why[] = []
  if (same.length === 0 && references.length > 0)
    whys.push(why('paint.why.reference-not-comparable'))
  for (const sets of [same.filter((set) => set.panel === panel), same]) {
    if (sets.length === 0) continue
    const bySubstrate = substrateOf(sets[0]!.panel, panels)
    const read = readSets(
      sets.filter((s) => substrateOf(s.panel, panels) === bySubstrate),
      bySubstrate,
      gauge,
    )
    if (read.total !== null) return { read, whys }
    whys.push(...read.whys)
  }
  return { read: null, whys }
}
