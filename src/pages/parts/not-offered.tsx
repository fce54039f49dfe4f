import type { FC } from 'hono/jsx'
import type { Estimate } from '../../quote/estimate-types'
import type { Words } from '../../words/render'

/** Steps this car would need that the studio lacks the kit for, or does not do; nothing where there is none. */
export const NotOffered: FC<{ readonly words: Words; readonly scope: Estimate['scope'] }> = ({
  words,
  scope,
}) => {
  const off = scope.switchedOff ?? []
  if (scope.lacking.length + off.length === 0) return null
  return (
    <section>
      <h2>{words.say('page.not-offered')}</h2>
      <ul class="plain">
        {scope.lacking.map(({ step, piece }) => (
          <li>
            {words.say('page.not-offered.kit', {
              step: words.say(`step.${step}`),
              piece: words.say(`page.kit.${piece}`),
            })}
          </li>
        ))}
        {off.map((step) => (
          <li>{words.say(`step.${step}`)}</li>
        ))}
      </ul>
    </section>
  )
}
