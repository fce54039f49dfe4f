import { typedNumber } from '../../intake/typed-number'
import { minorFromDecimal } from '../../kernel/currency'
import type { StudioProfile } from '../../quote/studio-profile'
import type { Fault } from '../http/problem'
import type { Form } from '../route'

const after = (form: Form, prefix: string): readonly (readonly [string, string])[] =>
  form.entries.flatMap(([name, value]) =>
    name.startsWith(prefix) ? [[name.slice(prefix.length), value.trim()] as const] : [],
  )

const linesOf = (form: Form, name: string): readonly string[] =>
  (form.get(name) ?? '')
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter(Boolean)

/** The posted form of work, thresholds and words as a profile, with a fault for what cannot be read. */
export const workOfForm = (
  form: Form,
  was: StudioProfile,
): { readonly profile: Record<string, unknown>; readonly faults: readonly Fault[] } => {
  const faults: Fault[] = []
  const number = (field: string, typed: string): number | undefined => {
    if (typed === '') return undefined
    const n = Number(typedNumber(typed) ?? Number.NaN)
    if (Number.isFinite(n)) return n
    faults.push({ pointer: `/${field}`, code: 'ERR_NUMBER' })
    return undefined
  }
  const steps: Record<string, { pace?: number; off?: boolean }> = {}
  for (const [id, typed] of after(form, 'pace:')) {
    const percent = number(`pace:${id}`, typed)
    if (percent !== undefined && !(percent >= 25 && percent <= 400))
      faults.push({ pointer: `/pace:${id}`, code: 'ERR_PACE' })
    const off = form.get(`off:${id}`) !== null
    if (percent === undefined && !off) continue
    steps[id] = {
      ...(percent === undefined ? {} : { pace: Math.round(percent * 10) / 1000 }),
      ...(off ? { off } : {}),
    }
  }
  const limits = Object.fromEntries(
    after(form, 'limit:').flatMap(([key, typed]) => {
      const value = number(`limit:${key}`, typed)
      return value === undefined ? [] : [[key, value]]
    }),
  )
  const wording = Object.fromEntries(after(form, 'word:').filter(([, text]) => text !== ''))
  const ownSteps = linesOf(form, 'ownSteps').flatMap((line) => {
    const [name = '', minutes = '', price] = line.split(';').map((part) => part.trim())
    const n = Number(minutes)
    const minor = price ? minorFromDecimal(typedNumber(price) ?? price, was.currency) : undefined
    if (name === '' || minutes === '' || !Number.isInteger(n) || minor?.ok === false) {
      faults.push({ pointer: '/ownSteps', code: 'ERR_OWN_STEP' })
      return []
    }
    return [{ name, minutes: n, ...(minor?.ok ? { amount: minor.value } : {}) }]
  })
  const known = was.ownQuestions ?? []
  let next = known.reduce((most, q) => Math.max(most, Number(q.id.slice(4)) || 0), 0)
  const ownQuestions = linesOf(form, 'ownQuestions').map((prompt) => {
    const same = known.find((q) => q.prompt === prompt)
    if (same) return same
    next += 1
    return { id: `own-${next}`, prompt }
  })
  const team = linesOf(form, 'team').flatMap((line) => {
    const [name = '', rights = 'bench'] = line.split(';').map((part) => part.trim())
    if (name !== '' && (rights === 'owner' || rights === 'bench')) return [{ name, rights }]
    faults.push({ pointer: '/team', code: 'ERR_TEAM' })
    return []
  })
  return { profile: { ...was, steps, limits, wording, ownSteps, ownQuestions, team }, faults }
}

/** The field of the form a fault of the profile stands beside. */
export const workField = (pointer: string): string => {
  const [, first = '', second] = pointer.split('/')
  if (first === 'limits' && second) return `/limit:${second}`
  if (first === 'wording' && second) return `/word:${second}`
  if (first === 'steps' && second) return `/pace:${second}`
  return `/${first}`
}
