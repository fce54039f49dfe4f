import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { Button, Once } from '../parts/button'
import { paths } from '../paths'

/** Marks something as told: nothing was sent by the program, so the studio says how it was. */
export const HowTold: FC<{
  readonly words: Words
  readonly docket: string
  readonly rev: number
  readonly line: string
  readonly once: string
  /** Where the page goes on: the list, or the docket. */
  readonly back: 'list' | 'docket'
}> = ({ words, docket, rev, line, once, back }) => (
  <form method="post" action={paths.docketTold(docket)}>
    <Once once={`${once}-told`} />
    <input type="hidden" name="rev" value={String(rev)} />
    <input type="hidden" name="line" value={line} />
    <input type="hidden" name="back" value={back} />
    <div class="acts">
      <Button name="how" value="message" quiet>
        {words.say('page.told.message')}
      </Button>
      <Button name="how" value="phone" quiet>
        {words.say('page.told.phone')}
      </Button>
    </div>
  </form>
)
