import { type Answer, isUnsure } from '../intake/answers'
import type { Contact, Question } from '../intake/question'
import type { Words } from './render'

const optionKey = (q: Question<unknown>, value: unknown): string => `q.${q.id}.o.${String(value)}`

/**
 * A stored answer in words, for the line above the current question: options by their labels, numbers
 * with their unit, dates and money as the locale writes them. Text is returned as typed.
 */
export const answerText = (q: Question<unknown>, answer: Answer, words: Words): string => {
  if (isUnsure(answer)) return words.say('answer.unsure')
  const { value } = answer
  if (value === null || value === undefined) return words.say('answer.left-out')
  const formatted = (format: string): string =>
    words.say(`answer.as.${format}`, { v: value as string })
  switch (q.kind) {
    case 'choice':
      return words.say(optionKey(q, value))
    case 'multi': {
      const picked = value as readonly string[]
      if (picked.length === 0) return words.say('answer.none')
      return words.say('answer.as.words', { v: picked.map((o) => optionKey(q, o)) })
    }
    case 'yesNo':
      return words.say(value === true ? 'answer.yes' : 'answer.no')
    case 'number': {
      // A large number came from another unit or is a guess anyway: decimals would only pretend.
      const n = (value as number) >= 100 ? Math.round(value as number) : (value as number)
      return words.say(q.unit === undefined ? 'answer.as.number' : `unit.${q.unit}`, { n, v: n })
    }
    case 'photos':
      return words.say('answer.photos', { n: (value as readonly string[]).length })
    case 'contact': {
      const { name, email, phone } = value as Contact
      return [name, email, phone].filter((part) => part !== undefined).join(', ')
    }
    case 'year':
    case 'date':
    case 'money':
      return formatted(q.kind)
    case 'text':
    case 'vin':
      return String(value)
  }
}
