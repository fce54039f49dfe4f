import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { PrivateLink } from '../parts/private-link'
import { paths } from '../paths'

export type SentPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly reference: string
  readonly link: string
  readonly qrSvg?: string
}

/** It has arrived: the reference, what happens now, and the link to come back by. */
export const SentPage: FC<SentPageProps> = ({ frame, id, reference, link, qrSvg }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.sent.title')} scripts={['enhance.js']}>
      <section>
        <h1>{words.say('page.sent.title')}</h1>
        <p class="lead-figure">{reference}</p>
        <p>{words.say('page.sent.next')}</p>
        <div class="acts">
          <a class="button" href={paths.range(id)}>
            {words.say('page.sent.see')}
          </a>
        </div>
      </section>
      <section>
        <h2>{words.say('page.sent.keep')}</h2>
        <PrivateLink
          words={words}
          link={link}
          label={words.say('page.leave.link')}
          {...(qrSvg ? { qrSvg } : {})}
        />
        <p class="quietly">{words.say('page.leave.private')}</p>
        <p>
          <a href={paths.data(id)}>{words.say('page.data.see')}</a>
        </p>
      </section>
    </Layout>
  )
}
