import type { StudioProfile } from '../../quote/studio-profile'
import { fromMinor } from '../parts/money-text'

type Plain = Exclude<
  keyof StudioProfile,
  | 'week'
  | 'daysOff'
  | 'kit'
  | 'steps'
  | 'pricesWithTax'
  | 'logo'
  | 'ownQuestions'
  | 'ownSteps'
  | 'wording'
  | 'limits'
  | 'team'
  | 'absences'
>

export type SettingField =
  | {
      readonly name: Plain
      /** money: whole and decimals; share: percent; number: as it is; long: several lines. */
      readonly kind: 'text' | 'long' | 'money' | 'share' | 'number'
    }
  | {
      readonly name: Plain | 'pricesWithTax'
      readonly kind: 'choice'
      readonly values: readonly string[]
    }

/** The settings form in sections; the same table reads the posted form back. */
export const SETTING_FIELDS: readonly {
  readonly section: string
  readonly fields: readonly SettingField[]
}[] = [
  {
    section: 'studio',
    fields: [
      { name: 'name', kind: 'text' },
      { name: 'contact', kind: 'text' },
      { name: 'locale', kind: 'text' },
      { name: 'currency', kind: 'text' },
      { name: 'timeZone', kind: 'text' },
      { name: 'terms', kind: 'long' },
    ],
  },
  {
    section: 'price',
    fields: [
      { name: 'shows', kind: 'choice', values: ['range', 'from', 'after-review'] },
      { name: 'ratePerHour', kind: 'money' },
      { name: 'materialsPerHour', kind: 'money' },
      { name: 'minimumCharge', kind: 'money' },
      { name: 'bayDayRate', kind: 'money' },
      { name: 'bayDaysIncluded', kind: 'number' },
      { name: 'travelPerKm', kind: 'money' },
      { name: 'travelFreeMetres', kind: 'number' },
      { name: 'subletMarginMillionths', kind: 'share' },
      { name: 'extrasLimit', kind: 'money' },
      { name: 'roundTo', kind: 'money' },
      { name: 'depositMillionths', kind: 'share' },
      { name: 'offerPercentile', kind: 'number' },
      { name: 'validDays', kind: 'number' },
    ],
  },
  {
    section: 'tax',
    fields: [
      { name: 'taxMillionths', kind: 'share' },
      { name: 'pricesWithTax', kind: 'choice', values: ['true', 'false'] },
      { name: 'taxRounding', kind: 'choice', values: ['half-up', 'half-even', 'down'] },
      { name: 'taxBasis', kind: 'choice', values: ['line', 'total'] },
    ],
  },
  {
    section: 'people',
    fields: [
      { name: 'people', kind: 'number' },
      { name: 'bays', kind: 'number' },
      { name: 'lifts', kind: 'number' },
      { name: 'machineMinutesPerPersonDay', kind: 'number' },
      { name: 'dayCapMinutes', kind: 'number' },
      { name: 'setUpMinutesPerDay', kind: 'number' },
    ],
  },
]

/** A setting as it is typed: money with decimals, shares as percent. */
export const settingText = (p: StudioProfile, field: SettingField, exponent: number): string => {
  const value = p[field.name] ?? (field.kind === 'text' || field.kind === 'long' ? '' : 0)
  if (field.kind === 'money') return fromMinor(Number(value), exponent)
  if (field.kind === 'share') return String(Number(value) / 10_000)
  return String(value)
}

const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`

/** Who is away as typed: "Ada; 2026-07-01; 2026-07-10", one a line. */
export const absencesText = (p: Pick<StudioProfile, 'absences'>): string =>
  (p.absences ?? [])
    .map((a) => (a.from === a.to ? `${a.name}; ${a.from}` : `${a.name}; ${a.from}; ${a.to}`))
    .join('\n')

/** Working spans of a day as typed: "08:00-12:00, 12:45-17:00"; none is a day off. */
export const weekText = (
  spans: readonly { readonly from: number; readonly to: number }[],
): string => spans.map((s) => `${clock(s.from)}-${clock(s.to)}`).join(', ')
