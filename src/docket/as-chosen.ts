import type { Revision } from './fold'

/** A revision as it stands with one of its options; without options, or before one is chosen, as it is. */
export const asChosen = (revision: Revision, option: string | undefined): Revision => {
  const found = revision.options?.find((o) => o.option === option)
  if (!found) return revision
  const { digest, adjustments, offer, minutes, ready } = found
  return { ...revision, digest, adjustments, offer, minutes, ready }
}
