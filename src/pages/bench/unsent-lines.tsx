import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { paths } from '../paths'
import type { Unsent } from './bench-view'

/**
 * How many lines of this device have not arrived, and those the studio did not take. The line of
 * status is always there, so that a change of it is read out.
 */
export const UnsentLines: FC<{ readonly words: Words; readonly unsent: Unsent | undefined }> = ({
  words,
  unsent,
}) => (
  <div class="unsent screen-only">
    <p role="status" id="unsent">
      {unsent && unsent.n > 0 ? (
        <>
          <b>{words.say('page.unsent', { n: unsent.n })}</b>{' '}
          {words.say(`page.unsent.${unsent.why}`)}
        </>
      ) : null}
    </p>
    {unsent?.why === 'signed-out' && unsent.n > 0 ? (
      <p>
        <a href={paths.signIn}>{words.say('page.sign-in')}</a>
      </p>
    ) : null}
    {(unsent?.refused ?? []).map((line) => (
      <div class="note stop" id={`refused-${line.id}`}>
        <p>
          <b>{words.say('page.unsent.refused')}</b> {line.what}
        </p>
        <p>{words.say('page.unsent.because', { why: line.why })}</p>
        <div class="acts">
          <button type="button" data-again={line.id}>
            {words.say('page.unsent.again')}
          </button>
          <button type="button" class="quiet" data-drop={line.id}>
            {words.say('page.unsent.drop')}
          </button>
        </div>
      </div>
    ))}
  </div>
)
