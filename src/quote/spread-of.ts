import { script } from '../intake/script'
import type { ThreePoint } from './context'
import { type Leaf, mergeLeaves } from './merge-leaves'
import type { RunEvent, RunStep } from './needs'
import type { Case, SpreadInput, SpreadItem, Unknown } from './spread'

const NOTHING: ThreePoint = { optimistic: 0, mode: 0, pessimistic: 0 }

const scaled = (t: ThreePoint, factor: number): ThreePoint =>
  factor === 1
    ? t
    : {
        optimistic: t.optimistic * factor,
        mode: t.mode * factor,
        pessimistic: t.pessimistic * factor,
      }

const stepLeaves = (run: RunStep, pace: number): readonly Leaf[] =>
  run.worlds.map(({ when, result }) => ({
    when,
    chance: result === null ? 0 : (result.need.chance ?? 1),
    minutes: result === null ? NOTHING : scaled(result.need.minutes, pace),
    money: result?.need.money ?? NOTHING,
  }))

const eventLeaves = (run: RunEvent): readonly Leaf[] =>
  run.worlds.map(({ when, result }) => ({
    when,
    chance: result?.chance ?? 0,
    minutes: result?.minutes ?? NOTHING,
    money: result?.money ?? NOTHING,
  }))

export type SpreadOf = {
  readonly carSd: number
  readonly ratePerHour: number
  readonly minimumMoney: number
  readonly fixedMoney: number
  readonly pace: (step: string) => number
  /** Person-minutes that belong to no step: setting up each day. */
  readonly setUp: number
}

const byId = new Map(script.questions.map((q) => [q.id, q]))
const questionOf = (id: string) => byId.get(id)

/** Steps and events with their worlds as the input of the spread; unknowns are question ids. */
export const spreadOf = (
  steps: readonly RunStep[],
  events: readonly RunEvent[],
  of: SpreadOf,
): SpreadInput => {
  const unknowns: Unknown[] = []
  const index = new Map<string, number>()
  const place = (id: string): number => {
    const known = index.get(id)
    if (known !== undefined) return known
    const q = questionOf(id)
    unknowns.push({ id, weights: (q?.likely ?? []).map(([, w]) => w), carSd: q?.carSd ?? 0 })
    index.set(id, unknowns.length - 1)
    return unknowns.length - 1
  }
  const all = (id: string): number => (1 << (questionOf(id)?.likely?.length ?? 0)) - 1
  const item = (id: string, leaves: readonly Leaf[]): SpreadItem => ({
    id,
    ratePerHour: of.ratePerHour,
    cases: mergeLeaves(leaves, all).map(
      (leaf): Case => ({ ...leaf, when: leaf.when.map(([q, o]) => [place(q), o] as const) }),
    ),
  })
  const every = { optimistic: of.setUp, mode: of.setUp, pessimistic: of.setUp }
  const items = [
    item('set-up', [{ when: [], chance: 1, minutes: every, money: NOTHING }]),
    ...steps.map((s) => item(s.rule.id, stepLeaves(s, of.pace(s.rule.id)))),
    ...events.map((e) => item(`event:${e.id}`, eventLeaves(e))),
  ]
  return {
    items,
    unknowns,
    carSd: of.carSd,
    fixedMoney: of.fixedMoney,
    minimumMoney: of.minimumMoney,
  }
}
