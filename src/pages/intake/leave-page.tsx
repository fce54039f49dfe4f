import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { PrivateLink } from '../parts/private-link'
import { paths } from '../paths'

export type LeavePageProps = {
  readonly frame: Frame
  readonly id: string
  readonly link: string
  readonly qrSvg?: string
}

/** How to come back, here or on another device. */
export const LeavePage: FC<LeavePageProps> = ({ frame, id, link, qrSvg }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.leave.title')} scripts={['enhance.js']}>
      <section>
        <h1>{words.say('page.leave.title')}</h1>
        <p>{words.say('page.leave.saved')}</p>
        <PrivateLink
          words={words}
          link={link}
          label={words.say('page.leave.link')}
          {...(qrSvg ? { qrSvg } : {})}
        />
        <p class="quietly">{words.say('page.leave.private')}</p>
        <div class="acts">
          <a class="button quiet" href={paths.conversation(id)}>
            {words.say('page.leave.stay')}
          </a>
        </div>
      </section>
    </Layout>
  )
}
