import type { BodyOf } from './kinds'
import type { Line } from './line'

export type ToldAfter = {
  /** What the owner of the car said some days after the hand-over, oldest first. */
  readonly toldAfter: readonly (BodyOf<'told-after'> & { readonly at: number })[]
  /** True while something is wrong by the owner's word and the studio has not acted on it. */
  readonly complained: boolean
}

const ACTED: readonly string[] = ['replied', 'moved', 'dated', 'handed-over']

/** Folds office lines in their order; struck ones are out already. */
export const foldToldAfter = (office: readonly Line[]): ToldAfter => {
  const toldAfter: (BodyOf<'told-after'> & { at: number })[] = []
  let complained = false
  for (const line of office) {
    if (ACTED.includes(line.kind)) complained = false
    if (line.kind !== 'told-after') continue
    const body = line.body as BodyOf<'told-after'>
    toldAfter.push({ ...body, at: line.at })
    if (!body.well) complained = true
  }
  return { toldAfter, complained }
}
