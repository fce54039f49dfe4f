import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { paths } from '../paths'

export type StartPageProps = {
  readonly frame: Frame
  readonly once: string
  /** How to reach the studio without the form, as it wrote it. */
  readonly contact?: string
  /** Enquiries this browser holds already, side by side. */
  readonly mine?: readonly {
    readonly docket: string
    readonly title: string
    readonly state: string
    readonly reference: string | null
  }[]
  /** Answers that came with the link, to be confirmed by beginning. */
  readonly brought?: readonly {
    readonly question: string
    readonly prompt: string
    readonly text: string
    readonly typed: readonly string[]
  }[]
  /** Parts of the link that are no answer we can use. */
  readonly unused?: readonly string[]
}

const Mine: FC<StartPageProps> = ({ frame: { words }, mine = [] }) =>
  mine.length === 0 ? null : (
    <section>
      <h2>{words.say('page.start.mine')}</h2>
      <ul class="plain">
        {mine.map((m) => (
          <li>
            <a href={paths.conversation(m.docket)}>
              {[m.reference, m.title].filter(Boolean).join(' · ') || words.say('page.start.go-on')}
            </a>{' '}
            <span class="quietly">{words.say(`page.mine.${m.state}`)}</span>
          </li>
        ))}
      </ul>
    </section>
  )

const Brought: FC<StartPageProps> = ({ frame: { words }, brought = [], unused = [] }) => (
  <>
    {brought.length > 0 ? (
      <>
        <p>{words.say('page.start.brought')}</p>
        <dl>
          {brought.map((b) => (
            <>
              <dt>{b.prompt}</dt>
              <dd>
                {b.text}
                {b.typed.map((value) => (
                  <input type="hidden" name={`with:${b.question}`} value={value} />
                ))}
              </dd>
            </>
          ))}
        </dl>
      </>
    ) : null}
    {unused.length > 0 ? (
      <p class="quietly">
        {words.say('page.start.unused', { n: unused.length, names: unused.join(', ') })}
      </p>
    ) : null}
  </>
)

/** The door: what happens, how long it takes, what becomes of the answers, one button. */
export const StartPage: FC<StartPageProps> = (p) => {
  const { frame, once, contact } = p
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.start.title')}>
      <section class="opening">
        <h1>{words.say('page.start.title')}</h1>
        <p>{words.say('page.start.lead')}</p>
      </section>
      <Mine {...p} />
      <ol class="lines">
        <li>{words.say('page.start.first')}</li>
        <li>{words.say('page.start.second')}</li>
        <li>{words.say('page.start.third')}</li>
      </ol>
      <section>
        <p>{words.say('page.start.time')}</p>
        <p class="quietly">{words.say('page.start.privacy')}</p>
        <form method="post" action={paths.open}>
          <Once once={once} />
          <Brought {...p} />
          <div class="acts">
            <Button>
              {words.say((p.mine ?? []).length > 0 ? 'page.start.another' : 'page.start.button')}
            </Button>
          </div>
        </form>
        {contact ? <p class="quietly">{words.say('page.start.contact', { contact })}</p> : null}
      </section>
    </Layout>
  )
}
