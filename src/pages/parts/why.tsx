import type { FC } from 'hono/jsx'
import type { Reason } from '../../quote/reason'
import type { Words } from '../../words/render'

export const promptOf = (words: Words, question: string): string | null =>
  words.has(`q.${question}.prompt`) ? words.say(`q.${question}.prompt`) : null

/** The questions behind a figure, as the customer read them; facts never asked are left out. */
export const becauseTexts = (words: Words, because: readonly string[]): readonly string[] =>
  because.flatMap((id) => promptOf(words, id) ?? [])

/** The rules behind a figure, each with the table row it took and where that comes from. */
export const ReasonList: FC<{ readonly words: Words; readonly reasons: readonly Reason[] }> = ({
  words,
  reasons,
}) =>
  reasons.length === 0 ? null : (
    <ul class="reasons">
      {reasons.map((r) => (
        <li>
          {words.say('page.why.chain', {
            text: words.say(`reason.${r.rule}`, r.row ?? {}),
            source: r.source,
          })}
        </li>
      ))}
    </ul>
  )

export type WhyProps = {
  readonly words: Words
  readonly because: readonly string[]
  /** Further sentences, said before the questions. */
  readonly more?: readonly string[]
  readonly source?: string
  /** The whole chain, for the studio; a customer is shown the answers and the source. */
  readonly reasons?: readonly Reason[]
  /** Instead of "Why?". */
  readonly title?: string
  /** How many answers it rests on instead of each: for a figure that rests on most of them. */
  readonly counted?: boolean
}

const Answers: FC<{
  readonly words: Words
  readonly asked: readonly string[]
  readonly counted: boolean
}> = ({ words, asked, counted }) =>
  counted ? (
    <p>{words.say('page.why.count', { n: asked.length })}</p>
  ) : (
    <>
      <p>{words.say('page.why.answers')}</p>
      <ul>
        {asked.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </>
  )

/** "Why?": the answers a line rests on, the rules and rows that made it of them, and their source. */
export const Why: FC<WhyProps> = ({ words, because, more, source, reasons, title, counted }) => {
  const asked = becauseTexts(words, because)
  if (asked.length === 0 && !more?.length && !source && !reasons?.length) return null
  return (
    <details class="why">
      <summary>{title ?? words.say('page.why')}</summary>
      {(more ?? []).map((text) => (
        <p>{text}</p>
      ))}
      {asked.length > 0 ? <Answers words={words} asked={asked} counted={counted ?? false} /> : null}
      <ReasonList words={words} reasons={reasons ?? []} />
      {source ? <p class="source">{words.say('page.why.source', { source })}</p> : null}
    </details>
  )
}
