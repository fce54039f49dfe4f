import { splitLocal, toLocalMinute } from '../../kernel/calendar-zone'
import type { Estimate, EstimateStep } from '../../quote/estimate-types'
import { replan, type Task } from '../../quote/plan'
import { steps as catalogue } from '../../quote/steps'
import type { Call, Load } from '../route'
import type { Desk } from './desk'

type Any = Pick<Call<unknown, unknown, Load>, 'now' | 'studio'>

/** Steps nobody may do who may not lift: wheels, seats, a car on stands. */
const LIFTING = new Set(['lifting'])

const lifts = (s: EstimateStep): boolean => s.cautions.some((c) => LIFTING.has(c))

/** Steps left out with all that has to come after them. */
const without = (
  steps: readonly EstimateStep[],
  out: (s: EstimateStep) => boolean,
): ReadonlySet<string> => {
  const gone = new Set(steps.filter(out).map((s) => s.id))
  for (const s of steps) if (s.after.some((id) => gone.has(id))) gone.add(s.id)
  return gone
}

const tasksOf = (steps: readonly EstimateStep[], gone: ReadonlySet<string>): readonly Task[] => {
  const lag = new Map(steps.map((s) => [s.id, s.lagMinutes]))
  return steps
    .filter((s) => !gone.has(s.id))
    .map((s) => {
      const rule = catalogue.find((r) => r.id === s.id)
      return {
        id: s.id,
        minutes: Math.max(1, s.expectedMinutes),
        crewMax: s.crewMax,
        machine: s.machine,
        needs: { bay: rule?.bay ?? true, lift: rule?.lift ?? false },
        after: s.after
          .filter((id) => !gone.has(id))
          .map((id) => ({
            id,
            lag: lag.get(id) ?? 0,
            lagKind: 'elapsed' as const,
            block: 'car' as const,
          })),
        pausable: rule?.pausable ?? true,
        ...(rule?.outside ? { outside: true } : {}),
      }
    })
}

export type Crew = { readonly people: number; readonly noLifting: boolean }

/**
 * When the rest of a job is ready from now on with the people there. Work done counts in planned
 * minutes; steps that lift wait while nobody may, with all behind them. Null: no plan, because nobody is
 * there or no hours are left. `waits` names what stays undone by it.
 */
export const replanned = (call: Any, desk: Desk, estimate: Estimate, crew: Crew) => {
  const { steps } = estimate
  const { bench } = desk.docket
  const done = (id: string): boolean => bench.steps[id]?.state === 'done'
  const gone = crew.noLifting ? without(steps, (s) => lifts(s) && !done(s.id)) : new Set<string>()
  const waits = steps.filter((s) => gone.has(s.id)).map((s) => s.id)
  const tasks = tasksOf(steps, gone)
  if (crew.people < 1 || tasks.every((t) => done(t.id))) return { ready: null, waits }
  const { engine } = call.studio
  const now = splitLocal(toLocalMinute(engine.zone, Math.floor(call.now / 60_000)))
  const plan = replan(
    tasks,
    engine,
    tasks
      .filter((t) => bench.steps[t.id])
      .map((t) => {
        const used = bench.steps[t.id]?.minutes ?? 0
        return { id: t.id, minutes: done(t.id) ? t.minutes : Math.min(used, t.minutes - 1) }
      }),
    now,
    [{ date: now.date, people: crew.people }],
  )
  return { ready: plan.ok ? plan.value.readyAt.utc : null, waits }
}
