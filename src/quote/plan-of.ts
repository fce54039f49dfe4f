import { parseDay } from '../kernel/calendar'
import type { StudioSettings } from './context'
import type { EstimatePlan } from './estimate-types'
import type { RunStep, StepNeed } from './needs'
import type { After, Task } from './plan'
import { type LabourRatios, planReady, type ReadyPlan } from './plan/ready'
import type { StepRule } from './rules'
import { pertMean } from './spread'

/** Mean person-minutes of a step where it is needed, over its worlds. */
export const meanMinutes = (run: RunStep, pace: number): number => {
  let weight = 0
  let sum = 0
  for (const w of run.worlds) {
    if (w.result === null) continue
    const chance = w.weight * (w.result.need.chance ?? 1)
    weight += chance
    sum += chance * pertMean(w.result.need.minutes)
  }
  return weight === 0 ? 0 : (sum / weight) * pace
}

/** The likeliest world in which the step is needed. */
export const likeliest = (run: RunStep): StepNeed | null => {
  let best: { weight: number; result: StepNeed } | null = null
  for (const { weight, result } of run.worlds)
    if (result !== null && (best === null || weight > best.weight)) best = { weight, result }
  return best?.result ?? null
}

type Planned = { readonly run: RunStep; readonly minutes: number }

type Waits = Planned & { readonly at: number; readonly lag: StepNeed['lag'] }

/** Predecessors that must be said: those with a lag, and those no later predecessor implies. */
const nearest = (rule: StepRule, byId: ReadonlyMap<string, Waits>): readonly Waits[] => {
  const present = rule.after.flatMap((id) => byId.get(id) ?? [])
  const implied = new Set<string>()
  const said = new Set<Waits>()
  for (const o of [...present].sort((a, b) => b.at - a.at)) {
    if (!implied.has(o.run.rule.id)) for (const id of o.run.rule.after) implied.add(id)
    else if (!o.lag?.minutes) continue
    said.add(o)
  }
  return present.filter((o) => said.has(o))
}

/** Steps of one track wait for those of the track with a lower order; hard predecessors carry lags. */
const linksOf = (
  { run: { rule } }: Planned,
  all: readonly Planned[],
  byId: ReadonlyMap<string, Waits>,
): readonly After[] => {
  const links = new Map<string, After>()
  const add = (id: string, lag: number, kind: After['lagKind'], block: After['block']): void => {
    const was = links.get(id)
    if (was === undefined || was.lag < lag) links.set(id, { id, lag, lagKind: kind, block })
  }
  const before = all.filter((o) => o.run.rule.track === rule.track && o.run.rule.order < rule.order)
  const last = before.reduce((most, o) => Math.max(most, o.run.rule.order), -1)
  for (const o of before) if (o.run.rule.order === last) add(o.run.rule.id, 0, 'elapsed', 'car')
  for (const { run, lag } of nearest(rule, byId))
    add(run.rule.id, lag?.minutes ?? 0, lag?.kind ?? 'elapsed', lag?.blocks ?? 'car')
  return [...links.values()]
}

/** A lag nothing hard waits for still ends before the car is handed over. */
const withFinal = (tasks: readonly Task[], all: readonly Planned[]): readonly Task[] => {
  const final = tasks.at(-1)
  if (!final) return tasks
  const extra = all.flatMap((p): readonly After[] => {
    const lag = likeliest(p.run)?.lag
    const id = p.run.rule.id
    if (!lag || id === final.id || final.after.some((a) => a.id === id)) return []
    return [{ id, lag: lag.minutes, lagKind: lag.kind, block: lag.blocks }]
  })
  return [...tasks.slice(0, -1), { ...final, after: [...final.after, ...extra] }]
}

/** The steps as tasks of the planner. */
export const tasksOf = (all: readonly Planned[]): readonly Task[] => {
  const byId = new Map(
    all.map((p, at) => [p.run.rule.id, { ...p, at, lag: likeliest(p.run)?.lag ?? null }] as const),
  )
  return withFinal(
    all.map(
      (p): Task => ({
        id: p.run.rule.id,
        minutes: Math.max(1, Math.round(p.minutes)),
        crewMax: p.run.rule.crewMax,
        machine: p.run.rule.machine,
        needs: { bay: p.run.rule.bay, lift: p.run.rule.lift },
        after: linksOf(p, all, byId),
        pausable: p.run.rule.pausable,
        ...(p.run.rule.outside ? { outside: true } : {}),
      }),
    ),
    all,
  )
}

/** What a plan is made from; a dated job keeps it, so that its days can be reckoned again. */
export type Planning = { readonly tasks: readonly Task[]; readonly labour: LabourRatios }

/**
 * When the car is ready: likely from the middle of the labour, cautious from its 80th percentile.
 * Throws where the studio has no hours at all: its settings refuse that before.
 */
export const planOf = (
  { tasks, labour }: Planning,
  settings: StudioSettings,
  start: string,
  people: number,
): EstimatePlan => {
  if (!parseDay(start).ok) throw new Error(`not a day: ${start}`)
  const ready = planReady(tasks, { ...settings, people }, start, labour)
  if (!ready.ok) throw new Error(`no plan: ${ready.error}`)
  return planView(ready.value, people)
}

/** A plan as the estimate shows it. */
export const planView = (ready: ReadyPlan, people: number): EstimatePlan => {
  const { plan, readyLikely, readyCautious } = ready
  return {
    people,
    start: plan.startsAt.date,
    days: plan.days.map((d) => ({
      date: d.date,
      blocks: d.blocks.map((b) => ({ from: b.from, to: b.to, people: b.people, step: b.task })),
      drying: d.drying.map((x) => ({ step: x.task, date: x.until.date, minute: x.until.minute })),
    })),
    readyLikely: readyLikely.utc,
    readyCautious: readyCautious.utc,
    readyLikelyLocal: { date: readyLikely.date, minute: readyLikely.minute },
    readyCautiousLocal: { date: readyCautious.date, minute: readyCautious.minute },
    personMinutes: plan.personMinutes,
    elapsedMinutes: plan.elapsedMinutes,
    idleMinutes: plan.idleMinutes,
    critical: plan.critical,
  }
}
