import type { Adjustment } from '../../docket/kinds'
import { typedNumber } from '../../intake/typed-number'
import { minorFromDecimal } from '../../kernel/currency'
import type { Fault } from '../http/problem'
import type { Form } from '../route'
import { textOf, wholeOf } from './page'

type Read = { readonly adjustments: readonly Adjustment[]; readonly faults: readonly Fault[] }

/**
 * The adjust form as adjustments in the order of the lines. A change without a reason is a fault
 * beside its field: nothing is changed silently.
 */
export const adjustmentsOf = (form: Form, currency: string, newStep: () => string): Read => {
  const adjustments: Adjustment[] = []
  const faults: Fault[] = []
  const fault = (field: string, code: string): void => {
    faults.push({ pointer: `/${field}`, code })
  }
  const minutesOf = (field: string): number | undefined => {
    const n = wholeOf(form, field)
    if (n !== undefined && !(n >= 0 && n <= 100_000)) {
      fault(field, 'ERR_NUMBER')
      return undefined
    }
    return n
  }
  const moneyOf = (field: string): number | undefined => {
    const typed = textOf(form, field)
    if (typed === undefined) return undefined
    const minor = minorFromDecimal(typedNumber(typed) ?? typed, currency)
    if (minor.ok && minor.value >= 0) return minor.value
    fault(field, 'ERR_NUMBER')
    return undefined
  }
  const reason = (field: string): string => {
    const why = textOf(form, field)?.slice(0, 500)
    if (why === undefined) fault(field, 'ERR_REQUIRED')
    return why ?? '-'
  }
  const steps = form.entries.flatMap(([name]) =>
    name.startsWith('minutes:') ? [name.slice('minutes:'.length)] : [],
  )
  for (const step of new Set(steps)) {
    const minutes = minutesOf(`minutes:${step}`)
    const amount = moneyOf(`price:${step}`)
    const remove = form.get(`remove:${step}`) !== null
    if (minutes === undefined && amount === undefined && !remove) continue
    const why = reason(`why:${step}`)
    if (remove) adjustments.push({ kind: 'remove', step, why })
    else {
      if (minutes !== undefined) adjustments.push({ kind: 'minutes', step, minutes, why })
      if (amount !== undefined) adjustments.push({ kind: 'price', step, amount, why })
    }
  }
  const name = textOf(form, 'add-name')?.slice(0, 200)
  if (name !== undefined) {
    const minutes = minutesOf('add-minutes') ?? 0
    const amount = moneyOf('add-price')
    const why = reason('add-why')
    const step = newStep()
    adjustments.push({
      kind: 'add',
      step,
      name,
      minutes,
      why,
      ...(amount === undefined ? {} : { amount }),
    })
  }
  const discount = moneyOf('discount')
  const people = wholeOf(form, 'people')
  if (people !== undefined && !(people >= 1 && people <= 6)) fault('people', 'ERR_NUMBER')
  if (discount !== undefined && discount > 0)
    adjustments.push({ kind: 'discount', amount: discount, why: reason('whole-why') })
  if (people !== undefined && people >= 1 && people <= 6)
    adjustments.push({
      kind: 'people',
      people,
      why: textOf(form, 'whole-why') ?? reason('whole-why'),
    })
  return { adjustments, faults }
}
