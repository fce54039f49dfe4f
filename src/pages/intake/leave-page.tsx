import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { LinkMaker, type MadeLink } from '../parts/link-maker'
import { paths } from '../paths'

export type LeavePageProps = {
  readonly frame: Frame
  readonly id: string
  readonly once: string
  /** Set once a link was asked for; looking at the page makes none. */
  readonly made?: MadeLink
}

/** How to come back, here or on another device. */
export const LeavePage: FC<LeavePageProps> = ({ frame, id, once, made }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.leave.title')} scripts={['enhance.js']}>
      <section>
        <h1>{words.say('page.leave.title')}</h1>
        <p>{words.say('page.leave.saved')}</p>
        <LinkMaker words={words} id={id} once={once} {...(made ? { made } : {})} />
        <div class="acts">
          <a class="button quiet" href={paths.conversation(id)}>
            {words.say('page.leave.stay')}
          </a>
        </div>
      </section>
    </Layout>
  )
}
