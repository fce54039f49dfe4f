import type { Answer, Answers } from '../../intake/answers'
import { type Reader, reader } from '../../intake/reader'
import { worlds } from '../../intake/worlds'
import type { Context } from '../context'
import type { Need, StepRule } from '../rules'
import { DEFAULT_PROFILE, engineSettings } from '../studio-profile'
import { steps } from './index'

/** A studio that owns every piece of kit, on a fixed year; what tests of steps are tried in. */
export const bench: Context = {
  settings: engineSettings(
    {
      ...DEFAULT_PROFILE,
      kit: [...DEFAULT_PROFILE.kit, 'ozone', 'lift'],
      lifts: 1,
      ratePerHour: 5_000,
    },
    1,
    [],
  ),
  nowYear: 2026,
}

/** Settled answers from plain values; `unsure` lists the questions the owner cannot answer. */
export const answersOf = (
  values: Readonly<Record<string, unknown>>,
  unsure: readonly string[] = [],
): Answers => {
  const all: Record<string, Answer> = {}
  for (const [id, value] of Object.entries(values)) all[id] = { value }
  for (const id of unsure) all[id] = { unsure: true }
  return all
}

/** A mid saloon of 2018 with nothing special; tests change what they are about. */
export const plainCar = {
  body: 'saloon',
  size: 'mid',
  year: 2018,
  dangers: [],
  services: ['paint', 'protect'],
  wish: 'improve',
  'paint-history': 'original',
  colour: 'mid',
  defects: ['wash-marks'],
} as const

const mean = (n: Need): number =>
  (n.minutes.optimistic + 4 * n.minutes.mode + n.minutes.pessimistic) / 6

/** What one step needs when nothing is left to guess; null when it is not in scope. */
export const needOf = (id: string, answers: Answers, c: Context = bench): Need | null =>
  rule(id).need(reader(answers), c)

export const rule = (id: string): StepRule => {
  const found = steps.find((s) => s.id === id)
  if (!found) throw new Error(`No step ${id}`)
  return found
}

/** Ids of the steps in scope in at least one world, in working order. */
export const scopeOf = (answers: Answers, c: Context = bench): readonly string[] =>
  steps
    .filter((s) => worlds(answers, (r: Reader) => s.need(r, c)).worlds.some((w) => w.result))
    .map((s) => s.id)

/** Mean person-minutes of the named steps (all when absent) over all worlds; outside trades apart. */
export const minutesOf = (
  answers: Answers,
  ids?: readonly string[],
  c: Context = bench,
): number => {
  let sum = 0
  for (const s of steps) {
    if (s.outside || (ids && !ids.includes(s.id))) continue
    for (const { weight, result } of worlds(answers, (r) => s.need(r, c)).worlds)
      if (result) sum += weight * (result.chance ?? 1) * mean(result)
  }
  return sum
}
