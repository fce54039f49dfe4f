import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { PrivateLink } from '../parts/private-link'

export type SitePageProps = {
  readonly frame: Frame
  /** The door of the intake, as anybody may have it. */
  readonly link: string
  readonly qrSvg: string
  /** The same with answers in it. */
  readonly example: string
}

/** The door of the intake for the studio's own site, a card or the wall: a plain link and its code. */
export const SitePage: FC<SitePageProps> = ({ frame, link, qrSvg, example }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.site')} scripts={['enhance.js']}>
      <section>
        <h1>{words.say('page.site')}</h1>
        <p>{words.say('page.site.lead')}</p>
        <PrivateLink words={words} link={link} label={words.say('page.site.link')} qrSvg={qrSvg} />
      </section>
      <section>
        <h2>{words.say('page.site.html')}</h2>
        <p>
          <code>{`<a href="${link}">${words.say('page.start.title')}</a>`}</code>
        </p>
        <h2>{words.say('page.site.along')}</h2>
        <p>{words.say('page.site.along.lead')}</p>
        <p>
          <code>{example}</code>
        </p>
      </section>
    </Layout>
  )
}
