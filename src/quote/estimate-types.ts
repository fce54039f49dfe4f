import type { Phrase } from '../intake/question'
import type { PolishLevel, ThreePoint } from './context'
import type { Reason } from './reason'
import type { Severity, Track, Unit } from './rules'

/** Tenth, fiftieth and ninetieth percentile, and the mean. */
export type Range = {
  readonly low: number
  readonly likely: number
  readonly high: number
  readonly mean: number
}

export type EstimateStep = {
  readonly id: string
  /** Only for work the studio added itself. */
  readonly name?: string
  readonly track: Track
  readonly minutes: ThreePoint
  /** Mean person-minutes, with the chance that it is needed taken in. */
  readonly expectedMinutes: number
  readonly quantity: { readonly amount: number; readonly unit: Unit }
  /** How likely it is needed, 0 to 1; below one half it stands among `couldAdd` instead. */
  readonly chance: number
  readonly because: readonly string[]
  readonly cautions: readonly string[]
  /** Hard predecessors that are in this estimate. */
  readonly after: readonly string[]
  readonly lagMinutes: number
  readonly lagWhy: 'dwell' | 'dry' | 'cure' | 'answer' | null
  readonly hold: 'yes' | 'leak' | 'dry' | 'part' | null
  /** Offered by time up to this many minutes before we ask; null: fixed. */
  readonly byTime: { readonly capMinutes: number } | null
  readonly crewMax: 1 | 2
  readonly machine: boolean
  readonly places: readonly string[]
  readonly duties: readonly string[]
  readonly materials: readonly string[]
  readonly masks: readonly string[]
  readonly source: string
  /** From the facts in `because` to the figure; absent in estimates kept from before. */
  readonly reasons?: readonly Reason[]
}

export type CouldAdd = {
  readonly id: string
  readonly kind: 'event' | 'step'
  readonly probability: number
  readonly minutes: number
  /** Minor units, with tax where the studio shows prices so. */
  readonly price: number
  readonly because: readonly string[]
  readonly source: string
  readonly reasons?: readonly Reason[]
}

export type Note = {
  readonly id: string
  readonly severity: Severity
  readonly decision: boolean
  readonly because: readonly string[]
  readonly params: NonNullable<Phrase['params']>
  readonly caution: string | null
  readonly source: string
  readonly reasons?: readonly Reason[]
}

export type OfferLine = {
  readonly step: string
  readonly name?: string
  readonly amount: number
  readonly minutes: number
  readonly byTime?: { readonly capMinutes: number; readonly capAmount: number }
}

export type EstimateOffer = {
  readonly lines: readonly OfferLine[]
  readonly net: number
  readonly tax: number
  readonly total: number
  readonly chanceEnough: number
  readonly deposit: number
  /** The range beside it as shown: rounded outward, with tax where prices are shown so. */
  readonly low: number
  readonly likely: number
  readonly high: number
  /** Facts its priced lines rest on, and the rules that made the price of them. */
  readonly because?: readonly string[]
  readonly reasons?: readonly Reason[]
}

export type PlanBlock = {
  readonly from: number
  readonly to: number
  readonly people: readonly number[]
  readonly step: string
}

export type PlanDayOut = {
  readonly date: string
  readonly blocks: readonly PlanBlock[]
  readonly drying: readonly {
    readonly step: string
    readonly date: string
    readonly minute: number
  }[]
}

export type EstimatePlan = {
  readonly people: number
  readonly start: string
  readonly days: readonly PlanDayOut[]
  /** ISO 8601 UTC. */
  readonly readyLikely: string
  readonly readyCautious: string
  readonly readyLikelyLocal: { readonly date: string; readonly minute: number }
  readonly readyCautiousLocal: { readonly date: string; readonly minute: number }
  readonly personMinutes: number
  readonly elapsedMinutes: number
  readonly idleMinutes: number
  readonly critical: readonly string[]
  /** Facts behind the steps nothing else can overtake, and the rules of the days. */
  readonly because?: readonly string[]
  readonly reasons?: readonly Reason[]
}

export type PanelPaint = {
  readonly panel: string
  readonly topcoat: { readonly mean: number; readonly sd: number } | null
  readonly total: number | null
  readonly light: number
  readonly strong: number
  readonly deepest: string | null
  readonly verdict: string
  readonly why: readonly Phrase[]
  readonly because: readonly string[]
  readonly reasons?: readonly Reason[]
  /** On the bench: the deepest the owner's written word allows, where that is more; null: no more. */
  readonly byDecision?: string | null
  /** On the bench: µm this job took off, as counted with; the fall of the reading, and whether it can be told from the gauge's error. */
  readonly removed?: {
    readonly um: number
    readonly measured: number | null
    readonly told: boolean
  }
  /** On the bench: mean of its reference, µm; null: none read. */
  readonly reference?: number | null
}

/** Everything computed from one set of answers; texts are keys, rendered at the rim. */
export type Estimate = {
  readonly currency: string
  /** Net, minor units. */
  readonly price: Range
  readonly labourMinutes: Range
  /** Part of the labour that belongs to no step: setting up each day. */
  readonly setUpMinutes: number
  readonly offer: EstimateOffer
  readonly plan: EstimatePlan
  readonly scope: {
    readonly level: PolishLevel
    readonly panels: readonly string[]
    readonly turnedDown: readonly {
      readonly id: string
      readonly steps: readonly string[]
      readonly params: NonNullable<Phrase['params']>
      readonly because: readonly string[]
      readonly source: string
    }[]
    /** Steps left out because the studio lacks the kit, with the missing piece. */
    readonly lacking: readonly { readonly step: string; readonly piece: string }[]
    /** Steps this car would need that the studio has switched off; absent in older estimates. */
    readonly switchedOff?: readonly string[]
  }
  readonly steps: readonly EstimateStep[]
  readonly couldAdd: readonly CouldAdd[]
  readonly riskNotes: readonly Note[]
  readonly expectation: {
    readonly removedShare: { readonly low: number; readonly high: number } | null
    readonly phrase: Phrase
    readonly because: readonly string[]
  }
  readonly openPoints: readonly {
    readonly id: string
    readonly because: readonly string[]
    readonly source: string
  }[]
  readonly narrowing: readonly { readonly question: string; readonly share: number }[]
  readonly paint: { readonly panels: readonly PanelPaint[]; readonly reasons?: readonly Reason[] }
  /** 'yes': even the cautious ready time holds it; 'tight': only the likely one does. */
  readonly deadline: { readonly date: string; readonly holds: 'yes' | 'tight' | 'no' } | null
  readonly budget: { readonly amount: number; readonly chance: number } | null
  readonly basis: {
    readonly engine: string
    readonly script: string
    readonly settingsRev: number
    readonly today: string
  }
}
