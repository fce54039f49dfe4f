export const percent = (share: number, digits = 3): string => `${(100 * share).toFixed(digits)} %`

/** 1 to n. */
export const range = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i + 1)

/** Largest and mean of the relative gaps of one kind. */
export const gaps = (name: string, all: readonly number[]): readonly [string, string] => {
  const mean = all.reduce((a, b) => a + b, 0) / all.length
  return [name, `largest ${percent(Math.max(...all))}, mean ${percent(mean)}`]
}
