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
  /** An enquiry this browser already holds. */
  readonly goOn?: { readonly href: string }
}

/** The door: what happens, how long it takes, what becomes of the answers, one button. */
export const StartPage: FC<StartPageProps> = ({ frame, once, contact, goOn }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.start.title')}>
      <section class="opening">
        <h1>{words.say('page.start.title')}</h1>
        <p>{words.say('page.start.lead')}</p>
      </section>
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
          <div class="acts">
            <Button>{words.say('page.start.button')}</Button>
            {goOn ? (
              <a class="button quiet" href={goOn.href}>
                {words.say('page.start.go-on')}
              </a>
            ) : null}
          </div>
        </form>
        {contact ? <p class="quietly">{words.say('page.start.contact', { contact })}</p> : null}
      </section>
    </Layout>
  )
}
