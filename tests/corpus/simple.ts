import type { Answer, Answers } from '../../src/intake/answers'
import type { Question } from '../../src/intake/question'
import { BODY_OPTIONS } from '../../src/intake/questions/body'
import { SERVICES_OPTIONS } from '../../src/intake/questions/services'
import { script } from '../../src/intake/script'
import { answerWith, levelsOf } from './levels'
import { draws } from './random'
import { walk } from './walk'

const nth = (q: Question<unknown>, n: number): Answer => {
  const levels = levelsOf(q)
  const at = n < 0 ? levels.length + n : Math.min(n, levels.length - 1)
  return answerWith(q, levels[at] ?? 'unsure', draws(1))
}

/** Cars without a history: every body, every one or two services, the other answers first, second or last. */
export const simpleAnswerSets = (): readonly Answers[] => {
  const pairs = SERVICES_OPTIONS.flatMap((a, i) => [
    [a],
    ...SERVICES_OPTIONS.slice(i + 1).map((b) => [a, b]),
  ])
  const made: Answers[] = []
  for (const body of BODY_OPTIONS)
    for (const services of pairs)
      for (const year of [2005, 2021])
        for (const n of [0, 1, 2, -1]) {
          const fixed: Readonly<Record<string, unknown>> = {
            body,
            services,
            year,
            dangers: [],
            'paint-history': 'original',
            'cabin-state': 'tidy',
          }
          made.push(walk(script, (q) => (q.id in fixed ? { value: fixed[q.id] } : nth(q, n))))
        }
  return made
}
