import type { Bench } from '../../docket/bench'
import { FILM_STEPS, type FilmWord, filmWord } from '../../jobsheet/film-stop'
import { shimVerdicts, type Trust, trustAt } from '../../jobsheet/gauge-check'
import { type OrderWarning, orderWarnings } from '../../jobsheet/order-warnings'
import { refitHolds } from '../../jobsheet/refit'
import type { Sheet } from '../../jobsheet/sheet'
import type { Zone } from '../../kernel/calendar'
import { splitLocal, toLocalMinute } from '../../kernel/calendar-zone'

/** Minute of the local day at a moment in UTC milliseconds. */
const clockOf = (zone: Zone, ms: number): number =>
  splitLocal(toLocalMinute(zone, Math.ceil(ms / 60_000))).minute

type Text = { readonly text: string }

/** A text typed into a line, resolved; nothing where none was typed. */
const said = (ref: Text | undefined, text: (ref: Text) => string): string => (ref ? text(ref) : '')

export type ViewMore = {
  /** What speaks against the current step now. */
  readonly order: readonly OrderWarning[]
  /** What must be back on before the current step puts a wheel or trim on. */
  readonly holds: readonly { readonly id: string; readonly item: string; readonly where: string }[]
  readonly film: FilmWord & { readonly here: boolean }
  /** The gauge's last check, and by reading what it rests on. */
  readonly gauge: ReturnType<typeof shimVerdicts> | null
  readonly trust: Readonly<Record<string, Trust>>
  /** The owner's words beyond the allowance. */
  readonly decided: readonly {
    readonly panel: string
    readonly sequence: string
    readonly why: string
    readonly name: string
  }[]
  /** Times by a label that run at the current step: the end in UTC milliseconds and as a minute of the local day. */
  readonly timers: readonly {
    readonly what: string
    readonly ends: number
    readonly clock: number
    readonly minutes: number
  }[]
  /** How the car came, in words of the people who were there. */
  readonly came: {
    readonly warnings: string
    readonly valuables: string
    readonly notes: string
    readonly name: string
  }
  readonly crew: Bench['crews'][number] | null
  /** Steps that lift, while nobody there may. */
  readonly waits: readonly string[]
  /** The day the owner was told, where the rest now likely takes longer. */
  readonly late: string | null
  readonly night: Bench['nights'][number] | null
  readonly recorded: Bench['recorded']
  readonly supply: readonly {
    readonly item: string
    readonly thing: string | null
    readonly state: string
    readonly expected: string | null
  }[]
}

const supplyOf = ({ inHand }: Pick<Bench, 'inHand'>): ViewMore['supply'] =>
  [...new Set([...Object.keys(inHand.wanted), ...Object.keys(inHand.supply)])].map((item) => ({
    item,
    thing: inHand.wanted[item]?.thing ?? inHand.supply[item]?.thing ?? null,
    state: inHand.supply[item]?.state ?? 'wanted',
    expected: inHand.supply[item]?.expected ?? null,
  }))

/** The promised day, where the new one lies behind it. */
const lateAgainst = (now: string | undefined, promised: string | undefined): string | null =>
  now !== undefined && promised !== undefined && now.slice(0, 10) > promised.slice(0, 10)
    ? promised.slice(0, 10)
    : null

/** What the sheet shows besides the steps, from the folded bench; the same with and without a signal. */
export const viewMore = (
  bench: Bench,
  sheet: Pick<Sheet, 'steps'>,
  current: string | null,
  text: (ref: Text) => string,
  zone: Zone,
  dated: { readonly readyLikely: string } | null,
): ViewMore => {
  const step = current ?? ''
  const crew = bench.crews.at(-1)
  const gauge = bench.gaugeChecks.at(-1)
  const came = bench.checkIn
  return {
    order: orderWarnings(step, { steps: sheet.steps, checkedIn: came !== null }),
    holds: refitHolds(step, bench.removals).map((r) => ({
      id: r.id,
      item: r.item,
      where: [r.place, r.thickness, r.stored].filter(Boolean).join(', '),
    })),
    film: { ...filmWord(bench), here: FILM_STEPS.includes(step) },
    gauge: gauge ? shimVerdicts(gauge) : null,
    trust: Object.fromEntries(bench.readings.map((r) => [r.id, trustAt(r.at, bench.gaugeChecks)])),
    decided: bench.allowed.map((a) => ({
      panel: a.panel,
      sequence: a.sequence,
      why: text(a.why),
      name: said(a.name, text),
    })),
    timers: bench.timers
      .filter((t) => t.step === step)
      .map((t) => {
        const ends = t.at + t.minutes * 60_000
        return { what: t.what ?? '', minutes: t.minutes, ends, clock: clockOf(zone, ends) }
      }),
    came: {
      warnings: said(came?.warnings, text),
      valuables: said(came?.valuables, text),
      notes: said(came?.notes, text),
      name: said(came?.name, text),
    },
    crew: crew ?? null,
    waits: crew?.noLifting
      ? sheet.steps
          .filter((s) => s.state !== 'done' && s.cautions.includes('lifting'))
          .map((s) => s.id)
      : [],
    late: lateAgainst(crew?.readyLikely, dated?.readyLikely),
    night: bench.nights.at(-1) ?? null,
    recorded: bench.recorded,
    supply: supplyOf(bench),
  }
}
