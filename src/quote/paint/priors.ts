import type { FinishSystem, Spread } from './types'

/** What is expected under and on top before anybody measures. `weight` shares out several systems. */
export type PaintPrior = {
  readonly system: 'clear' | 'single-stage' | 'lacquer'
  readonly weight: number
  readonly undercoat: Spread
  readonly topcoat: Spread
}

type Prior = Omit<PaintPrior, 'weight'>

const spread = (mean: number, sd: number): Spread => ({ mean, sd })

/**
 * Clear over base: older cars are a little thinner (own estimate, inside the 98-140 µm totals and the
 * 38-51 µm of clear that trade pages and a car maker's service text state).
 */
const clear = (year: number): Prior =>
  year < 2000
    ? { system: 'clear', undercoat: spread(60, 10), topcoat: spread(42, 7) }
    : { system: 'clear', undercoat: spread(65, 10), topcoat: spread(45, 7) }

/** Single stage: totals of 89-102 µm over 25-38 µm of primer in the 1990s (trade page), earlier wider. */
const singleStage = (year: number): Prior => ({
  system: 'single-stage',
  undercoat: year >= 1980 ? spread(35, 8) : spread(40, 12),
  topcoat: year >= 1980 ? spread(60, 10) : spread(60, 14),
})

const lacquer: Prior = {
  system: 'lacquer',
  undercoat: spread(35, 10),
  topcoat: spread(55, 15),
}

/** Shares of the systems when nobody knows which it is, by model year (own estimate). */
const sharesByYear = (year: number): readonly (readonly [PaintPrior['system'], number])[] => {
  if (year >= 2005) {
    return [
      ['clear', 0.97],
      ['single-stage', 0.03],
    ]
  }
  if (year >= 1985) {
    return [
      ['clear', 0.75],
      ['single-stage', 0.25],
    ]
  }
  if (year >= 1970) {
    return [
      ['clear', 0.3],
      ['single-stage', 0.6],
      ['lacquer', 0.1],
    ]
  }
  return [
    ['single-stage', 0.5],
    ['lacquer', 0.5],
  ]
}

/** Eras an unknown year may belong to, most cars being recent (own estimate). */
const eras = [
  { year: 1965, weight: 0.03 },
  { year: 1978, weight: 0.04 },
  { year: 1992, weight: 0.13 },
  { year: 2012, weight: 0.8 },
] as const

const ofSystem = (system: PaintPrior['system'], year: number): Prior =>
  system === 'clear' ? clear(year) : system === 'lacquer' ? lacquer : singleStage(year)

const inYear = (finish: FinishSystem, year: number): readonly PaintPrior[] => {
  switch (finish) {
    case 'clear-coat':
    case 'matte':
    case 'refinished':
      return [{ ...clear(year), weight: 1 }]
    case 'single-stage-solid':
    case 'single-stage-metallic':
      return [{ ...singleStage(year), weight: 1 }]
    case 'lacquer':
      return [{ ...lacquer, weight: 1 }]
    case 'unknown':
      return sharesByYear(year).map(([system, weight]) => ({ ...ofSystem(system, year), weight }))
  }
}

/** Eras often share a prior: one component each keeps the sums short. */
const merged = (priors: readonly PaintPrior[]): readonly PaintPrior[] => {
  const byShape = new Map<string, PaintPrior>()
  for (const p of priors) {
    const key = `${p.system} ${p.undercoat.mean} ${p.undercoat.sd} ${p.topcoat.mean} ${p.topcoat.sd}`
    const known = byShape.get(key)
    byShape.set(key, known ? { ...known, weight: known.weight + p.weight } : p)
  }
  return [...byShape.values()]
}

/**
 * Priors by finish system and model year; several, weighted to 1, when the system or the year is unknown.
 * A refinished or matte car takes the factory clear prior: the gate and the guards hold it back.
 */
export const priorsFor = (finish: FinishSystem, year: number | null): readonly PaintPrior[] =>
  year !== null
    ? inYear(finish, year)
    : merged(
        eras.flatMap((era) =>
          inYear(finish, era.year).map((p) => ({ ...p, weight: p.weight * era.weight })),
        ),
      )

/** Chance that a reference area is only lightly cleared: 0.5, higher before 2000, lower lately (own estimate). */
export const lightlyClearedWeight = (year: number | null): number =>
  year === null ? 0.5 : year < 2000 ? 0.65 : year >= 2015 ? 0.35 : 0.5
