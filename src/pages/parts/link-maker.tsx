import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { paths } from '../paths'
import { Button, Once } from './button'
import { PrivateLink } from './private-link'

export type MadeLink = {
  readonly link: string
  readonly qrSvg: string
  /** The last day it opens, as the studio's date. */
  readonly until: string
}

export type LinkMakerProps = {
  readonly words: Words
  readonly id: string
  readonly once: string
  readonly made?: MadeLink
}

/** A private link for whoever asks for one: a page that is only looked at makes no key. */
export const LinkMaker: FC<LinkMakerProps> = ({ words, id, once, made }) =>
  made ? (
    <>
      <PrivateLink
        words={words}
        link={made.link}
        label={words.say('page.leave.link')}
        qrSvg={made.qrSvg}
      />
      <p class="quietly">{words.say('page.leave.private')}</p>
      <p class="quietly">{words.say('page.leave.until', { date: made.until })}</p>
    </>
  ) : (
    <form method="post" action={paths.link(id)} class="screen-only">
      <p>{words.say('page.leave.make.lead')}</p>
      <Once once={once} />
      <div class="acts">
        <Button quiet>{words.say('page.leave.make')}</Button>
      </div>
    </form>
  )
