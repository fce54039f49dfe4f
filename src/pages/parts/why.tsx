import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'

export const promptOf = (words: Words, question: string): string | null =>
  words.has(`q.${question}.prompt`) ? words.say(`q.${question}.prompt`) : null

/** The questions behind a figure, as the customer read them; facts never asked are left out. */
export const becauseTexts = (words: Words, because: readonly string[]): readonly string[] =>
  because.flatMap((id) => promptOf(words, id) ?? [])

export type WhyProps = {
  readonly words: Words
  readonly because: readonly string[]
  /** Further sentences, said before the questions. */
  readonly more?: readonly string[]
  readonly source?: string
}

/** "Why?": the answers a line rests on, and where its rule comes from. */
export const Why: FC<WhyProps> = ({ words, because, more, source }) => {
  const asked = becauseTexts(words, because)
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
