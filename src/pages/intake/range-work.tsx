import type { FC } from 'hono/jsx'
import type { CouldAdd, Estimate, EstimateStep } from '../../quote/estimate-types'
import { TRACKS } from '../../quote/rules'
import type { Words } from '../../words/render'
import { chanceWords } from '../parts/chance'
import { hours, roundMoney } from '../parts/money-text'
import { NotOffered } from '../parts/not-offered'
import { Why } from '../parts/why'

export type RangeWorkProps = {
  readonly words: Words
  readonly estimate: Estimate
  /** Without a figure of the whole there is none of a part. */
  readonly shows: 'range' | 'from' | 'after-review'
}

const sourcesOf = (lines: readonly { readonly source: string }[]): string =>
  [...new Set(lines.map((l) => l.source))].join('; ')

const Included: FC<RangeWorkProps> = ({ words, estimate, shows }) => {
  const tracks = TRACKS.flatMap((track) => {
    const steps = estimate.steps.filter((s) => s.track === track)
    return steps.length > 0 ? [{ track, steps }] : []
  })
  const because = (steps: readonly EstimateStep[]) => [...new Set(steps.flatMap((s) => s.because))]
  return (
    <section>
      <h2>{words.say('page.work')}</h2>
      {tracks.map(({ track, steps }) => (
        <details>
          <summary>
            {words.say('page.work.steps', {
              track: words.say(`page.track.${track}`),
              n: steps.length,
            })}
          </summary>
          <ul class="plain">
            {steps.map((s) => (
              <li>
                {s.name ?? words.say(`step.${s.id}`)}
                {s.byTime && shows === 'range' ? (
                  <span class="quietly">
                    {' '}
                    {words.say('page.work.by-time', { cap: hours(words, s.byTime.capMinutes) })}
                  </span>
                ) : null}
              </li>
            ))}
          </ul>
          <Why words={words} because={because(steps)} source={sourcesOf(steps)} />
        </details>
      ))}
    </section>
  )
}

const name = (words: Words, c: CouldAdd): string =>
  words.say(c.kind === 'event' ? `event.${c.id}` : `step.${c.id}`)

/** Lines shown at first; the rest, each less likely or smaller, stands folded. */
const MOST_COULD_ADD = 6

const CouldAddList: FC<
  Omit<RangeWorkProps, 'estimate'> & { readonly lines: readonly CouldAdd[] }
> = ({ words, lines, shows }) => (
  <ul class="plain">
    {lines.map((c) => (
      <li>
        {name(words, c)}{' '}
        <span class="quietly">
          {shows === 'after-review'
            ? chanceWords(words, c.probability)
            : words.say('page.could-add.line', {
                chance: chanceWords(words, c.probability),
                price: roundMoney(words, c.price),
              })}
        </span>
        <Why words={words} because={c.because} source={c.source} />
      </li>
    ))}
  </ul>
)

/** What is in the range, what could come on top with its chance, and what is refused. */
export const RangeWork: FC<RangeWorkProps> = (p) => {
  const { words, estimate, shows } = p
  const { couldAdd, openPoints, scope } = estimate
  return (
    <>
      {scope.turnedDown.length > 0 ? (
        <section>
          <h2>{words.say('page.refused')}</h2>
          {scope.turnedDown.map((r) => (
            <div class="note stop">
              <p>
                <b>{words.say(`refuse.${r.id}`, r.params)}</b>
              </p>
              {words.has(`refuse.${r.id}.turn`) ? (
                <p>{words.say(`refuse.${r.id}.turn`, r.params)}</p>
              ) : null}
              <Why words={words} because={r.because} source={r.source} />
            </div>
          ))}
        </section>
      ) : null}
      <NotOffered words={words} scope={scope} />
      {estimate.steps.length > 0 ? <Included {...p} /> : null}
      {couldAdd.length > 0 ? (
        <section>
          <h2>{words.say('page.could-add')}</h2>
          <p class="quietly">{words.say('page.could-add.lead')}</p>
          <CouldAddList words={words} shows={shows} lines={couldAdd.slice(0, MOST_COULD_ADD)} />
          {couldAdd.length > MOST_COULD_ADD ? (
            <details>
              <summary>
                {words.say('page.could-add.more', { n: couldAdd.length - MOST_COULD_ADD })}
              </summary>
              <CouldAddList words={words} shows={shows} lines={couldAdd.slice(MOST_COULD_ADD)} />
            </details>
          ) : null}
        </section>
      ) : null}
      {openPoints.length > 0 ? (
        <section>
          <h2>{words.say('page.open-points')}</h2>
          <ul class="plain">
            {openPoints.map((o) => (
              <li>
                {words.say(`open.${o.id}`)}
                <Why words={words} because={o.because} source={o.source} />
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  )
}
