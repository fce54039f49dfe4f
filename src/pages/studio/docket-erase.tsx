import type { FC } from 'hono/jsx'
import { Button } from '../parts/button'
import { Tick } from '../parts/tick'
import { paths } from '../paths'
import { type ActsProps, Rev } from './docket-acts'

/** Deletes what tells who the customer is, when they ask for it; the figures of the job stay. */
export const Erase: FC<ActsProps> = (p) => (
  <section class="screen-only" id="erase">
    <details>
      <summary>{p.words.say('page.erase')}</summary>
      <p>{p.words.say('page.erase.lead')}</p>
      <form method="post" action={paths.docketErasure(p.docket.id)}>
        <Rev {...p} what="erase" />
        <Tick type="checkbox" name="sure" value="1" label={p.words.say('page.erase.sure')} />
        <div class="acts">
          <Button quiet>{p.words.say('page.erase.button')}</Button>
        </div>
      </form>
    </details>
  </section>
)
