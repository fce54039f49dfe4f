import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { paths } from '../paths'
import { Button, Once } from './button'
import { Tick } from './tick'

/**
 * Signs this browser out. Where lines of the bench still wait on it, the browser's script shows how
 * many and asks for a tick first; `#` stands for the number.
 */
export const SignOut: FC<{
  readonly words: Words
  readonly once: string
  readonly label?: string
}> = ({ words, once, label }) => (
  <form method="post" action={paths.signOut} data-sign-out="1">
    <Once once={once} />
    <div class="note stop" hidden data-left-behind>
      <p>
        <b data-count>{words.say('page.sign-out.unsent', { n: '#' })}</b>
      </p>
      <p>{words.say('page.sign-out.signal')}</p>
      <Tick type="checkbox" name="lose" value="1" label={words.say('page.sign-out.lose')} />
    </div>
    <p class="fault" role="alert" hidden data-needs-signal>
      {words.say('page.sign-out.needs-signal')}
    </p>
    <Button quiet>
      {words.say('page.sign-out')}
      {label ? <span class="unseen"> {label}</span> : null}
    </Button>
  </form>
)
