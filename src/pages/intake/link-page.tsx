import type { FC } from 'hono/jsx'
import type { Frame } from '../frame'
import { Layout } from '../layout'
import { Button } from '../parts/button'

export type LinkPageProps = {
  readonly frame: Frame
  /** Where the button posts to; the visit of a preview robot must not use the link up. */
  readonly action: string
  /** Hidden fields of the trade, e.g. the one-use code. */
  readonly fields?: Readonly<Record<string, string>>
  /** What opens behind it. */
  readonly opens: 'enquiry' | 'quote' | 'record' | 'studio' | 'bench'
  /** One use only, or as often as one likes. */
  readonly oneUse: boolean
}

/** Behind a private link: one button, so that only a person opens it. */
export const LinkPage: FC<LinkPageProps> = ({ frame, action, fields, opens, oneUse }) => {
  const { words } = frame
  const title = words.say(`page.link.${opens}`)
  return (
    <Layout frame={frame} title={title}>
      <section>
        <h1>{title}</h1>
        <p>{words.say(oneUse ? 'page.link.once' : 'page.link.again')}</p>
        <form method="post" action={action}>
          {Object.entries(fields ?? {}).map(([name, value]) => (
            <input type="hidden" name={name} value={value} />
          ))}
          <div class="acts">
            <Button>{words.say('page.link.open')}</Button>
          </div>
        </form>
      </section>
    </Layout>
  )
}
