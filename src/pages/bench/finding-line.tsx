import type { Child, FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { FindingView } from './bench-view'

/** One thing found: where, what, its picture, what kind it is and what to do about it. */
export const FindingLine: FC<{
  readonly words: Words
  readonly finding: FindingView
  readonly children?: Child
}> = ({ words, finding: f, children }) => (
  <li>
    <b>{f.panel ? `${words.say(`panel.${f.panel}`)}, ${f.place}` : f.place}</b> {f.text}
    {f.photoSrc ? (
      <p>
        <a href={f.photoSrc}>{words.say('page.finding.photo')}</a>
      </p>
    ) : null}
    {f.suggestion ? (
      <div class={`note ${f.suggestion.stops ? 'stop' : 'know'}`}>
        <p>
          <b>{words.say(`finding.${f.suggestion.id}`)}</b>
        </p>
        <p>{words.say(`finding.${f.suggestion.id}.do`)}</p>
      </div>
    ) : null}
    {children}
  </li>
)
