import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { PrivateLink } from '../parts/private-link'
import { paths } from '../paths'

/** The new address for calendars, shown once. */
export const FeedPage: FC<{ readonly frame: Frame; readonly link: string }> = ({ frame, link }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.feed')} scripts={['enhance.js']}>
      <section>
        <h1>{words.say('page.feed')}</h1>
        <p>{words.say('page.feed.lead')}</p>
        <PrivateLink words={words} link={link} label={words.say('page.feed.link')} />
        <p>
          <a href={paths.days}>{words.say('page.feed.back')}</a>
        </p>
      </section>
    </Layout>
  )
}
