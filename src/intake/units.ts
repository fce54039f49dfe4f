/** One of each unit in the base unit its question keeps; a mile is 1609.344 m exactly (NIST SP 811, appendix B). */
const IN_BASE: Readonly<Record<string, number>> = {
  km: 1,
  miles: 1.609344,
  weeks: 1,
  years: 1,
}

/** An amount in the base unit; undefined for a unit nobody knows. */
export const toBase = (amount: number, unit: string): number | undefined => {
  const one = IN_BASE[unit]
  return one === undefined ? undefined : amount * one
}
