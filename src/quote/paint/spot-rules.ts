/** How many readings a surface asks for. */
export type ReadingPlan = {
  readonly areas: number
  readonly spots: number
  readonly readings: number
}

/**
 * SSPC-PA 2: every 100 ft² up to 300, three areas up to 1,000 ft², one more for each further 1,000 or part; five
 * spots an area and at least three readings a spot, inside 4 cm. A car panel is one area: five full spots.
 */
export const readingPlan = (surfaceFt2: number): ReadingPlan => {
  const areas =
    surfaceFt2 < 300
      ? Math.max(1, Math.ceil(surfaceFt2 / 100))
      : 3 + Math.max(0, Math.ceil((surfaceFt2 - 1000) / 1000))
  return { areas, spots: areas * 5, readings: areas * 15 }
}

/**
 * SSPC-PA 2 default rule for a specified span: an area mean stays inside it, a spot mean may go to 80 % of the
 * least and 120 % of the most; a single reading is not judged. Any one unit.
 */
export const spotLimits = (
  least: number,
  most: number,
): { readonly low: number; readonly high: number } => ({ low: 0.8 * least, high: 1.2 * most })
