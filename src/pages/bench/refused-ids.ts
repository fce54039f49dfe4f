import { type Kept, keptOne } from '../frame'
import { lineFieldId } from './line-field'

/** Kinds whose fields bear ids of their own, each named after its kind. */
const OWN_IDS = new Set([
  'checked-in',
  'gauge-checked',
  'polished',
  'allowed',
  'removed',
  'film-answered',
  'timer-set',
  'crew-changed',
  'stayed-overnight',
  'recorded',
  'wanted',
])

/** Fields of the refused form that bear an id of their own. */
export const idsOf = (kept: Kept | undefined): Readonly<Record<string, string>> => {
  const kind = keptOne(kept, 'kind')
  const all = (of: string): Readonly<Record<string, string>> =>
    Object.fromEntries(Object.keys(kept ?? {}).map((name) => [name, lineFieldId(of, name)]))
  if (OWN_IDS.has(kind)) return { ...all(kind), file: `f-${kind}-file` }
  switch (kind) {
    case 'found': {
      const of = keptOne(kept, 'arrival') ? 'damage' : 'found'
      return { ...all(of), file: `f-${of}-file` }
    }
    case 'extra-asked':
      return { text: 'f-extra', ifNot: 'f-extra-if-not', minutes: 'f-extra-minutes' }
    case 'extra-decided':
      return { name: `f-phone-${keptOne(kept, 'extra')}` }
    case 'supplied':
      return all(`supplied-${keptOne(kept, 'item')}`)
    case 'struck':
      return all(`struck-${keptOne(kept, 'line')}`)
    case 're-issued':
      return { text: 'f-re-issue', net: 'f-re-issue-net' }
    case 're-issue-decided':
      return { name: 'f-re-issue-name' }
    case 'unreadable':
      return { panel: 'f-unreadable-panel', why: 'f-unreadable-why' }
    case 'checked':
      return { why: `f-waive-${keptOne(kept, 'check')}` }
    default:
      return {}
  }
}
