import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { BenchView } from './bench-view'

/** What the customer agreed beforehand about extras, and what counts if nobody answers. */
export const AgreementLines: FC<{
  readonly words: Words
  readonly agreement: BenchView['agreement']
}> = ({ words, agreement: a }) =>
  a ? (
    <p>
      {a.limit > 0
        ? words.say('page.limit.agreed', { limit: a.limit, left: a.left })
        : words.say('page.limit.none')}{' '}
      {a.unanswered === 'named' && a.decides === null
        ? words.say('page.limit.if-named-there')
        : words.say(`page.limit.if-${a.unanswered}`, { name: a.decides ?? '' })}
    </p>
  ) : null
