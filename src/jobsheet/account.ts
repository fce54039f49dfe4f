import { sumOf, type TaxBasis, taxOn } from '../kernel/money'
import { type RoundingMode, roundProduct } from '../kernel/rounding'
import { byTimeFinal } from '../quote/price/lines'
import type { StepState } from './bench-facts'

export type AccountOffer = {
  readonly lines: readonly {
    readonly step: string
    readonly name?: string
    readonly amount: number
    readonly minutes: number
    readonly byTime?: { readonly capMinutes: number; readonly capAmount: number }
  }[]
  readonly net: number
  readonly tax: number
}

export type AccountTax = {
  readonly millionths: number
  readonly rounding: RoundingMode
  readonly basis: TaxBasis
}

export type AccountExtra = {
  readonly extra: string
  readonly amount: number
  readonly tax: number
  readonly minutes: number
}

export type AccountBench = Readonly<
  Record<string, { readonly state: StepState; readonly minutes: number }>
>

/** One line offered and what it comes to; minor units net, minutes whole. */
export type AccountLine = {
  readonly step: string
  readonly name: string | null
  readonly offered: number
  readonly charged: number
  readonly planned: number
  /** Null where nobody wrote time down. */
  readonly used: number | null
  readonly done: 'done' | 'part' | 'not' | 'no-step'
  /** Charged by time, up to its cap. */
  readonly byTime: boolean
}

export type Account = {
  readonly lines: readonly AccountLine[]
  readonly extras: readonly AccountExtra[]
  readonly net: number
  readonly tax: number
  readonly total: number
}

const doneOf = (
  { step, minutes }: AccountOffer['lines'][number],
  bench: AccountBench,
): { readonly done: AccountLine['done']; readonly used: number | null } => {
  const record = bench[step]
  // A way driven, a surcharge, an outside trade: no minutes of ours, and nothing to tick off.
  if (!record) return { done: minutes === 0 ? 'no-step' : 'not', used: null }
  return { done: record.state === 'done' ? 'done' : 'part', used: record.minutes }
}

/** Share of a fixed line that was worked: its minutes of those planned, never more than the whole. */
const worked = (amount: number, used: number, planned: number): number =>
  planned <= 0 ? amount : roundProduct(amount, Math.min(used, planned), planned, 'half-up')

/**
 * What a fixed line comes to. A whole job is charged as offered. Of a job that ends half way only what
 * was done is: a line that was begun by its share of time, one that was not begun nothing.
 */
const chargedOf = (
  line: AccountOffer['lines'][number],
  found: ReturnType<typeof doneOf>,
  part: boolean,
): number => {
  if (line.byTime && found.used !== null) return byTimeFinal(line.byTime, found.used)
  if (!part || found.done === 'done' || found.done === 'no-step') return line.amount
  return found.done === 'not' ? 0 : worked(line.amount, found.used ?? 0, line.minutes)
}

/**
 * The account: each offered line beside what it comes to, the extras agreed to, and tax. Lines by time
 * are charged by the minutes written down, up to their cap. `part`: the job ends before it is done; what
 * is no step (a way driven, a surcharge, an outside trade) is charged as offered all the same.
 * Where nothing differs from the offer its own tax stands, to the last minor unit.
 */
export const accountFrom = (
  offer: AccountOffer,
  bench: AccountBench,
  extras: readonly AccountExtra[],
  tax: AccountTax,
  part: boolean,
): Account => {
  const lines = offer.lines.map((line): AccountLine => {
    const found = doneOf(line, bench)
    return {
      step: line.step,
      name: line.name ?? null,
      offered: line.amount,
      charged: chargedOf(line, found, part),
      planned: line.minutes,
      ...found,
      byTime: line.byTime !== undefined,
    }
  })
  const lineNet = sumOf(lines.map((l) => l.charged))
  const same = lines.every((l) => l.charged === l.offered)
  const { millionths, rounding, basis } = tax
  const lineTax = same
    ? offer.tax
    : taxOn(
        lines.map((l) => l.charged),
        millionths,
        rounding,
        basis,
      )
  // Where the lines of an old offer do not sum to its net, what was agreed is the net.
  const net = (same ? offer.net : lineNet) + sumOf(extras.map((e) => e.amount))
  const allTax = lineTax + sumOf(extras.map((e) => e.tax))
  return { lines, extras, net, tax: allTax, total: net + allTax }
}
