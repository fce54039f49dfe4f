import type { PaintSet } from '../quote/paint'

/** What the bench wrote that the paint model needs; the docket's fold gives exactly this. */
export type BenchFacts = {
  readonly readings: readonly {
    readonly panel: string
    readonly kind: 'panel' | 'reference'
    readonly values: readonly number[]
    readonly probe?: PaintSet['probe']
    readonly overFilm?: boolean
    readonly spot?: string
    readonly when?: 'before' | 'after'
    readonly at: number
  }[]
  readonly unreadable: Readonly<Record<string, string>>
  readonly polished: readonly {
    readonly panel: string
    readonly sequence: string
    readonly sets: number
    readonly at: number
  }[]
}

export type StepState = 'begun' | 'broken-off' | 'done'
