import type { Question } from '../../intake/question'
import type { FieldError, Kept } from '../../pages/frame'
import { ConversationPage } from '../../pages/intake/conversation-page'
import { RangePage } from '../../pages/intake/range-page'
import { paths } from '../../pages/paths'
import { estimate } from '../../quote/estimate'
import { type Desk, deskLoad } from '../acts/desk'
import { signedTime, TRAP } from '../acts/doubting'
import { questionOf } from '../acts/enquiry'
import { deskInput } from '../acts/estimating'
import { openAgain } from '../acts/open-again'
import { questionView } from '../acts/views'
import { answeredViews, keptAnswer, photoViews, setAsideTexts } from './conversation-view'
import { fromStudio } from './from-studio'
import { type Any, frameOf, onceOf, page } from './page'

export const load = ({ params }: { readonly params: Readonly<Record<string, string>> }) =>
  deskLoad(params.id ?? '')

export const yearOf = (now: number): number => new Date(now).getUTCFullYear()

export const firstDone = (desk: Desk): boolean =>
  desk.replayed.needed.every((id) => questionOf(id).stage !== 'first')

/** The range in words as soon as there is one, as far as the studio shows figures before it has looked. */
const rangeNow = (call: Any, desk: Desk): { readonly range?: string } => {
  const { shows } = call.studio.profile
  if (shows === 'after-review' || !firstDone(desk) || desk.docket.state !== 'answering') return {}
  const { low, high } = estimate(deskInput(call.studio, call.now, desk)).offer
  const key = shows === 'from' ? 'page.range.now.from' : 'page.range.now'
  return { range: call.studio.words.say(key, shows === 'from' ? { low } : { low, high }) }
}

type Shown = {
  readonly question?: Question<unknown> | null
  readonly changing?: boolean
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
  readonly status?: number
}

export const conversation = async (call: Any, desk: Desk, shown: Shown = {}) => {
  const { words } = call.studio
  const question = shown.question === undefined ? desk.replayed.current : shown.question
  const kept =
    shown.kept ?? (question ? keptAnswer(question, desk.answers[question.id], words) : undefined)
  const asked = desk.docket.askedAgain.find((a) => a.question === question?.id)
  const again =
    desk.docket.state === 'answering'
      ? null
      : {
          text: asked?.text ? (desk.texts.get(asked.text) ?? null) : null,
          onward: standing(desk),
        }
  return page(
    <ConversationPage
      frame={frameOf(call, { home: paths.start })}
      id={desk.id}
      answered={answeredViews(desk, words)}
      question={question === null ? null : questionView(question, words, desk.answers)}
      changing={shown.changing ?? false}
      progress={desk.replayed.progress}
      once={onceOf(call)}
      canRange={firstDone(desk)}
      {...rangeNow(call, desk)}
      photos={photoViews(desk, words)}
      setAside={setAsideTexts(desk, words)}
      {...(again ? { again } : {})}
      {...(question?.kind === 'contact'
        ? { trap: { ...TRAP, time: await signedTime(desk, call.now) } }
        : {})}
      {...(shown.errors ? { errors: shown.errors } : {})}
      {...(kept ? { kept } : {})}
    />,
    shown.status ?? 200,
  )
}

export const range = (call: Any, desk: Desk, errors: readonly FieldError[] = [], status = 200) => {
  const made = estimate(deskInput(call.studio, call.now, desk))
  const needed = desk.replayed.needed[0]
  const { reference } = desk.docket
  return page(
    <RangePage
      frame={frameOf(call, {
        home: paths.start,
        ...(reference ? { reference, who: reference } : {}),
      })}
      id={desk.id}
      estimate={made}
      shows={call.studio.profile.shows}
      {...(reference ? { fromStudio: fromStudio(desk, call.studio.words) } : {})}
      pricesWithTax={call.studio.profile.pricesWithTax}
      once={onceOf(call)}
      errors={errors}
      {...(reference ? { sent: { reference } } : {})}
      {...(needed && !reference ? { needed: { href: paths.question(desk.id, needed) } } : {})}
    />,
    status,
  )
}

/** Where a sent enquiry leads: to what is asked again, else to where it stands; null before sending. */
export const afterSending = (desk: Desk): string | null => {
  if (desk.docket.state === 'answering') return null
  const open = openAgain(desk)[0]
  return open === undefined ? standing(desk) : paths.question(desk.id, open)
}

const standing = (desk: Desk): string => {
  if (desk.docket.handedOver) return paths.record(desk.id)
  return desk.docket.sent ? paths.quote(desk.id) : paths.range(desk.id)
}
