import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { type FieldError, type Frame, type Kept, keptOne } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { ErrorSummary } from '../parts/error-summary'
import { Field } from '../parts/field'
import { PrivateLink } from '../parts/private-link'
import { paths } from '../paths'
import { HowTold } from './how-told'

export type OutgoingPageProps = {
  readonly frame: Frame
  readonly once: string
  readonly waiting: readonly {
    readonly docket: string
    readonly rev: number
    readonly name: string
    readonly line: string
    readonly text: string
    readonly since: string
  }[]
  /** Where messages to the studio's own system go; null: nowhere. */
  readonly hook: {
    readonly url: string
    readonly since: string
    readonly off: boolean
    readonly counts: { readonly waiting: number; readonly dead: number }
  } | null
  /** Shown once, when it was made. */
  readonly secret?: string
  readonly owner: boolean
  readonly errors?: readonly FieldError[]
  readonly kept?: Kept
}

const Waiting: FC<OutgoingPageProps> = ({ frame: { words }, waiting, once }) => (
  <section id="to-send">
    <h1>{words.say('page.to-send')}</h1>
    <p>{words.say(waiting.length === 0 ? 'page.to-send.none' : 'page.to-send.lead')}</p>
    <ol class="lines">
      {waiting.map((w) => (
        <li>
          <p>
            <a href={paths.docket(w.docket)}>{w.name}</a>
          </p>
          <p>{w.text}</p>
          <p class="quietly">{words.say('page.to-send.since', { date: w.since })}</p>
          <div class="acts">
            <form method="post" action={paths.docketTelling(w.docket)}>
              <input type="hidden" name="line" value={w.line} />
              <Button quiet>{words.say('page.to-send.message')}</Button>
            </form>
            <HowTold
              words={words}
              docket={w.docket}
              rev={w.rev}
              line={w.line}
              once={`${once}-${w.line}`}
              back="list"
            />
          </div>
        </li>
      ))}
    </ol>
  </section>
)

const State: FC<{ readonly words: Words; readonly hook: OutgoingPageProps['hook'] }> = ({
  words,
  hook,
}) =>
  hook === null ? (
    <p>{words.say('page.hook.none')}</p>
  ) : (
    <>
      <p>{words.say(hook.off ? 'page.hook.off' : 'page.hook.on', { date: hook.since })}</p>
      <p class="quietly">
        <code>{hook.url}</code>
      </p>
      <p>{words.say('page.hook.counts', hook.counts)}</p>
    </>
  )

/** The address of the studio's own system, its secret, and how the messages to it stand. */
const Hook: FC<OutgoingPageProps> = ({ frame: { words }, hook, once, secret, errors, kept }) => (
  <section class="screen-only" id="hook">
    <h2>{words.say('page.hook')}</h2>
    <p>{words.say('page.hook.lead')}</p>
    <State words={words} hook={hook} />
    {secret ? (
      <>
        <p role="status">
          <b>{words.say('page.hook.secret.lead')}</b>
        </p>
        <PrivateLink
          words={words}
          link={secret}
          label={words.say('page.hook.secret')}
          id="f-secret"
        />
      </>
    ) : null}
    <form method="post" action={paths.outgoingHook} novalidate>
      <Once once={`${once}-hook`} />
      <Field
        name="url"
        label={words.say('page.hook.url')}
        hint={words.say('page.hook.url.hint')}
        value={keptOne(kept, 'url', hook?.url ?? '')}
        {...(errors ? { errors } : {})}
      />
      <div class="acts">
        <Button name="act" value="set" quiet>
          {words.say('page.hook.set')}
        </Button>
        {hook ? (
          <>
            <Button name="act" value="renew" quiet>
              {words.say('page.hook.renew')}
            </Button>
            <Button name="act" value="test" quiet>
              {words.say('page.hook.test')}
            </Button>
            <Button name="act" value="end" quiet>
              {words.say('page.hook.end')}
            </Button>
          </>
        ) : null}
      </div>
    </form>
  </section>
)

/** What the studio still has to send itself, and what goes to its own system. */
export const OutgoingPage: FC<OutgoingPageProps> = (p) => (
  <Layout frame={p.frame} title={p.frame.words.say('page.to-send')} scripts={['enhance.js']} wide>
    <ErrorSummary words={p.frame.words} errors={p.errors} />
    <Waiting {...p} />
    {p.owner ? <Hook {...p} /> : null}
  </Layout>
)
