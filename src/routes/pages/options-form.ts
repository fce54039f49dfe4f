import { LETTERS } from '../../quote/options/option'
import { TREATMENTS } from '../../quote/options/treatment'
import type { OptionPointer, OptionTyped } from '../acts/revising-options'
import type { Form } from '../route'
import { textOf } from './page'

/**
 * The options of the adjust form in their order, and where a fault of each stands. Throws 422 for
 * words that are too long.
 */
export const optionsOf = (
  form: Form,
): { readonly options: readonly OptionTyped[]; readonly optionAt: OptionPointer } => {
  const rows = LETTERS.flatMap((letter) => {
    const treatment = TREATMENTS.find((t) => t === form.get(`option-${letter}`))
    if (treatment === undefined) return []
    const panels = form.all(`option-${letter}-panels[]`)
    const text = textOf(form, `option-${letter}-text`, 500)
    return [{ letter, option: { treatment, panels, text } }]
  })
  return {
    options: rows.map((r) => r.option),
    optionAt: (n) => `/option-${rows[n]?.letter ?? 'a'}`,
  }
}
