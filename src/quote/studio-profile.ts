import * as z from 'zod'
import type { Zone } from '../kernel/calendar'
import { parseDate } from '../kernel/calendar'
import { currencyExponent } from '../kernel/currency'
import { KIT, type StudioSettings } from './context'

const minor = z.int().min(0).max(1_000_000_000)
const share = z.int().min(0).max(1_000_000)
const span = z
  .strictObject({ from: z.int().min(0).max(1440), to: z.int().min(0).max(1440) })
  .refine((s) => s.from < s.to, 'ends before it begins')
const day = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/)
  .refine((text) => parseDate(text).ok, 'not a day of the calendar')
const maybe = z.exactOptional

/**
 * The studio's settings as it edits them; every save is a new revision, and an estimate keeps the
 * one it was made with. Money in minor units, shares in millionths, times in minutes.
 */
export const studioProfile = z.strictObject({
  name: z.string().min(1).max(120),
  contact: z.string().max(400),
  locale: z.string().regex(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/),
  currency: z.string().refine((code) => currencyExponent(code).ok, 'not a currency code we know'),
  timeZone: z.string().min(1).max(60),
  terms: z.string().max(4000),
  shows: z.enum(['range', 'from', 'after-review']),
  ratePerHour: minor,
  materialsPerHour: minor,
  minimumCharge: minor,
  bayDayRate: minor,
  bayDaysIncluded: maybe(z.int().min(0).max(365)),
  travelPerKm: maybe(minor),
  travelFreeMetres: maybe(z.int().min(0).max(2_000_000)),
  subletMarginMillionths: maybe(z.int().min(0).max(5_000_000)),
  extrasLimit: minor,
  roundTo: z.int().min(1).max(1_000_000),
  taxMillionths: share,
  taxRounding: z.enum(['half-up', 'half-even', 'down']),
  taxBasis: z.enum(['line', 'total']),
  pricesWithTax: z.boolean(),
  offerPercentile: z.number().min(0.5).max(0.95),
  depositMillionths: share,
  validDays: z.int().min(1).max(365),
  people: z.int().min(1).max(6),
  bays: z.int().min(1).max(6),
  lifts: z.int().min(0).max(6),
  week: z.array(z.array(span).max(4)).length(7),
  daysOff: z.array(day).max(400),
  machineMinutesPerPersonDay: z.int().min(30).max(360),
  dayCapMinutes: z.int().min(60).max(720),
  setUpMinutesPerDay: z.int().min(0).max(120),
  kit: z.array(z.enum(KIT)).max(KIT.length),
  steps: z.record(
    z.string().max(64),
    z.strictObject({ pace: maybe(z.number().min(0.25).max(4)), off: maybe(z.boolean()) }),
  ),
  /** Small picture beside the name, as a data URL of a PNG, JPEG or WebP. */
  logo: maybe(
    z
      .string()
      .max(60_000)
      .regex(/^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/=]+$/),
  ),
  /** Questions of the studio's own: they stand on the docket and change no figure. */
  ownQuestions: maybe(
    z.array(z.strictObject({ id: z.string().max(40), prompt: z.string().min(1).max(300) })).max(20),
  ),
  /** Work of the studio's own, to add to a quote with one choice. */
  ownSteps: maybe(
    z
      .array(
        z.strictObject({
          name: z.string().min(1).max(200),
          minutes: z.int().min(0).max(6000),
          amount: maybe(minor),
        }),
      )
      .max(40),
  ),
  /** What the customer reads first; sentences it lacks are said in English. Absent: English. */
  language: maybe(z.enum(['en', 'de'])),
  /** Sentences the studio says its own way, by key. */
  wording: maybe(z.record(z.string().max(120), z.string().min(1).max(2000))),
  /** Paint thresholds, µm, inside the hard limits. */
  limits: maybe(z.record(z.string().max(40), z.number())),
  /** How long personal data stays by itself; null: until somebody asks. */
  retention: maybe(
    z.strictObject({
      unsentDays: z.int().min(7).max(365),
      noJobMonths: z.int().min(1).max(240).nullable(),
      jobMonths: z.int().min(1).max(240).nullable(),
    }),
  ),
  /** Who is away on which days, both included; the job is planned with those who are there. */
  absences: maybe(
    z
      .array(
        z
          .strictObject({ name: z.string().min(1).max(80), from: day, to: day })
          .refine((a) => a.from <= a.to, 'ends before it begins'),
      )
      .max(200),
  ),
  /** Who works here and what each may do. */
  team: maybe(
    z
      .array(
        z.strictObject({ name: z.string().min(1).max(80), rights: z.enum(['owner', 'bench']) }),
      )
      .max(20),
  ),
})
export type StudioProfile = z.infer<typeof studioProfile>

const WEEKDAY = [
  { from: 480, to: 720 },
  { from: 765, to: 1020 },
]

/** What a new studio starts with; every figure is a starting value it should look at (own estimate). */
export const DEFAULT_PROFILE: StudioProfile = {
  name: 'Your studio',
  contact: '',
  locale: 'en-IE',
  currency: 'EUR',
  timeZone: 'Europe/Dublin',
  terms: '',
  shows: 'range',
  ratePerHour: 6_000,
  materialsPerHour: 400,
  minimumCharge: 9_000,
  bayDayRate: 4_000,
  extrasLimit: 10_000,
  roundTo: 1_000,
  taxMillionths: 200_000,
  taxRounding: 'half-up',
  taxBasis: 'total',
  pricesWithTax: true,
  offerPercentile: 0.72,
  depositMillionths: 200_000,
  validDays: 30,
  people: 1,
  bays: 1,
  lifts: 0,
  week: [WEEKDAY, WEEKDAY, WEEKDAY, WEEKDAY, WEEKDAY, [], []],
  daysOff: [],
  machineMinutesPerPersonDay: 330,
  dayCapMinutes: 600,
  setUpMinutesPerDay: 30,
  kit: [
    'stands',
    'steamer',
    'extractor',
    'dehumidifier',
    'moisture-meter',
    'hot-water',
    'hepa-vacuum',
    'air-compressor',
    'machine-polisher',
    'torque-wrench',
    'battery-support',
    'gauge-ferrous',
    'gauge-dual',
  ],
  steps: {},
}

/** People there on a day: the studio's number less those who are away. */
export const staffOn =
  (p: Pick<StudioProfile, 'people' | 'absences'>) =>
  (date: string): number =>
    Math.max(0, p.people - (p.absences ?? []).filter((a) => a.from <= date && date <= a.to).length)

const exponentOf = (currency: string): number => {
  const exponent = currencyExponent(currency)
  return exponent.ok ? exponent.value : 2
}

/** The profile as the engine takes it; the zone's changes come from outside. */
export const engineSettings = (p: StudioProfile, rev: number, zone: Zone): StudioSettings => ({
  rev,
  zone,
  currency: p.currency,
  exponent: exponentOf(p.currency),
  ratePerHour: p.ratePerHour,
  taxMillionths: p.taxMillionths,
  taxRounding: p.taxRounding,
  taxBasis: p.taxBasis,
  pricesWithTax: p.pricesWithTax,
  roundTo: p.roundTo,
  minimumCharge: p.minimumCharge,
  offerPercentile: p.offerPercentile,
  depositMillionths: p.depositMillionths,
  bayDayRate: p.bayDayRate,
  bayDaysIncluded: p.bayDaysIncluded ?? 0,
  travelPerKm: p.travelPerKm ?? 0,
  travelFreeMetres: p.travelFreeMetres ?? 0,
  subletMarginMillionths: p.subletMarginMillionths ?? 0,
  validDays: p.validDays,
  extrasLimit: p.extrasLimit,
  materialsPerHour: p.materialsPerHour,
  people: p.people,
  bays: p.bays,
  lifts: p.lifts,
  week: p.week,
  daysOff: p.daysOff,
  machineMinutesPerPersonDay: p.machineMinutesPerPersonDay,
  dayCapMinutes: p.dayCapMinutes,
  setUpMinutesPerDay: p.setUpMinutesPerDay,
  kit: p.kit,
  steps: p.steps as StudioSettings['steps'],
  ...(p.limits ? { limits: p.limits as NonNullable<StudioSettings['limits']> } : {}),
})
