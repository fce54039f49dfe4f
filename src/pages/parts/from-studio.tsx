import type { FC } from 'hono/jsx'
import type { Words } from '../../words/render'

/** What the studio wants the customer to see first. */
export type FromStudioView = {
  /** Questions it asks once more, each leading to its form. */
  readonly asked: readonly { readonly href: string; readonly prompt: string }[]
  /** Answers it changed for the customer, with the reason. */
  readonly corrected: readonly {
    readonly prompt: string
    readonly answer: string
    readonly why: string
  }[]
  readonly lookOver?: { readonly minutes: number; readonly amount: number; readonly text?: string }
  readonly turnedDown?: { readonly why?: string; readonly turn?: string }
}

/** Asked again, changed, offered or turned down: stands above everything else. */
export const FromStudio: FC<{ readonly words: Words; readonly view?: FromStudioView }> = ({
  words,
  view,
}) => {
  if (!view) return null
  const { asked, corrected, lookOver, turnedDown } = view
  if (asked.length + corrected.length === 0 && !lookOver && !turnedDown) return null
  return (
    <section id="from-studio">
      {turnedDown ? (
        <>
          <h2>{words.say('page.turned-down')}</h2>
          {turnedDown.why ? <p class="said-plainly">{turnedDown.why}</p> : null}
          {turnedDown.turn ? (
            <p>{words.say('page.turned-down.turn', { text: turnedDown.turn })}</p>
          ) : null}
        </>
      ) : null}
      {lookOver ? (
        <>
          <p>
            <b>{words.say('page.look.offered', lookOver)}</b>
          </p>
          {lookOver.text ? <p class="said-plainly">{lookOver.text}</p> : null}
        </>
      ) : null}
      {asked.length > 0 ? (
        <>
          <p>
            <b>{words.say('page.again.asked')}</b>
          </p>
          <ul>
            {asked.map((a) => (
              <li>
                <a href={a.href}>{a.prompt}</a>
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {corrected.length > 0 ? (
        <>
          <p>
            <b>{words.say('page.corrected')}</b>
          </p>
          <dl>
            {corrected.map((c) => (
              <>
                <dt>{c.prompt}</dt>
                <dd>
                  {c.answer}
                  <small>{c.why}</small>
                </dd>
              </>
            ))}
          </dl>
        </>
      ) : null}
    </section>
  )
}
