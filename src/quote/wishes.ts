import type { Answers } from '../intake/answers'
import { isUnsure } from '../intake/answers'
import type { StudioSettings } from './context'
import type { Estimate } from './estimate-types'
import type { Spread } from './spread'

const answerTo = (answers: Answers, id: string): unknown => {
  const a = answers[id]
  return a === undefined || isUnsure(a) ? null : a.value
}

/** Whether the day the owner needs the car holds: even cautiously, just so, or not. */
export const deadlineOf = (answers: Answers, plan: Estimate['plan']): Estimate['deadline'] => {
  const date = answerTo(answers, 'deadline')
  if (typeof date !== 'string') return null
  if (plan.readyCautiousLocal.date <= date) return { date, holds: 'yes' }
  return { date, holds: plan.readyLikelyLocal.date <= date ? 'tight' : 'no' }
}

/** The chance that the owner's budget (with tax, minor units) is enough. */
export const budgetOf = (
  answers: Answers,
  s: StudioSettings,
  found: Spread,
): Estimate['budget'] => {
  const amount = answerTo(answers, 'budget')
  if (typeof amount !== 'number') return null
  const net = (amount * 1_000_000) / (1_000_000 + s.taxMillionths)
  return { amount, chance: Math.round(found.chancePriceAtMost(net) * 100) / 100 }
}
