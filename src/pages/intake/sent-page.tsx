import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { LinkMaker } from '../parts/link-maker'
import { paths } from '../paths'

export type SentPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly reference: string
  readonly once: string
}

/** It has arrived: the reference, what happens now, and how to come back. */
export const SentPage: FC<SentPageProps> = ({ frame, id, reference, once }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.sent.title')}>
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
        <LinkMaker words={words} id={id} once={once} />
        <p>
          <a href={paths.data(id)}>{words.say('page.data.see')}</a>
        </p>
      </section>
    </Layout>
  )
}
