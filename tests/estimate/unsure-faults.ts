import type { Answers } from '../../src/intake/answers'
import type { Question } from '../../src/intake/question'
import { script } from '../../src/intake/script'
import { session } from '../../src/intake/session'
import { MOST_WORLDS, worldsIn } from '../../src/intake/worlds'
import type { Context } from '../../src/quote/context'
import { events } from '../../src/quote/events'
import { runEvent, runStep } from '../../src/quote/needs'
import { refusalsOf } from '../../src/quote/refusals'
import { moments } from '../../src/quote/spread'
import { spreadOf } from '../../src/quote/spread-of'
import { steps } from '../../src/quote/steps'
import { settings } from './studio'

const context: Context = { settings, nowYear: 2026 }

type Moment = { readonly mean: number; readonly variance: number }

/** Closed-form mean and variance of the labour of these answers. */
export const labourOf = (answers: Answers): Moment => {
  const told = session(answers)
  const found = spreadOf(
    steps.map((s) => runStep(s, refusalsOf(s.id), told, context)).filter((s) => s.chance > 0),
    events.map((e) => runEvent(e, told, context)).filter((e) => e.chance > 0),
    { carSd: 0.12, ratePerHour: 5_000, minimumMoney: 0, fixedMoney: 0, pace: () => 1, setUp: 0 },
  )
  return moments(found).labour
}

/** Questions that say how likely each option is when the owner does not know. */
export const likelyQuestions = script.questions.filter(
  (q) => q.unsureAllowed && (q.likely?.length ?? 0) > 1,
)

/** Those of them that were asked where these answers were given. */
export const mixed = (answers: Answers): readonly Question<unknown>[] =>
  likelyQuestions.filter((q) => q.id in answers)

/** Rounding of some hundred sums; and what may be missing where a rule met the cap on its worlds. */
const NEAR = 1e-6
const NEAR_CAPPED = 0.01

/** True when some step has so many worlds that a further unsettled question took its likeliest option. */
const capped = (answers: Answers): boolean => {
  const told = session(answers)
  return steps.some(
    (s) => worldsIn(told, (r) => s.need(r, context)).worlds.length > MOST_WORLDS * 0.75,
  )
}

/** Not knowing must not make an estimate surer, nor move its mean outside of what the options give. */
export const unsureFaults = (answers: Answers, q: Question<unknown>): readonly string[] => {
  const unsure = labourOf({ ...answers, [q.id]: { unsure: true } })
  const likely = q.likely ?? []
  const each = likely.map(([value]) => labourOf({ ...answers, [q.id]: { value } }))
  const near = capped({ ...answers, [q.id]: { unsure: true } }) ? NEAR_CAPPED : NEAR
  const means = each.map((m) => m.mean)
  const within = likely.reduce((sum, [, w], i) => sum + w * (each[i]?.variance ?? 0), 0)
  const [least, most] = [Math.min(...means), Math.max(...means)]
  return [
    ...(unsure.mean >= least * (1 - near) && unsure.mean <= most * (1 + near)
      ? []
      : [`${q.id}: mean ${unsure.mean} outside ${least}–${most}`]),
    ...(unsure.variance >= within * (1 - near)
      ? []
      : [`${q.id}: variance ${unsure.variance} below ${within}`]),
  ]
}
