import type { FC } from 'hono/jsx'
import type { Estimate } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import { hours, MoneyText, money } from '../parts/money-text'
import { Why } from '../parts/why'
import type { Offer, QuoteLine } from './quote-view'

export type QuoteLinesProps = {
  readonly words: Words
  readonly offer: Offer
  readonly estimate: Pick<Estimate, 'steps'>
  readonly taxMillionths: number
}

export const lineName = (words: Words, line: Pick<QuoteLine, 'step' | 'name'>): string =>
  line.name ?? (words.has(`step.${line.step}`) ? words.say(`step.${line.step}`) : line.step)

/** Names of steps by id: the studio's own work by the name it gave it. */
export const stepNames = (
  words: Words,
  steps: readonly { readonly id: string; readonly name?: string }[],
): ((step: string) => string) => {
  const own = new Map(steps.map((s) => [s.id, s.name]))
  return (step) => {
    const name = own.get(step)
    return lineName(words, name === undefined ? { step } : { step, name })
  }
}

/** The lines with one agreed amount each, and how they come to the total. */
export const QuoteLines: FC<QuoteLinesProps> = ({ words, offer, estimate, taxMillionths }) => {
  const because = new Map(estimate.steps.map((s) => [s.id, s.because]))
  return (
    <table>
      <caption class="unseen">{words.say('page.quote.lines')}</caption>
      <thead>
        <tr>
          <th scope="col">{words.say('page.quote.line')}</th>
          <th scope="col" class="n">
            {words.say('page.quote.amount')}
          </th>
        </tr>
      </thead>
      <tbody>
        {offer.lines.map((line) => (
          <tr>
            <td>
              {lineName(words, line)}
              {line.byTime ? (
                <p class="quietly">
                  {words.say('page.quote.by-time', {
                    cap: hours(words, line.byTime.capMinutes),
                    amount: money(words, line.byTime.capAmount),
                  })}
                </p>
              ) : null}
              <Why words={words} because={because.get(line.step) ?? []} />
            </td>
            <td class="n">
              <MoneyText words={words} minor={line.amount} />
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{words.say('page.quote.net')}</th>
          <td class="n">{money(words, offer.net)}</td>
        </tr>
        <tr>
          <th scope="row">
            {words.say('page.quote.tax', { rate: Math.round(taxMillionths / 100) / 100 })}
          </th>
          <td class="n">{money(words, offer.tax)}</td>
        </tr>
        <tr class="total">
          <th scope="row">{words.say('page.quote.total')}</th>
          <td class="n">{money(words, offer.total)}</td>
        </tr>
      </tfoot>
    </table>
  )
}
