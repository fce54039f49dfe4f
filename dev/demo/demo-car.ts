import type { State } from '../../src/docket/states'
import type { DemoDocket } from './demo-docket'

/** One invented customer and car, and what has happened to their docket so far. */
export type DemoCar = {
  readonly id: string
  readonly person: { readonly name: string; readonly email?: string; readonly phone?: string }
  /** When the docket was opened, in days before now. */
  readonly daysAgo: number
  readonly byPhone?: boolean
  /** By question; what is asked and not named here is answered as shortly as possible. */
  readonly answers: Readonly<Record<string, unknown>>
  /** Where the docket stands in the end. */
  readonly ends: State
  readonly course: (d: DemoDocket) => Promise<void>
}
