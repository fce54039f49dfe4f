import type { FC } from 'hono/jsx'
import type { FieldError, Frame, Kept } from '../frame'
import { Layout } from '../layout'
import { DocketLine } from '../parts/docket-line'
import { ErrorSummary } from '../parts/error-summary'
import { paths } from '../paths'
import { QuestionForm } from './question-form'
import type { AnsweredView, PhotoView, QuestionView, Trap } from './question-view'

export type ConversationPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly answered: readonly AnsweredView[]
  /** The question to answer now; null when nothing is left to ask. */
  readonly question: QuestionView | null
  /** True while an earlier answer is being changed: the way on leads back to the first open question. */
  readonly changing?: boolean
  readonly progress: { readonly answered: number; readonly expected: number }
  readonly once: string
  readonly canRange: boolean
  /** The range as things stand, in words, where the studio shows figures. */
  readonly range?: string
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
  readonly trap?: Trap
  readonly photos?: readonly PhotoView[]
  /** Answers kept but out of play as things stand, as their prompts. */
  readonly setAside?: readonly string[]
  /** The studio asks this question once more, after sending: its words, and the way past. */
  readonly again?: { readonly text: string | null; readonly onward: string }
}

const Progress: FC<ConversationPageProps> = ({ frame, progress }) => {
  const left = Math.max(0, progress.expected - progress.answered)
  const n = { answered: progress.answered, left }
  return (
    <p class="progress">
      {frame.words.say(left === 0 ? 'page.progress.done' : 'page.progress', n)}
    </p>
  )
}

const WaysOn: FC<ConversationPageProps> = ({ frame: { words }, id, canRange, question, range }) => (
  <div class="now">
    {question === null ? (
      <h1 id="q" tabindex={-1}>
        {words.say('page.all-asked')}
      </h1>
    ) : null}
    {canRange ? (
      <>
        {range ? (
          <p id="range-now">
            <b>{range}</b>
          </p>
        ) : null}
        <p>{words.say(question === null ? 'page.range.ready' : 'page.range.so-far')}</p>
        <div class="acts">
          <a class={question === null ? 'button' : 'button quiet'} href={paths.range(id)}>
            {words.say('page.range.see')}
          </a>
        </div>
      </>
    ) : null}
  </div>
)

/** The intake: what has been said, numbered, and the one question that is open. */
export const ConversationPage: FC<ConversationPageProps> = (p) => {
  const { frame, id, answered, question, errors } = p
  const { words } = frame
  const faulty = (errors?.length ?? 0) > 0
  const title = question?.prompt ?? words.say('page.all-asked')
  return (
    <Layout
      frame={frame}
      title={faulty ? words.say('page.faulty-title', { title }) : title}
      scripts={['enhance.js']}
    >
      <div data-part="head">
        <ErrorSummary words={words} errors={errors} />
      </div>
      <div role="log" aria-label={words.say('page.log')} data-part="log">
        <ol class="lines">
          {answered.map((a) => (
            <DocketLine
              {...(p.again
                ? {}
                : {
                    change: {
                      href: paths.question(id, a.question),
                      text: words.say('page.change'),
                      about: a.prompt,
                    },
                  })}
            >
              <p class="asked">{a.prompt}</p>
              <p class="said">{a.answer}</p>
              {a.reply ? <p class="reply">{a.reply}</p> : null}
            </DocketLine>
          ))}
        </ol>
      </div>
      <div data-part="now">
        {p.again ? (
          <div class="note know" id="asked-again">
            <p>
              <b>{words.say('page.again.asked')}</b>
            </p>
            {p.again.text ? <p class="said-plainly">{p.again.text}</p> : null}
          </div>
        ) : null}
        {question ? (
          <QuestionForm
            words={words}
            id={id}
            question={question}
            once={p.once}
            leaveHref={paths.leave(id)}
            {...(p.kept ? { kept: p.kept } : {})}
            {...(errors ? { errors } : {})}
            {...(p.trap ? { trap: p.trap } : {})}
            {...(p.photos ? { photos: p.photos } : {})}
          />
        ) : null}
        {p.again ? null : <Progress {...p} />}
        {p.changing && !p.again ? (
          <p class="elsewhere">
            <a href={paths.conversation(id)}>{words.say('page.keep-as-it-was')}</a>
          </p>
        ) : null}
        {p.setAside && p.setAside.length > 0 ? (
          <details class="why set-aside">
            <summary>{words.say('page.set-aside', { n: p.setAside.length })}</summary>
            <ul>
              {p.setAside.map((text) => (
                <li>{text}</li>
              ))}
            </ul>
          </details>
        ) : null}
        {p.again ? (
          <p class="elsewhere">
            <a href={p.again.onward}>{words.say('page.again.onward')}</a>
          </p>
        ) : (
          <WaysOn {...p} />
        )}
      </div>
    </Layout>
  )
}
