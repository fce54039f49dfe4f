import type { BodyOf } from './kinds'
import type { Line } from './line'

export type Paid = {
  /** Money the studio wrote down as received or given back, oldest first. */
  readonly paid: readonly (BodyOf<'paid'> & { readonly id: string; readonly at: number })[]
}

/** Folds office lines in their order; struck ones are out already. */
export const foldPaid = (office: readonly Line[]): Paid => ({
  paid: office.flatMap((line) =>
    line.kind === 'paid' ? [{ ...(line.body as BodyOf<'paid'>), id: line.id, at: line.at }] : [],
  ),
})
