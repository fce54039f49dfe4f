import type { BodyOf } from './kinds'
import type { Line } from './line'

export type InHand = {
  readonly wanted: Readonly<
    Record<string, BodyOf<'wanted'> & { readonly line: string; readonly by: string }>
  >
  readonly supply: Readonly<
    Record<string, BodyOf<'supplied'> & { readonly at: number; readonly by: string }>
  >
}

/** Folds bench lines already in their fixed order; the last word on an item counts. */
export const foldInHand = (lines: readonly Line[]): InHand => {
  const held: Record<string, InHand['wanted'][string]> = {}
  const supply: Record<string, InHand['supply'][string]> = {}
  for (const line of lines) {
    if (line.kind === 'wanted') {
      const body = line.body as BodyOf<'wanted'>
      held[body.item] = { ...held[body.item], ...body, line: line.id, by: line.by }
    }
    if (line.kind === 'supplied') {
      const body = line.body as BodyOf<'supplied'>
      supply[body.item] = { ...body, at: line.at, by: line.by }
    }
  }
  return { wanted: held, supply }
}
