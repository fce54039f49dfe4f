import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { paths } from '../paths'
import { type ActsProps, Rev } from './docket-acts'

/** An enquiry that may not be from a person: why, and the button that says it is. */
export const Doubted: FC<ActsProps> = (p) =>
  p.docket.doubts.length === 0 ? null : (
    <section class="note decide" id="doubted">
      <h2>{p.words.say('page.doubted')}</h2>
      <ul>
        {p.docket.doubts.map((d) => (
          <li>{p.words.say(`page.doubted.${d}`)}</li>
        ))}
      </ul>
      <p>{p.words.say('page.doubted.means')}</p>
      {p.docket.canAsk ? (
        <form method="post" action={paths.docketGenuine(p.docket.id)} class="screen-only">
          <Rev {...p} what="genuine" />
          <div class="acts">
            <Button quiet>{p.words.say('page.doubted.genuine')}</Button>
          </div>
        </form>
      ) : null}
    </section>
  )
