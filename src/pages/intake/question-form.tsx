import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { FieldError, Kept } from '../frame'
import { Button, Once } from '../parts/button'
import { errorFor, FieldFault } from '../parts/error-summary'
import { paths } from '../paths'
import { PhotoForms } from './photo-forms'
import { QuestionInput } from './question-input'
import type { PhotoView, QuestionView, Trap } from './question-view'

export type QuestionFormProps = {
  readonly words: Words
  readonly id: string
  readonly question: QuestionView
  readonly once: string
  readonly kept?: Kept
  readonly errors?: readonly FieldError[]
  readonly trap?: Trap
  readonly photos?: readonly PhotoView[]
  /** Another way on while this question stays open. */
  readonly leaveHref: string
}

const WhyWeAsk: FC<{ readonly words: Words; readonly text: string | undefined }> = ({
  words,
  text,
}) =>
  text === undefined ? null : (
    <details class="why">
      <summary>{words.say('page.why.ask')}</summary>
      <p>{text}</p>
    </details>
  )

const TrapFields: FC<{ readonly words: Words; readonly trap: Trap }> = ({ words, trap }) => (
  <div class="aside" aria-hidden="true">
    <label for="trap">{words.say('page.trap')}</label>
    <input id="trap" type="text" name={trap.field} tabindex={-1} autocomplete="off" value="" />
    <input type="hidden" name={trap.timeField} value={trap.time} />
  </div>
)

/** The question being asked: an ordinary form, outside the lines already written. */
export const QuestionForm: FC<QuestionFormProps> = (p) => {
  const { words, question: q, errors } = p
  const valueFault = errorFor(errors, 'value') ?? errorFor(errors, 'value[]')
  const isPhotos = q.kind === 'photos'
  return (
    <div class="now">
      {isPhotos ? (
        <>
          <h1 id="q" tabindex={-1}>
            {q.prompt}
          </h1>
          {q.how ? <p class="hint">{q.how}</p> : null}
          <WhyWeAsk words={words} text={q.why} />
          <PhotoForms {...p} />
        </>
      ) : null}
      <form method="post" action={paths.answer(p.id, q.id)} novalidate data-enhance="answer">
        <Once once={p.once} />
        {isPhotos ? (
          (p.photos ?? []).map((photo) => (
            <input type="hidden" name="value[]" value={photo.photo} />
          ))
        ) : (
          <fieldset aria-describedby={q.how ? 'q-how' : undefined}>
            <legend>
              <h1 id="q" tabindex={-1}>
                {q.prompt}
              </h1>
            </legend>
            {q.how ? (
              <p class="hint" id="q-how">
                {q.how}
              </p>
            ) : null}
            <WhyWeAsk words={words} text={q.why} />
            {q.kind === 'multi' ? <p class="hint">{words.say('page.multi.none')}</p> : null}
            <FieldFault name="value" message={valueFault} />
            <QuestionInput
              words={words}
              question={q}
              {...(p.kept ? { kept: p.kept } : {})}
              {...(errors ? { errors } : {})}
            />
            {p.trap ? <TrapFields words={words} trap={p.trap} /> : null}
          </fieldset>
        )}
        <div class="acts">
          <Button>{words.say('page.go-on')}</Button>
          {q.unsureAllowed ? (
            <Button name="unsure" value="1" quiet>
              {words.say('page.not-sure')}
            </Button>
          ) : null}
          {q.optional ? (
            <Button name="skip" value="1" quiet>
              {words.say('page.leave-out')}
            </Button>
          ) : null}
        </div>
        <p class="elsewhere">
          <a href={p.leaveHref}>{words.say('page.leave')}</a>
        </p>
      </form>
    </div>
  )
}
