import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'
import type { Prompts } from '../frame'

/** The questions behind a figure, as the customer read them; ids without a prompt are left out. */
export const becauseTexts = (prompts: Prompts, because: readonly string[]): readonly string[] =>
  because.flatMap((id) => (Object.hasOwn(prompts, id) ? [prompts[id] ?? ''] : []))

export type WhyProps = {
  readonly words: Words
  readonly prompts: Prompts
  readonly because: readonly string[]
  /** Further sentences, said before the questions. */
  readonly more?: readonly string[]
  readonly source?: string
}

/** "Why?": the answers a line rests on, and where its rule comes from. */
export const Why: FC<WhyProps> = ({ words, prompts, because, more, source }) => {
  const asked = becauseTexts(prompts, because)
  if (asked.length === 0 && !more?.length && !source) return null
  return (
    <details class="why">
      <summary>{words.say('page.why')}</summary>
      {(more ?? []).map((text) => (
        <p>{text}</p>
      ))}
      {asked.length > 0 ? (
        <>
          <p>{words.say('page.why.answers')}</p>
          <ul>
            {asked.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        </>
      ) : null}
      {source ? <p class="source">{words.say('page.why.source', { source })}</p> : null}
    </details>
  )
}
