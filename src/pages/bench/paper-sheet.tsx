import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { type BenchView, panelsOfSheet } from './bench-view'

const SPOTS = [1, 2, 3] as const
const BLANK_ROWS = [1, 2, 3, 4, 5, 6] as const

/** Only on paper: a grid to write readings into, and empty lines for what is found. */
export const PaperSheet: FC<{ readonly words: Words; readonly view: BenchView }> = ({
  words,
  view,
}) => (
  <div aria-hidden="true">
    <table class="paper-only blank">
      <thead>
        <tr>
          <th>{words.say('page.panel')}</th>
          {SPOTS.map((n) => (
            <th>{words.say('page.paper.before', { n })}</th>
          ))}
          {SPOTS.map((n) => (
            <th>{words.say('page.paper.after', { n })}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {panelsOfSheet(view).map((p) => (
          <tr>
            <td>{words.say(`panel.${p}`)}</td>
            {[...SPOTS, ...SPOTS].map(() => (
              <td />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
    <table class="paper-only blank">
      <thead>
        <tr>
          <th>{words.say('page.finding.place')}</th>
          <th>{words.say('page.finding.text')}</th>
          <th>{words.say('page.adjust.minutes')}</th>
        </tr>
      </thead>
      <tbody>
        {BLANK_ROWS.map(() => (
          <tr>
            <td />
            <td />
            <td />
          </tr>
        ))}
      </tbody>
    </table>
  </div>
)
