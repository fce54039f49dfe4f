import { typedNumber } from '../../intake/typed-number'
import { parseDate } from '../../kernel/calendar'
import { minorFromDecimal } from '../../kernel/currency'
import { SETTING_FIELDS, type SettingField } from '../../pages/studio/setting-fields'
import type { StudioProfile } from '../../quote/studio-profile'
import type { Fault } from '../http/problem'
import type { Form } from '../route'
import { isZoneName } from '../zone'

const clock = (text: string): number | null => {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim())
  if (!match) return null
  const minutes = Number(match[1]) * 60 + Number(match[2])
  return Number(match[2]) < 60 && minutes <= 1440 ? minutes : null
}

/** "08:00-12:00, 12:45-17:00" as spans; null for what cannot be read. */
const spansOf = (text: string): { from: number; to: number }[] | null => {
  if (text.trim() === '') return []
  const spans: { from: number; to: number }[] = []
  for (const part of text.split(',')) {
    const [a = '', b = ''] = part.split(/[-–]/)
    const from = clock(a)
    const to = clock(b)
    if (from === null || to === null || from >= to) return null
    spans.push({ from, to })
  }
  return spans
}

/** "Ada; 2026-07-01; 2026-07-10" a line, one day without the last; null for what cannot be read. */
const absencesOf = (text: string): { name: string; from: string; to: string }[] | null => {
  const rows = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter(Boolean)
  const found: { name: string; from: string; to: string }[] = []
  for (const row of rows) {
    const [name = '', from = '', to = from] = row.split(';').map((part) => part.trim())
    if (name === '' || !parseDate(from).ok || !parseDate(to).ok || to < from) return null
    found.push({ name, from, to })
  }
  return found
}

const settingOf = (field: SettingField, typed: string, currency: string): unknown => {
  if (field.kind === 'money') {
    const minor = minorFromDecimal(typedNumber(typed) ?? typed, currency)
    return minor.ok ? minor.value : null
  }
  if (field.kind === 'share' || field.kind === 'number') {
    const plain = typedNumber(typed)
    if (plain === undefined) return null
    return field.kind === 'share' ? Math.round(Number(plain) * 10_000) : Number(plain)
  }
  if (field.kind === 'choice' && (typed === 'true' || typed === 'false')) return typed === 'true'
  return typed
}

/** The posted settings form as a profile, with a fault for each field that cannot be read. */
export const profileOfForm = (
  form: Form,
  was: StudioProfile,
): { readonly profile: Record<string, unknown>; readonly faults: readonly Fault[] } => {
  const faults: Fault[] = []
  const profile: Record<string, unknown> = { ...was }
  const currency = form.get('currency')?.trim().toUpperCase() || was.currency
  for (const { fields } of SETTING_FIELDS)
    for (const field of fields) {
      const typed = form.get(field.name)
      if (typed === null) continue
      const value = settingOf(field, field.name === 'currency' ? currency : typed.trim(), currency)
      if (value === null) faults.push({ pointer: `/${field.name}`, code: 'ERR_VALUE' })
      else profile[field.name] = value
    }
  if (typeof profile.timeZone === 'string' && !isZoneName(profile.timeZone))
    faults.push({ pointer: '/timeZone', code: 'ERR_VALUE' })
  const week = was.week.map((spans, day) => {
    const typed = form.get(`week-${day}`)
    if (typed === null) return spans
    const read = spansOf(typed)
    if (read === null) faults.push({ pointer: `/week-${day}`, code: 'ERR_VALUE' })
    return read ?? spans
  })
  if (week.every((spans) => spans.length === 0))
    faults.push({ pointer: '/week', code: 'ERR_VALUE' })
  profile.week = week
  const off = form.get('daysOff')
  if (off !== null) profile.daysOff = off.split(/[\s,]+/).filter(Boolean)
  const away = form.get('absences')
  if (away !== null) {
    const read = absencesOf(away)
    if (read === null) faults.push({ pointer: '/absences', code: 'ERR_ABSENCE' })
    else profile.absences = read
  }
  profile.kit = form.all('kit[]')
  return { profile, faults }
}
