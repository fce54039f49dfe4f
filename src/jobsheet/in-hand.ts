import type { EstimateStep } from '../quote/estimate-types'
import { steps as catalogue } from '../quote/steps'
import { addDaysText } from '../quote/working-day'
import type { Supply, WantedKind } from './supply'

export { SUPPLY, type Supply, WANTED, type WantedKind } from './supply'

/** Days each kind takes to come (own estimate); a key is for the customer to bring on the day. */
export const LEAD_DAYS: Readonly<Record<WantedKind, number>> = {
  part: 10,
  product: 5,
  key: 0,
  trade: 14,
}

export type WantedItem = {
  /** `material:clay`, `key:locking-nut`, `trade:leak-proof`; an own one as its line names it. */
  readonly item: string
  readonly what: WantedKind
  /** What the studio calls it; null: its words are found by its item. */
  readonly thing: string | null
  /** Steps that need it. */
  readonly steps: readonly string[]
  /** The last day to order it or to say so; null while the job has no day. */
  readonly orderBy: string | null
  /** Days it takes to come, for a job without a day. */
  readonly lead: number
  readonly state: Supply
  readonly expected: string | null
  /** The line that asked for it, where one did. */
  readonly line: string | null
}

export type InHandBench = {
  readonly wanted: Readonly<
    Record<
      string,
      {
        readonly what?: WantedKind
        readonly thing?: string
        readonly orderBy?: string
        readonly line: string
      }
    >
  >
  readonly supply: Readonly<
    Record<string, { readonly state: Supply; readonly expected?: string; readonly at: number }>
  >
}

export type Needed = {
  readonly steps: readonly Pick<EstimateStep, 'id' | 'materials' | 'duties'>[]
  /** The answer to `locking-key`; undefined where it is not known. */
  readonly lockingKey?: unknown
  /** Work of outside trades, by its line of the quote. */
  readonly trades?: Readonly<Record<string, string>> | undefined
}

/** What the catalogue says a step uses, for steps known by their id only. */
export const stepsById = (ids: readonly string[]): Needed['steps'] =>
  ids.map((id) => {
    const rule = catalogue.find((r) => r.id === id)
    return { id, materials: rule?.materials ?? [], duties: rule?.duties ?? [] }
  })

type Derived = Pick<WantedItem, 'item' | 'what' | 'thing' | 'steps'>

/** Bought for this one car; everything else a step uses is a product that stands on a shelf. */
const FOR_THIS_CAR = new Set(['touch-up-paint', 'cabin-filter'])

/** The key of the locking nuts, by what its owner said of it. */
const LOCKING: Readonly<Record<string, Pick<WantedItem, 'item' | 'what'> | null>> = {
  'none-needed': null,
  missing: { item: 'part:locking-nut', what: 'part' },
}

const isOutside = (id: string): boolean => catalogue.some((r) => r.id === id && r.outside === true)

const fromSteps = ({ steps, lockingKey, trades }: Needed): readonly Derived[] => {
  const found = new Map<string, Derived>()
  const add = (step: string, item: string, what: WantedKind, thing: string | null = null): void => {
    const was = found.get(item)
    found.set(item, { item, what, thing, steps: [...(was?.steps ?? []), step] })
  }
  for (const [step, thing] of Object.entries(trades ?? {}))
    found.set(`trade:${step}`, { item: `trade:${step}`, what: 'trade', thing, steps: [] })
  for (const step of steps) {
    for (const material of step.materials)
      add(step.id, `material:${material}`, FOR_THIS_CAR.has(material) ? 'part' : 'product')
    if (step.duties.includes('clips')) add(step.id, 'part:clips', 'part')
    if (isOutside(step.id)) add(step.id, `trade:${step.id}`, 'trade')
    if (step.id !== 'wheels-off') continue
    const key = LOCKING[String(lockingKey)]
    if (key !== null) add(step.id, key?.item ?? 'key:locking-nut', key?.what ?? 'key')
  }
  return [...found.values()]
}

/**
 * What has to be in hand before the car comes: what the agreed steps need, and what the studio wrote
 * down itself. `start` is the day the work begins; with it each has a last day to order.
 */
export const inHandOf = (
  from: Needed,
  bench: InHandBench & {
    readonly done: (step: string) => boolean
  },
  start: string | null,
  lead: Readonly<Record<WantedKind, number>> = LEAD_DAYS,
): readonly WantedItem[] => {
  const derived = fromSteps(from)
  const known = new Set(derived.map((d) => d.item))
  const own = Object.entries(bench.wanted).flatMap(([item, w]): readonly Derived[] =>
    known.has(item) || w.what === undefined || w.thing === undefined
      ? []
      : [{ item, what: w.what, thing: w.thing, steps: [] }],
  )
  return [...derived, ...own].map((d) => {
    const asked = bench.wanted[d.item]
    const supply = bench.supply[d.item]
    const used = d.steps.length > 0 && d.steps.every(bench.done)
    return {
      ...d,
      thing: asked?.thing ?? d.thing,
      orderBy: asked?.orderBy ?? (start === null ? null : addDaysText(start, -lead[d.what])),
      lead: lead[d.what],
      state: used ? 'in-hand' : (supply?.state ?? 'wanted'),
      expected: supply?.expected ?? null,
      line: asked?.line ?? null,
    }
  })
}
