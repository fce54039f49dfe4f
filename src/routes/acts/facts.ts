import { isUnsure } from '../../intake/answers'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import type { Desk } from './desk'

export type Fact = {
  readonly question: string
  readonly prompt: string
  readonly answer: string
  readonly by: string
  readonly unsure: boolean
}

/** Every answer in words with who gave it, in the order of the script. */
export const factsOf = (desk: Desk, words: Words): readonly Fact[] =>
  desk.replayed.answered.map(({ question, answer }) => ({
    question: question.id,
    prompt: words.say(`q.${question.id}.prompt`),
    answer: answerText(question, answer, words),
    by: desk.docket.answeredBy[question.id] ?? 'customer',
    unsure: isUnsure(answer),
  }))

const PERSONAL = new Set(['contact', 'vin'])

/** The facts the bench works by: all that was told of the car, nothing that tells whose it is. */
export const benchFacts = (desk: Desk, words: Words): readonly Fact[] =>
  factsOf(desk, words).filter((f) => !PERSONAL.has(f.question))
