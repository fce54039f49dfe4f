import type { Adjustment } from '../../docket/kinds'
import { typedNumber } from '../../intake/typed-number'
import { parseDate } from '../../kernel/calendar'
import { minorFromDecimal } from '../../kernel/currency'
import { POLISH_LEVELS } from '../../quote/context'
import type { StudioProfile } from '../../quote/studio-profile'
import { type Fault, tooLong } from '../http/problem'
import type { Form } from '../route'
import { typedIn, wholeOf } from './page'

type Read = {
  readonly adjustments: readonly Adjustment[]
  readonly faults: readonly Fault[]
  /** Asked on this quote alone; absent: as in the settings. */
  readonly deposit: number | undefined
  readonly validDays: number | undefined
}

type Whole =
  | 'discount'
  | 'discount-share'
  | 'surcharge'
  | 'travel'
  | 'bay-days'
  | 'people'
  | 'start'
type WithoutWhy<A> = A extends unknown ? Omit<A, 'why'> : never
type Bare = WithoutWhy<Extract<Adjustment, { kind: Whole }>>

/** Names after a prefix, each once: the panels or notes a form speaks of. */
const namesAfter = (form: Form, prefix: string): readonly string[] => [
  ...new Set(
    form.entries.flatMap(([name]) => (name.startsWith(prefix) ? [name.slice(prefix.length)] : [])),
  ),
]

const levelsOf = (form: Form, reason: (field: string) => string): readonly Adjustment[] => {
  const chosen = (field: string) => POLISH_LEVELS.find((l) => l === form.get(field))
  const car = chosen('level')
  const panels = namesAfter(form, 'level:').flatMap((panel) => {
    const level = chosen(`level:${panel}`)
    return level ? [{ panel, level }] : []
  })
  const all = [...(car ? [{ level: car }] : []), ...panels]
  if (all.length === 0) return []
  const why = reason('level-why')
  return all.map((a) => ({ kind: 'level', ...a, why }))
}

const notesOf = (form: Form, reason: (field: string) => string): readonly Adjustment[] => {
  const notes = namesAfter(form, 'waive:')
  if (notes.length === 0) return []
  const why = reason('note-why')
  return notes.map((note) => ({ kind: 'waive-note', note: note.slice(0, 64), why }))
}

/**
 * The adjust form as adjustments in the order of the lines. A change without a reason is a fault
 * beside its field: nothing is changed silently.
 */
export const adjustmentsOf = (
  form: Form,
  currency: string,
  newStep: () => string,
  own: NonNullable<StudioProfile['ownSteps']> = [],
): Read => {
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
    const typed = typedIn(form, field)
    if (typed === undefined) return undefined
    const minor = minorFromDecimal(typedNumber(typed) ?? typed, currency)
    if (minor.ok && minor.value >= 0) return minor.value
    fault(field, 'ERR_NUMBER')
    return undefined
  }
  const textWithin = (field: string, most: number): string | undefined => {
    const typed = typedIn(form, field)
    if (typed === undefined || typed.length <= most) return typed
    faults.push(tooLong(`/${field}`, typed, most))
    return typed
  }
  const reason = (field: string): string => {
    const why = textWithin(field, 500)
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
    const cap = minutesOf(`cap:${step}`)
    if (minutes === undefined && amount === undefined && !cap && !remove) continue
    const why = reason(`why:${step}`)
    if (remove) adjustments.push({ kind: 'remove', step, why })
    else {
      if (minutes !== undefined) adjustments.push({ kind: 'minutes', step, minutes, why })
      if (amount !== undefined) adjustments.push({ kind: 'price', step, amount, why })
      if (cap) adjustments.push({ kind: 'by-time', step, capMinutes: cap, why })
    }
  }
  for (const what of ['add', 'sublet'] as const) {
    const picked = what === 'add' ? own.find((s) => s.name === form.get('own-work')) : undefined
    const name = textWithin(`${what}-name`, 200) ?? picked?.name
    if (name === undefined) continue
    const amount = moneyOf(`${what}-price`) ?? picked?.amount
    const minutes = what === 'add' ? (minutesOf('add-minutes') ?? picked?.minutes ?? 0) : 0
    const why = reason(`${what}-why`)
    const step = newStep()
    if (what === 'add')
      adjustments.push({
        kind: 'add',
        step,
        name,
        minutes,
        why,
        ...(amount === undefined ? {} : { amount }),
      })
    else if (amount === undefined) fault('sublet-price', 'ERR_REQUIRED')
    else adjustments.push({ kind: 'sublet', step, name, cost: amount, why })
  }
  adjustments.push(...levelsOf(form, reason), ...notesOf(form, reason))
  const numberOf = (field: string, most: number): number | undefined => {
    const typed = typedIn(form, field)
    if (typed === undefined) return undefined
    const n = Number(typedNumber(typed) ?? Number.NaN)
    if (n >= 0 && n <= most) return n
    fault(field, 'ERR_NUMBER')
    return undefined
  }
  const wholeIn = (field: string, least: number, most: number): number | undefined => {
    const n = wholeOf(form, field)
    if (n === undefined || (n >= least && n <= most)) return n
    fault(field, 'ERR_NUMBER')
    return undefined
  }
  const begins = typedIn(form, 'begins')
  if (begins !== undefined && !parseDate(begins).ok) fault('begins', 'ERR_DATE')
  const discount = moneyOf('discount')
  const surcharge = moneyOf('surcharge')
  const share = numberOf('discount-share', 100)
  const km = numberOf('travel', 2000)
  const days = wholeIn('bay-days', 0, 365)
  const people = wholeIn('people', 1, 6)
  const whole: Bare[] = [
    ...(discount ? [{ kind: 'discount' as const, amount: discount }] : []),
    ...(share ? [{ kind: 'discount-share' as const, basisPoints: Math.round(share * 100) }] : []),
    ...(surcharge ? [{ kind: 'surcharge' as const, amount: surcharge }] : []),
    ...(km === undefined ? [] : [{ kind: 'travel' as const, metres: Math.round(km * 1000) }]),
    ...(days === undefined ? [] : [{ kind: 'bay-days' as const, days }]),
    ...(people === undefined ? [] : [{ kind: 'people' as const, people }]),
    ...(begins === undefined ? [] : [{ kind: 'start' as const, day: begins }]),
  ]
  if (whole.length > 0) {
    const why = reason('whole-why')
    adjustments.push(...whole.map((a) => ({ ...a, why })))
  }
  return {
    adjustments,
    faults,
    deposit: moneyOf('deposit'),
    validDays: wholeIn('valid-days', 1, 365),
  }
}
