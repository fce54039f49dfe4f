import type { Answers } from '../intake/answers'
import { script } from '../intake/script'
import { session } from '../intake/session'
import { type Adjusted, type Adjustment, adjustSteps } from './adjustment'
import { type Context, POLISH_LEVELS, type PolishLevel, type StudioSettings } from './context'
import type { Estimate, Range } from './estimate-types'
import { expectationPhrase } from './expectation-phrase'
import type { RunStep } from './needs'
import { noteLines } from './note-lines'
import { offerOf } from './offer-of'
import { openPointsOf } from './open-points'
import type { Gauge, PaintInput, PaintSet } from './paint'
import { paintLines } from './paint-lines'
import { levelOf, measuredOf, type PaintOf, paintOf } from './paint-of'
import { likeliest, meanMinutes, type Planning, planOf, tasksOf } from './plan-of'
import { offerReasons, planReasons } from './reasons'
import { refusals } from './refusals'
import { pickNotes, risks } from './risks'
import { runAll } from './run-all'
import { setUpMinutes } from './set-up'
import { narrowing, spread, sumsOf } from './spread'
import { spreadOf } from './spread-of'
import { couldAddOf, estimateSteps } from './step-lines'
import { turnedDownOf } from './turned-down'
import { budgetOf, deadlineOf } from './wishes'
import { addDaysText } from './working-day'

/** Raised whenever the same inputs may give other figures. */
export const ENGINE = '5'

export type EstimateInput = {
  readonly answers: Answers
  readonly settings: StudioSettings
  /** The studio's local day: years are counted from it, and without a start work begins after it. */
  readonly today: string
  readonly start?: string
  readonly readings: readonly PaintSet[]
  readonly gauge?: Gauge
  readonly done?: PaintInput['done']
  readonly adjustments: readonly Adjustment[]
}

/**
 * Sd of the log factor shared by all steps of a car, before and after measuring (own estimate): so wide
 * that the ten careful ranges and ours are equally wide at the middle.
 */
const CAR_SD = { told: 0.2, measured: 0.15 } as const

const range = (s: {
  readonly p10: number
  readonly p50: number
  readonly p90: number
  readonly mean: number
}): Range => ({
  low: Math.round(s.p10),
  likely: Math.round(s.p50),
  high: Math.round(s.p90),
  mean: Math.round(s.mean),
})

/** A step stands in the estimate from this chance on; below it, it is something that could add. */
const LIKELY_ENOUGH = 0.5

const levelIn = (runs: readonly RunStep[], paint: PaintOf): PolishLevel => {
  const has = (id: string): boolean =>
    runs.some((r) => r.rule.id === id && r.chance >= LIKELY_ENOUGH)
  const measured = paint.assessment.measuredPanels > 0
  const order: readonly (readonly [string, PolishLevel])[] = [
    ['polish-cut', 'two-step'],
    ['polish-light', 'light'],
    ['polish-finishing', 'finishing'],
    ['polish-hand', 'hand'],
    ['glaze-hand', 'hand'],
  ]
  const planned = order.find(([id]) => has(id))?.[1] ?? 'none'
  if (!measured) return planned
  const allowed = levelOf(paint.assessment.allowedSequence)
  return POLISH_LEVELS.indexOf(allowed) < POLISH_LEVELS.indexOf(planned) ? allowed : planned
}

const chosenIn = (adjustments: readonly Adjustment[]): Context['chosen'] => {
  const levels = adjustments.flatMap((a) =>
    a.kind === 'level' ? [[a.panel ?? 'car', a.level] as const] : [],
  )
  return levels.length === 0 ? undefined : Object.fromEntries(levels)
}

/** Every fact the lines rest on, each once. */
const factsOf = (lines: Estimate['steps']): readonly string[] =>
  [...new Set(lines.flatMap((l) => l.because))].sort()

export type Estimated = Estimate & {
  readonly adjusted: Pick<Adjusted, 'applied' | 'dropped'>
  readonly planning: Planning
}

/**
 * The whole estimate: answers, readings and adjustments in; scope, minutes, price, plan, notes and
 * the reasons of each out. Pure: the same input gives the same bytes on every engine.
 */
export const estimate = (input: EstimateInput): Estimated => {
  const { answers, settings } = input
  const told = session(answers)
  const nowYear = Number(input.today.slice(0, 4))
  const paint = paintOf(
    answers,
    nowYear,
    input.readings,
    input.gauge ?? {},
    input.done,
    settings.limits,
  )
  const measured = measuredOf(paint)
  const chosen = chosenIn(input.adjustments)
  const c: Context = {
    settings,
    nowYear,
    ...(measured ? { measured } : {}),
    ...(chosen ? { chosen } : {}),
  }
  const ran = runAll(told, c)
  const adjusted = adjustSteps(ran.steps, input.adjustments, {
    panels: paint.assessment.panels.map((p) => p.panel),
    today: input.today,
  })
  const pace = (id: string): number => settings.steps[id]?.pace ?? 1
  // What an outside trade does takes time in the plan, but it is neither our labour nor our price;
  // what is agreed only after a look is in no figure at all.
  const ours = adjusted.runs.filter((r) => !r.rule.outside && !r.rule.open)
  const setUp = setUpMinutes(ours, settings, pace)
  const found = spreadOf(ours, ran.events, {
    setUp,
    carSd: measured ? CAR_SD.measured : CAR_SD.told,
    ratePerHour: settings.ratePerHour + settings.materialsPerHour,
    minimumMoney: settings.minimumCharge,
    fixedMoney: 0,
    pace,
  })
  const sums = sumsOf(found)
  const s = spread(found, sums)
  const inScope = adjusted.runs.filter((r) => r.chance >= LIKELY_ENOUGH)
  const priced = inScope.filter((r) => !r.rule.outside && !r.rule.open)
  const lines = estimateSteps(inScope, pace, adjusted.applied, told)
  const people = adjusted.applied.findLast((a) => a.kind === 'people')?.people ?? settings.people
  const planned = inScope
    .filter((r) => !r.rule.open)
    .map((run) => ({ run, minutes: meanMinutes(run, pace(run.rule.id)) }))
  const ratios = {
    median: s.labour.p50 / Math.max(1, s.labour.mean),
    p80: s.labour.p80 / Math.max(1, s.labour.mean),
  }
  const chosenDay = adjusted.applied.findLast((a) => a.kind === 'start')?.day
  const start = input.start ?? chosenDay ?? addDaysText(input.today, 1)
  const planning = { tasks: tasksOf(planned), labour: ratios }
  const plan = planOf(planning, settings, start, people)
  const waived = new Set(adjusted.applied.flatMap((a) => (a.kind === 'waive-note' ? [a.note] : [])))
  const shareOf = narrowing(found, 'price', sums).filter((n) => n.share >= 0.01)
  const level = levelIn(adjusted.runs, paint)
  return {
    currency: settings.currency,
    price: range(s.price),
    labourMinutes: range(s.labour),
    setUpMinutes: setUp,
    offer: {
      ...offerOf(priced, s, settings, adjusted.applied, pace),
      because: factsOf(lines),
      reasons: offerReasons(s, settings),
    },
    plan: {
      ...plan,
      because: factsOf(lines.filter((l) => plan.critical.includes(l.id))),
      reasons: planReasons(plan, settings, ratios),
    },
    scope: {
      level,
      panels: [...new Set(inScope.flatMap((r) => likeliest(r)?.need.places ?? []))],
      turnedDown: turnedDownOf(refusals, told, c),
      lacking: ran.lacking,
      ...(ran.switchedOff.length > 0 ? { switchedOff: ran.switchedOff } : {}),
    },
    steps: lines,
    couldAdd: couldAddOf(
      ours.filter((r) => r.chance < LIKELY_ENOUGH),
      ran.events,
      settings,
      pace,
    ),
    riskNotes: noteLines(pickNotes(risks, answers, c, told).filter((n) => !waived.has(n.id))),
    expectation: expectationPhrase(told, level, paint),
    openPoints: openPointsOf(answers, c, told),
    narrowing: shareOf
      .slice(0, 3)
      .map((n) => ({ question: n.unknown, share: Math.round(n.share * 1000) / 1000 })),
    paint: paintLines(paint),
    deadline: deadlineOf(answers, plan),
    budget: budgetOf(answers, settings, s),
    basis: {
      engine: ENGINE,
      script: script.version,
      settingsRev: settings.rev,
      today: input.today,
    },
    adjusted: { applied: adjusted.applied, dropped: adjusted.dropped },
    planning,
  }
}
