import { earlierProtection } from '../questions/earlier-protection'
import { type ProtectionWhen, protectionWhen } from '../questions/protection-when'
import type { Reader } from '../reader'
import { has } from './has'

/** How much of a layer is left to strip by when it was put on (own estimate). */
const LEFT: Readonly<Record<ProtectionWhen, number>> = {
  'this-year': 1,
  'some-years': 0.7,
  'long-ago': 0.4,
}

/** Share of the work of stripping an old coating or silicone, 0 (none there) to 1; a young one when nobody knows. */
export const layerFactor = (r: Reader): number =>
  has(r, earlierProtection, 'coating', 'silicone')
    ? LEFT[r.value(protectionWhen) ?? 'this-year']
    : 0
