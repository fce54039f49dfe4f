import type { Estimated } from '../../src/quote/estimate'
import { companionFaults } from './companions'
import { english } from './studio'

type Block = { readonly first: number; readonly last: number }

const DAY = 1440

/** First and last minute each step is worked on, counted over the days of the plan. */
const blocksOf = (e: Estimated): ReadonlyMap<string, Block> => {
  const at = new Map<string, Block>()
  e.plan.days.forEach((day, n) => {
    for (const { step, from, to } of day.blocks) {
      const known = at.get(step)
      at.set(step, {
        first: Math.min(known?.first ?? Number.POSITIVE_INFINITY, n * DAY + from),
        last: Math.max(known?.last ?? 0, n * DAY + to),
      })
    }
  })
  return at
}

const orderFaults = (e: Estimated): readonly string[] => {
  const place = new Map(e.steps.map((s, i) => [s.id, i]))
  const at = blocksOf(e)
  return e.steps.flatMap((s, i) =>
    s.after.flatMap((id) => {
      const before = place.get(id)
      if (before === undefined) return [`${s.id} comes after ${id}, which is not there`]
      if (before >= i) return [`${s.id} is listed before ${id}`]
      const [mine, theirs] = [at.get(s.id), at.get(id)]
      return mine && theirs && mine.first < theirs.last
        ? [`${s.id} is planned before ${id} ends`]
        : []
    }),
  )
}

const rangeFaults = (e: Estimated): readonly string[] =>
  (['labourMinutes', 'price'] as const).flatMap((name) => {
    const { low, likely, high, mean } = e[name]
    const fine = low <= likely && likely <= high && low >= 0 && mean >= low && mean <= high * 1.2
    return fine && [low, likely, high, mean].every(Number.isInteger)
      ? []
      : [`${name} ${low} ${likely} ${high}, mean ${mean}`]
  })

const offerFaults = (e: Estimated): readonly string[] => {
  const { offer, price } = e
  const sum = offer.lines.reduce((total, line) => total + line.amount, 0)
  return [
    ...(offer.net >= price.mean ? [] : [`offer ${offer.net} below the mean ${price.mean}`]),
    ...(sum === offer.net ? [] : [`lines sum to ${sum}, not ${offer.net}`]),
    ...(offer.total === offer.net + offer.tax ? [] : [`total ${offer.total}`]),
    ...(offer.low <= offer.likely && offer.likely <= offer.high ? [] : ['offer range']),
  ]
}

/** Every line says where it comes from and has words on the page. */
const whyFaults = (e: Estimated): readonly string[] => {
  const lines = [
    ...e.steps.map((s) => ({ key: `step.${s.id}`, ...s })),
    ...e.couldAdd.map((a) => ({ key: `${a.kind}.${a.id}`, ...a })),
    ...e.riskNotes.map((n) => ({ key: `risk.${n.id}`, ...n })),
    ...e.openPoints.map((p) => ({ key: `open.${p.id}`, ...p })),
    ...e.scope.turnedDown.map((t) => ({ key: `refuse.${t.id}`, ...t })),
  ]
  return lines.flatMap(({ key, source, because }) => [
    ...(source.trim().length > 3 ? [] : [`${key} has no source`]),
    ...(english.has(key) ? [] : [`${key} has no words`]),
    ...because.flatMap((q) =>
      english.has(`q.${q}.prompt`) || q === 'begun-year' ? [] : [`${q} has no words`],
    ),
  ])
}

/** What is wrong with an estimate, whatever it is about; nothing when all holds. */
export const faultsOf = (e: Estimated): readonly string[] => [
  ...rangeFaults(e),
  ...offerFaults(e),
  ...orderFaults(e),
  ...whyFaults(e),
  ...companionFaults(e),
]
