import { steps as catalogue } from '../quote/steps'
import type { Before } from './sheet'

/**
 * What has to be done before each of these steps, by the catalogue and kept to these steps. Beside
 * the sheet, not in it: a browser is given the answer and need not load the catalogue.
 */
export const beforeOf = (steps: readonly { readonly id: string }[]): Before => {
  const ids = new Set(steps.map((s) => s.id))
  return Object.fromEntries(
    catalogue
      .filter((rule) => ids.has(rule.id))
      .map((rule) => [rule.id, rule.after.filter((id) => ids.has(id))]),
  )
}
