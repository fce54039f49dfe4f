import type { Answer, Answers } from '../../src/intake/answers'
import type { Question } from '../../src/intake/question'
import { reader } from '../../src/intake/reader'
import { type Script, tooMany } from '../../src/intake/replay'

/** Answers every question the script asks, in its order; `answer` is called once for each. */
export const walk = (script: Script, answer: (q: Question<unknown>) => Answer): Answers => {
  const answers: Record<string, Answer> = {}
  // Conditions read earlier questions only, so one reader over the growing answers is enough.
  const r = reader(answers)
  let asked = 0
  for (const q of script.questions) {
    if (!r.asks(q)) continue
    if (tooMany(q, asked)) continue
    asked += 1
    answers[q.id] = answer(q)
  }
  return answers
}
