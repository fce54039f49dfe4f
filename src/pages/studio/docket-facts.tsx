import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import { paths } from '../paths'
import type { DocketView, FactView } from './docket-view'

type Props = { readonly words: Words; readonly docket: DocketView }

/** What is not known or does not fit: read before anything else. */
export const OpenThings: FC<Props> = ({ words, docket }) => {
  const { unknowns, contradictions } = docket
  if (unknowns.length + contradictions.length === 0) return null
  return (
    <section>
      <h2>{words.say('page.docket.unknown')}</h2>
      {contradictions.map((text) => (
        <div class="note decide">
          <p class="severity">{words.say('page.docket.contradiction')}</p>
          <p>{text}</p>
        </div>
      ))}
      <ul class="plain columns">
        {unknowns.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </section>
  )
}

/** What was read at the last visit of this car, panel by panel; it does not count today. */
export const LastVisitReadings: FC<Props> = ({ words, docket: { last } }) =>
  last === undefined ? null : (
    <section id="last">
      <h2>{words.say('page.last')}</h2>
      <p>
        <a href={paths.docket(last.id)}>
          {words.say('page.last.line', {
            reference: last.reference ?? words.say('page.open.last'),
            date: last.date,
          })}
        </a>
      </p>
      {last.readings.length > 0 ? (
        <table>
          <thead>
            <tr>
              <th scope="col">{words.say('page.panel')}</th>
              <th scope="col" class="n">
                {words.say('page.last.before')}
              </th>
              <th scope="col" class="n">
                {words.say('page.last.after')}
              </th>
            </tr>
          </thead>
          <tbody>
            {last.readings.map((r) => (
              <tr>
                <th scope="row">{words.say(`panel.${r.panel}`)}</th>
                {[r.before, r.after].map((v) => (
                  <td class="n">{v === null ? '–' : words.say('format.um', { v })}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
    </section>
  )

const marks = (words: Props['words'], f: FactView): readonly string[] => [
  words.say(`page.by.${f.by}`),
  ...(f.lastTime ? [words.say('page.fact.last-time')] : []),
  ...(f.corrected === undefined ? [] : [words.say('page.fact.corrected', { why: f.corrected })]),
  ...(f.askedAgain ? [words.say('page.fact.asked-again')] : []),
]

/** Every answer with who gave it, and the photos. */
export const Facts: FC<Props> = ({ words, docket }) => (
  <section id="facts">
    <h2>{words.say('page.docket.facts')}</h2>
    <dl>
      {docket.facts.map((f) => (
        <>
          <dt>{f.prompt}</dt>
          <dd>
            {f.unsure ? <b>{f.answer}</b> : f.answer}
            <small>{marks(words, f).join(' · ')}</small>
            {docket.canCorrect && f.question !== 'photos' ? (
              <a class="change screen-only" href={paths.docketAnswer(docket.id, f.question)}>
                {words.say('page.correct')}
                <span class="unseen"> {f.prompt}</span>
              </a>
            ) : null}
          </dd>
        </>
      ))}
    </dl>
    {docket.photos.length > 0 ? (
      <ul class="photos">
        {docket.photos.map((p) => (
          <li>
            <a href={p.src}>
              <img src={p.src} alt={p.subject} loading="lazy" width="120" height="90" />
            </a>
          </li>
        ))}
      </ul>
    ) : null}
  </section>
)
