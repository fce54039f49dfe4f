import type { FC } from 'hono/jsx'
import type { RecordPanel } from '../../jobsheet/record'
import type { Words } from '../../words/render'

const ROW = 22
const LEFT = 4
const WIDTH = 92

/** Where readings lie on one line, in percent of the drawing: the thinnest at the left, the thickest at the right. */
export const plotPlaces = (panels: readonly Pick<RecordPanel, 'before' | 'after'>[]) => {
  const read = panels.flatMap((p) => [p.before, p.after]).filter((v) => v !== null)
  const low = Math.min(...read)
  const width = Math.max(1, Math.max(...read) - low)
  const place = (v: number | null): number | null =>
    v === null ? null : LEFT + ((v - low) / width) * WIDTH
  return panels.map((p) => ({ before: place(p.before), after: place(p.after) }))
}

/**
 * Readings before and after on one line per panel: an open ring before, a full dot after, all to one
 * scale. The table above says the same in figures, so the drawing is not read out again.
 */
export const ReadingsPlot: FC<{
  readonly words: Words
  readonly panels: readonly RecordPanel[]
}> = ({ words, panels }) => {
  const shown = panels.filter((p) => p.before !== null || p.after !== null)
  if (shown.length < 2) return null
  const places = plotPlaces(shown)
  return (
    <figure class="readings">
      <figcaption>{words.say('page.record.plot')}</figcaption>
      {shown.map((p, i) => {
        const at = places[i]
        return (
          <p>
            <span>{words.say(`panel.${p.panel}`)}</span>
            <svg width="100%" height={ROW} aria-hidden="true">
              <line class="thin" x1={`${LEFT}%`} x2={`${LEFT + WIDTH}%`} y1="11" y2="11" />
              {at?.before == null ? null : (
                <circle class="ring" cx={`${at.before.toFixed(2)}%`} cy="11" r="6" />
              )}
              {at?.after == null ? null : <circle cx={`${at.after.toFixed(2)}%`} cy="11" r="3" />}
            </svg>
          </p>
        )
      })}
    </figure>
  )
}
