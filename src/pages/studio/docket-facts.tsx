import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { DocketView } from './docket-view'

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

/** Every answer with who gave it, and the photos. */
export const Facts: FC<Props> = ({ words, docket }) => (
  <section>
    <h2>{words.say('page.docket.facts')}</h2>
    <dl>
      {docket.facts.map((f) => (
        <>
          <dt>{f.prompt}</dt>
          <dd>
            {f.unsure ? <b>{f.answer}</b> : f.answer}
            <small>{words.say(`page.by.${f.by}`)}</small>
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
