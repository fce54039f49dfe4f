import type { FC } from 'hono/jsx'

export type SpanBarProps = {
  readonly low: number
  readonly likely: number
  readonly high: number
  /** The customer's own limit: a second, broken tick. */
  readonly tick?: number
  readonly lowText: string
  readonly likelyText: string
  readonly highText: string
}

/** Kept free at both ends; a limit outside the range stands in it, half way to the edge. */
const MARGIN = 4

/**
 * Where a value stands on the line, as a share of the drawing's width. The range fills it from end to
 * end, above the figures written beneath; a limit far outside is drawn just outside, not to scale.
 */
export const spanPlaces = (p: Pick<SpanBarProps, 'low' | 'likely' | 'high' | 'tick'>) => {
  const width = p.high - p.low
  const place = (v: number): string => {
    const share = width <= 0 ? 0.5 : (v - p.low) / width
    const at = MARGIN + share * (100 - 2 * MARGIN)
    const inside = share < 0 ? MARGIN / 2 : share > 1 ? 100 - MARGIN / 2 : at
    return `${inside.toFixed(2)}%`
  }
  return {
    low: place(p.low),
    likely: place(p.likely),
    high: place(p.high),
    tick: p.tick === undefined ? null : place(p.tick),
  }
}

/** A thin line from low to high, a tick at likely, and the three figures in words beneath. */
export const SpanBar: FC<SpanBarProps> = (p) => {
  const x = spanPlaces(p)
  return (
    <>
      <svg class="span" width="100%" height="36" aria-hidden="true">
        <line class="thin" x1={x.low} x2={x.high} y1="18" y2="18" />
        <line x1={x.low} x2={x.low} y1="11" y2="25" />
        <line x1={x.high} x2={x.high} y1="11" y2="25" />
        <line x1={x.likely} x2={x.likely} y1="5" y2="31" stroke-width="3" />
        {x.tick ? (
          <line x1={x.tick} x2={x.tick} y1="1" y2="35" stroke-width="2" stroke-dasharray="3 3" />
        ) : null}
      </svg>
      <p class="ends">
        <span class="figure">{p.lowText}</span>
        <b>{p.likelyText}</b>
        <span class="figure">{p.highText}</span>
      </p>
    </>
  )
}
