import type { Line } from '../../docket/line'
import { typedApart } from '../../docket/typed-apart'
import type { Own } from '../../pages/bench/carried'
import type { Queued } from './queue'

/** Lines of this device as the docket will hold them, after all that has arrived. */
export const ownLines = (queued: readonly Queued[], rev: number): Own => {
  const lines: Line[] = []
  const texts: Record<string, string> = {}
  for (const q of queued) {
    let made = 0
    const apart = typedApart(q.kind, q.body, () => {
      made += 1
      return `${q.id}-${made}`
    })
    for (const { id, text } of apart.texts) texts[id] = text
    const { id, docket, kind, device, n, at } = q
    const seq = rev + 1 + lines.length
    lines.push({ docket, seq, id, v: 1, kind, body: apart.body, by: 'bench', device, n, at })
  }
  return { lines, texts }
}
