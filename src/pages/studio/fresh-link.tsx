import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { Button, Once } from '../parts/button'
import { PrivateLink } from '../parts/private-link'
import { paths } from '../paths'

/** Asks for a new private link for a customer whose own is old or lost. */
export const FreshLink: FC<{
  readonly words: Words
  readonly id: string
  readonly once: string
}> = ({ words, id, once }) => (
  <section class="screen-only">
    <form method="post" action={paths.docketLink(id)}>
      <Once once={`${once}-link`} />
      <p class="quietly">{words.say('page.fresh-link.lead')}</p>
      <div class="acts">
        <Button quiet>{words.say('page.fresh-link')}</Button>
      </div>
    </form>
  </section>
)

export type FreshLinkPageProps = {
  readonly frame: Frame
  readonly id: string
  readonly link: string
  readonly qrSvg: string
  /** The last day it opens. */
  readonly until: string
}

/** The new link, to read out, to send or to scan; the older ones go on opening until they are old. */
export const FreshLinkPage: FC<FreshLinkPageProps> = ({ frame, id, link, qrSvg, until }) => {
  const { words } = frame
  return (
    <Layout frame={frame} title={words.say('page.fresh-link.made')} scripts={['enhance.js']}>
      <section>
        <h1>{words.say('page.fresh-link.made')}</h1>
        <PrivateLink
          words={words}
          link={link}
          label={words.say('page.fresh-link.label')}
          qrSvg={qrSvg}
        />
        <p>{words.say('page.fresh-link.until', { date: until })}</p>
        <p>
          <a href={paths.docket(id)}>{words.say('page.fresh-link.back')}</a>
        </p>
      </section>
    </Layout>
  )
}
