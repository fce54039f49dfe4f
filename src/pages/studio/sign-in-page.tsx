import type { FC } from 'hono/jsx'
import type { FieldError, Frame } from '../frame'
import { Layout } from '../layout'
import { Button } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { Field } from '../parts/field'
import { paths } from '../paths'

export type SignInPageProps = {
  readonly frame: Frame
  readonly errors?: readonly FieldError[]
  /** Code from the link, so that the button alone signs in. */
  readonly code?: string
}

/** Signing in by a one-use code; the code may be pasted, nothing is to be remembered. */
export const SignInPage: FC<SignInPageProps> = ({ frame, errors, code }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.sign-in')}>
      <ErrorSummary words={words} errors={errors} />
      <section>
        <h1>{words.say('page.sign-in')}</h1>
        <p>{words.say('page.sign-in.lead')}</p>
        <form method="post" action={paths.signIn} novalidate>
          <Field
            name="code"
            label={words.say('page.sign-in.code')}
            hint={words.say('page.sign-in.hint')}
            autocomplete="one-time-code"
            value={code ?? ''}
            {...(errors ? { errors } : {})}
          />
          <div class="acts">
            <Button>{words.say('page.sign-in.button')}</Button>
          </div>
        </form>
      </section>
    </Layout>
  )
}
