import type { FC } from 'hono/jsx'
import type { CouldAdd, Estimate } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import { chanceWords } from '../parts/chance'
import { hours } from '../parts/money-text'
import { Why } from '../parts/why'

type Props = { readonly words: Words; readonly estimate: Estimate }

/** Why this price and why these days: the answers and every rule, row and setting behind them. */
export const OfferWhy: FC<Props> = ({ words, estimate: { offer, plan } }) => (
  <>
    <Why
      words={words}
      because={offer.because ?? []}
      reasons={offer.reasons ?? []}
      title={words.say('page.why.offer')}
    />
    <Why
      words={words}
      because={plan.because ?? []}
      reasons={plan.reasons ?? []}
      title={words.say('page.why.days')}
    />
  </>
)

/** What the panels' verdicts rest on alike: the answers, and what was expected before measuring. */
export const PaintWhy: FC<Props> = ({ words, estimate: { paint } }) => (
  <Why
    words={words}
    because={paint.panels[0]?.because ?? []}
    reasons={paint.reasons ?? []}
    title={words.say('page.why.paint')}
  />
)

const Line: FC<{ readonly words: Words; readonly line: CouldAdd }> = ({ words, line }) => (
  <li>
    {words.say(line.kind === 'event' ? `event.${line.id}` : `step.${line.id}`)}{' '}
    <span class="quietly">
      {chanceWords(words, line.probability)}, {hours(words, line.minutes)}
    </span>
    <Why
      words={words}
      because={line.because}
      {...(line.reasons ? { reasons: line.reasons } : { source: line.source })}
    />
  </li>
)

/** What could still come on top, each with its chance, its minutes and where they come from. */
export const CouldAddWhy: FC<Props> = ({ words, estimate: { couldAdd } }) =>
  couldAdd.length === 0 ? null : (
    <details>
      <summary>
        {words.say('page.could-add')} ({couldAdd.length})
      </summary>
      <ul class="plain">
        {couldAdd.map((line) => (
          <Line words={words} line={line} />
        ))}
      </ul>
    </details>
  )
