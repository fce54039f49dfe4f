import { type Answer, isUnsure } from '../../intake/answers'
import type { Contact, Question } from '../../intake/question'
import { reader } from '../../intake/reader'
import { script } from '../../intake/script'
import { decimalFromMinor } from '../../kernel/currency'
import type { Kept } from '../../pages/frame'
import type { AnsweredView, PhotoView } from '../../pages/intake/question-view'
import { paths } from '../../pages/paths'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import type { Desk } from '../acts/desk'

/** The lines above the current question, each with the reply it got. */
export const answeredViews = (desk: Desk, words: Words): readonly AnsweredView[] => {
  const r = reader(desk.answers)
  return desk.replayed.answered.map(({ question, answer }) => ({
    question: question.id,
    prompt: words.say(`q.${question.id}.prompt`),
    answer: answerText(question, answer, words),
    reply: words.say(question.reply(r)),
  }))
}

/** A stored answer as the fields of its form, for changing it. */
export const keptAnswer = (
  q: Question<unknown>,
  answer: Answer | undefined,
  words: Words,
): Kept | undefined => {
  if (answer === undefined || isUnsure(answer) || answer.value === null) return undefined
  const { value } = answer
  switch (q.kind) {
    case 'multi':
    case 'photos':
      return { 'value[]': value as readonly string[] }
    case 'number':
      return { value: [String(value)], ...(q.unit ? { unit: [q.unit] } : {}) }
    case 'money': {
      const text = decimalFromMinor(Number(value), words.formats.currency)
      return { value: [text.ok ? text.value : String(value)] }
    }
    case 'contact': {
      const c = value as Contact
      return {
        name: [c.name],
        ...(c.email ? { email: [c.email] } : {}),
        ...(c.phone ? { phone: [c.phone] } : {}),
      }
    }
    default:
      return { value: [String(value)] }
  }
}

export const photoViews = (desk: Desk, words: Words): readonly PhotoView[] =>
  desk.photos.map((p) => ({
    photo: p.id,
    subject: words.has(`photo.${p.subject}`) ? words.say(`photo.${p.subject}`) : words.say('photo'),
    src: paths.photo(desk.id, p.id),
  }))

export const setAsideTexts = (desk: Desk, words: Words): readonly string[] =>
  desk.replayed.setAside
    .filter((id) => script.questions.some((q) => q.id === id))
    .map((id) => words.say(`q.${id}.prompt`))
