import type { Answers } from '../../intake/answers'
import { isUnsure } from '../../intake/answers'
import type { Words } from '../../words/render'

/** The car in a few words without anything personal, for lists: "saloon, 1974". */
export const carTitle = (answers: Answers, words: Words): string => {
  const value = (id: string): unknown => {
    const a = answers[id]
    return a === undefined || isUnsure(a) ? undefined : a.value
  }
  const body = value('body')
  const year = value('year')
  const parts = [
    ...(typeof body === 'string' ? [words.say(`q.body.o.${body}`)] : []),
    ...(typeof year === 'number' ? [String(year)] : []),
  ]
  return parts.join(', ')
}
