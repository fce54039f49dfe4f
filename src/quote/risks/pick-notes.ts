import type { Answers } from '../../intake/answers'
import type { Phrase } from '../../intake/question'
import { session } from '../../intake/session'
import { worldsIn } from '../../intake/worlds'
import type { Context } from '../context'
import { type RiskRule, SEVERITIES, type Severity } from '../rules'
import { COVERS } from './covers'

/** A note that is raised: `because` are the questions read, `chance` the weight of the worlds in it. */
export type Note = {
  readonly id: string
  readonly severity: Severity
  readonly because: readonly string[]
  readonly params: NonNullable<Phrase['params']>
  readonly chance: number
}

/** A note is raised from this weight on; a stop note earlier, for what it costs to be wrong (own estimate). */
export const LEAST = 0.2
export const LEAST_STOP = 0.1

/** From which weight on a note of this rule is raised. */
export const leastOf = (rule: Pick<RiskRule, 'severity' | 'least'>): number =>
  rule.least ?? (rule.severity === 'stop' ? LEAST_STOP : LEAST)

/** A list longer than this is not read: past it the lightest know-notes are left out (own estimate). */
export const MOST_NOTES = 12

/**
 * All notes of one set of answers: stop before decide before know, then by weight, then by id; each
 * id once, and none that another covers. `params` are those of the likeliest state it holds in.
 */
export const raisedNotes = (
  rules: readonly RiskRule[],
  answers: Answers,
  context: Context,
  s = session(answers),
): readonly Note[] => {
  const picked = new Map<string, { note: Note; weight: number }>()
  for (const rule of rules) {
    const states = worldsIn(s, (r) => rule.when(r, context))
    let chance = 0
    let heaviest = -1
    let params: Note['params'] = {}
    for (const { weight, result } of states.worlds) {
      if (result === null || result === undefined) continue
      chance += weight
      if (weight > heaviest) {
        heaviest = weight
        params = result
      }
    }
    const least = leastOf(rule)
    // A hair below the limit still counts: weights are sums of decimal fractions.
    if (heaviest < 0 || chance < least - 1e-9 || picked.has(rule.id)) continue
    const note = { id: rule.id, severity: rule.severity, because: states.because, params, chance }
    picked.set(rule.id, { note, weight: rule.weight })
  }
  const covered = new Set([...picked.keys()].flatMap((id) => COVERS[id] ?? []))
  return [...picked.values()]
    .filter(({ note }) => !covered.has(note.id))
    .sort(
      (a, b) =>
        SEVERITIES.indexOf(a.note.severity) - SEVERITIES.indexOf(b.note.severity) ||
        b.weight - a.weight ||
        (a.note.id < b.note.id ? -1 : 1),
    )
    .map(({ note }) => note)
}

/**
 * The notes an owner is shown: every stop and decide note, and as many know-notes, heaviest first,
 * as fit into twelve. `raisedNotes` has them all.
 */
export const pickNotes = (
  rules: readonly RiskRule[],
  answers: Answers,
  context: Context,
  s = session(answers),
): readonly Note[] =>
  raisedNotes(rules, answers, context, s).filter((n, i) => n.severity !== 'know' || i < MOST_NOTES)
