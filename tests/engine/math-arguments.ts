/** The functions the engine may use whose last bit an engine could choose for itself. */
export const MATH_NAMES = ['exp', 'log', 'sqrt'] as const
export type MathName = (typeof MATH_NAMES)[number]

const STEPS = 4000

/** From -40 to 40 in uneven steps, and the same squeezed close to 0. */
export const MATH_ARGUMENTS: readonly number[] = Array.from({ length: STEPS }, (_, i) => {
  const x = ((i - STEPS / 2) * 80) / (STEPS + 0.7)
  return [x, x / 65_536]
}).flat()
