/** A whole number as typed (`12 000`, `12,000`); undefined for nothing, NaN for what is none. */
export const typedWhole = (typed: string | null): number | undefined => {
  const text = typed?.trim() ?? ''
  if (text === '') return undefined
  const bare = text.replace(/[\s.,](?=\d{3}\b)/g, '')
  return /^\d{1,9}$/.test(bare) ? Number(bare) : Number.NaN
}
