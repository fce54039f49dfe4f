import type { FC } from 'hono/jsx'

export type HatchingProps = {
  /** µm that may still come off; null: cannot be read. */
  readonly allowance: number | null
}

const WIDTH = 96
const HEIGHT = 16
const MOST_LINES = 9
/** One line for every half a micrometre, so that a light step and a cut look different. */
const PER_LINE_UM = 0.5

export const hatchLines = (allowance: number): number =>
  Math.max(0, Math.min(MOST_LINES, Math.floor(allowance / PER_LINE_UM)))

/** How much is left as lines in a plain rectangle: none is an empty one, unreadable a dotted one. */
export const Hatching: FC<HatchingProps> = ({ allowance }) => {
  const lines = allowance === null ? 0 : hatchLines(allowance)
  const strokes = Array.from({ length: lines }, (_, i) => `M${4 + i * 10} 15L${12 + i * 10} 1`)
  return (
    <svg class="hatch" width={WIDTH} height={HEIGHT} aria-hidden="true">
      <rect
        x="0.5"
        y="0.5"
        width={WIDTH - 1}
        height={HEIGHT - 1}
        stroke-dasharray={allowance === null ? '2 3' : undefined}
      />
      {strokes.length > 0 ? <path d={strokes.join('')} /> : null}
    </svg>
  )
}
