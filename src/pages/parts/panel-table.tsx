import type { FC } from 'hono/jsx'
import type { PanelPaint } from '../../quote/estimate-types'
import type { Words } from '../../words/render'
import { Hatching } from './hatching'
import { Why } from './why'

export type PanelTableProps = {
  readonly words: Words
  /** In the order one walks round the car. */
  readonly panels: readonly PanelPaint[]
  /** For the office: the limits behind each verdict as well. */
  readonly full?: boolean
}

/** Panels in walking order: what was read, what lies on top, what may still come off, in one word why. */
export const PanelTable: FC<PanelTableProps> = ({ words, panels, full }) => (
  <table class="stack">
    <caption>{words.say('page.panels.order')}</caption>
    <thead>
      <tr>
        <th scope="col">{words.say('page.panel')}</th>
        <th scope="col" class="n">
          {words.say('page.panel.reading')}
        </th>
        <th scope="col" class="n">
          {words.say('page.panel.topcoat')}
        </th>
        <th scope="col">{words.say('page.panel.left')}</th>
        <th scope="col">{words.say('page.panel.verdict')}</th>
      </tr>
    </thead>
    <tbody>
      {panels.map((p) => {
        const unread = p.verdict === 'cannot-be-read'
        return (
          <tr>
            <th scope="row">{words.say(`panel.${p.panel}`)}</th>
            <td class="n" data-label={words.say('page.panel.reading')}>
              {p.total === null ? '–' : words.say('format.um', { v: p.total })}
            </td>
            <td class="n" data-label={words.say('page.panel.topcoat')}>
              {p.topcoat === null
                ? words.say('page.panel.unknown')
                : words.say('page.panel.mean-sd', {
                    mean: Math.round(p.topcoat.mean),
                    sd: Math.round(p.topcoat.sd),
                  })}
            </td>
            <td data-label={words.say('page.panel.left')}>
              <Hatching allowance={unread ? null : p.light} />
              <span class="figure">
                {unread
                  ? words.say('page.panel.no-number')
                  : words.say('format.um', { v: p.light })}
              </span>
            </td>
            <td data-label={words.say('page.panel.verdict')}>
              {words.say(`verdict.${p.verdict}`)}
              <Why
                words={words}
                because={p.because}
                more={p.why.map((w) => words.say(w))}
                {...(full ? { counted: true, reasons: p.reasons ?? [] } : {})}
              />
            </td>
          </tr>
        )
      })}
    </tbody>
  </table>
)
