import type { FromStudioView } from '../../pages/parts/from-studio'
import { paths } from '../../pages/paths'
import { answerText } from '../../words/answer-text'
import type { Words } from '../../words/render'
import type { Desk } from '../acts/desk'
import { questionOf } from '../acts/enquiry'
import { openAgain } from '../acts/open-again'

/** What the studio asked again, changed, offered or turned down, as the customer sees it. */
export const fromStudio = (desk: Desk, words: Words): FromStudioView => {
  const { docket, texts } = desk
  const { moved } = docket
  const said = (ref: { readonly text: string } | undefined): string | undefined =>
    ref ? texts.get(ref.text) : undefined
  const why = said(moved?.why)
  const turn = said(moved?.turn)
  return {
    asked: openAgain(desk).map((question) => ({
      href: paths.question(desk.id, question),
      prompt: words.say(`q.${question}.prompt`),
    })),
    corrected: Object.entries(docket.corrected).flatMap(([id, change]) => {
      const answer = desk.answers[id]
      const found = desk.replayed.answered.some((a) => a.question.id === id)
      if (!answer || !found) return []
      return [
        {
          prompt: words.say(`q.${id}.prompt`),
          answer: answerText(questionOf(id), answer, words),
          why: change.text ? (texts.get(change.text) ?? '') : '',
        },
      ]
    }),
    ...(docket.state === 'look-over' && moved?.lookOver
      ? { lookOver: { ...moved.lookOver, ...(why ? { text: why } : {}) } }
      : {}),
    ...(docket.state === 'turned-down'
      ? { turnedDown: { ...(why ? { why } : {}), ...(turn ? { turn } : {}) } }
      : {}),
  }
}
