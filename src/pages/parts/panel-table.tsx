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
  /** For the bench: what this job took off, and the deepest that may still be run. */
  readonly bench?: boolean
}

/** What this job took off, as counted with, and whether the gauge can tell. */
const Removed: FC<{ readonly words: Words; readonly panel: PanelPaint }> = ({ words, panel }) => {
  const { removed } = panel
  if (!removed || removed.um <= 0) return null
  return (
    <p>
      {words.say('page.panel.removed', { v: Math.round(removed.um * 10) / 10 })}{' '}
      {removed.measured === null
        ? ''
        : words.say(removed.told ? 'page.panel.removed.told' : 'page.panel.removed.untold', {
            v: Math.round(removed.measured * 10) / 10,
          })}
    </p>
  )
}

/** The deepest that may be run now, and what the owner's written word would allow besides. */
const Deepest: FC<{ readonly words: Words; readonly panel: PanelPaint }> = ({ words, panel }) => (
  <>
    {panel.deepest && panel.verdict !== 'stop' && panel.verdict !== 'cannot-be-read' ? (
      <p>{words.say('page.panel.deepest', { what: words.say(`sequence.${panel.deepest}`) })}</p>
    ) : null}
    {panel.byDecision ? (
      <p>
        {words.say('page.panel.by-decision', { what: words.say(`sequence.${panel.byDecision}`) })}
      </p>
    ) : null}
  </>
)

/** Panels in walking order: what was read, what lies on top, what may still come off, in one word why. */
export const PanelTable: FC<PanelTableProps> = ({ words, panels, full, bench }) => (
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
              {bench ? (
                <>
                  <Deepest words={words} panel={p} />
                  <Removed words={words} panel={p} />
                </>
              ) : null}
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
