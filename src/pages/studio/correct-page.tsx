import type { FC } from 'hono/jsx'
import type { FieldError, Frame, Kept } from '../frame'
import { QuestionInput } from '../intake/question-input'
import type { QuestionView } from '../intake/question-view'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary, errorFor, FieldFault } from '../parts/error-summary'
import { Field } from '../parts/field'
import { Tick } from '../parts/tick'
import { paths } from '../paths'

export type CorrectPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly rev: number
  readonly question: QuestionView
  /** The answer as it stands, in words. */
  readonly now: string
  readonly once: string
  readonly kept?: Kept
  readonly errors?: readonly FieldError[]
  readonly why?: string
}

/** Changing an answer for the customer: the same question, and the reason they will read. */
export const CorrectPage: FC<CorrectPageProps> = (p) => {
  const { frame, id, question: q, errors, kept } = p
  const { words } = frame
  const given = { ...(kept ? { kept } : {}), ...(errors ? { errors } : {}) }
  return (
    <Layout frame={frame} title={words.say('page.correct')}>
      <ErrorSummary words={words} errors={errors} />
      <section>
        <p class="quietly">{words.say('page.correct')}</p>
        <form method="post" action={paths.docketAnswer(id, q.id)} novalidate>
          <Once once={p.once} />
          <input type="hidden" name="rev" value={String(p.rev)} />
          <fieldset>
            <legend>
              <h1 id="q">{q.prompt}</h1>
            </legend>
            <p class="quietly">{words.say('page.correct.now', { answer: p.now })}</p>
            <FieldFault
              name="value"
              message={errorFor(errors, 'value') ?? errorFor(errors, 'value[]')}
            />
            <QuestionInput words={words} question={q} {...given} />
            {q.unsureAllowed ? (
              <Tick
                type="checkbox"
                name="unsure"
                value="1"
                label={words.say('page.not-sure')}
                checked={kept?.unsure !== undefined}
              />
            ) : null}
          </fieldset>
          <Field
            name="why"
            label={words.say('page.correct.why')}
            value={p.why ?? ''}
            maxlength={500}
            {...(errors ? { errors } : {})}
          />
          <div class="acts">
            <Button>{words.say('page.correct.button')}</Button>
            <a class="button quiet" href={paths.docket(id)}>
              {words.say('page.correct.back')}
            </a>
          </div>
        </form>
      </section>
    </Layout>
  )
}
